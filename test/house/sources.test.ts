import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { SOURCES } from '../../core/bibliography.ts';

const texts = readdirSync('core', { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts') && !name.startsWith('bibliography'))
  .map((name) => readFileSync(join('core', name), 'utf8'));

test('every document of the bibliography is cited somewhere in core', () => {
  const uncited = Object.keys(SOURCES).filter((id) => !texts.some((text) => text.includes(`'${id}'`)));
  expect(uncited).toEqual([]);
});

test('every citation has its place: a clause, a table or a page', () => {
  const citations = texts.flatMap((text) => [
    ...text.matchAll(
      /'([\w:./-]+)',\s*'([^']*)',\s*'(read|read-secondary|derived|from-memory|common-practice|our-choice)'/g,
    ),
  ]);
  expect(citations.length).toBeGreaterThan(100);
  expect(citations.filter(([, id = '', at = '']) => id in SOURCES && at.trim().length < 2)).toEqual([]);
});
