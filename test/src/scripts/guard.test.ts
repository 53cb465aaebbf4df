import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';

const GUARD = 'src/scripts/guard.cjs';

test('the guard lets this Node pass without a word', () => {
  expect(execFileSync(process.execPath, [GUARD], { encoding: 'utf8' })).toBe('');
});

test('under an older Node the guard says in one sentence what is missing', () => {
  const older = "Object.defineProperty(process, 'versions', { value: { node: '20.20.2' } });";
  const ran = spawnSync(process.execPath, ['-e', `${older} require('./${GUARD}')`], { encoding: 'utf8' });
  expect(ran.status).toBe(1);
  expect(ran.stderr).toMatch(/^wallhand needs Node 24, and this is 20\.20\.2\./);
});

test('the guard is written for any Node: no syntax younger than ECMAScript 5', () => {
  expect(readFileSync(GUARD, 'utf8')).not.toMatch(/=>|`\$|\bconst\b|\blet\b|\bimport\b|\?\./);
});
