import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { freePort, type Running, startServer } from '../src/crew/running-server.ts';
import { readmeConversation } from './readme.ts';

const page = readFileSync('README.md', 'utf8');
const blocks = [...page.matchAll(/```sh\n([\s\S]*?)```/g)].map((match) => match[1] ?? '');
const curls = blocks.filter((block) => block.startsWith('curl '));
const data = mkdtempSync(join(tmpdir(), 'wallhand-readme-'));
let server: Running;

beforeAll(async () => {
  server = await startServer(data, await freePort());
});
afterAll(async () => {
  await server.kill('SIGTERM');
  rmSync(data, { recursive: true, force: true });
});

/** What each example of the page must answer with. */
const ANSWERS: [about: string, has: (answer: Record<string, unknown>) => unknown, expected: unknown][] = [
  ['a first message', (answer) => (answer.known as { piece: { massKg: number } }).piece.massKg, 24],
  [
    'a whole job: (2700 - 840) / 2 + 95 and 800 + 1120 - 240',
    (answer) => (answer.marks as { fromLeftMm: number; upMm: number }[])[0],
    expect.objectContaining({ fromLeftMm: 1025, upMm: 1680 }),
  ],
  ['marks measured back: B is 6 too far right of 1840', (answer) => answer.verdict, 'care'],
];

test.each(ANSWERS.map((row, at) => [row[0], at] as const))('README’s curl example answers: %s', (_, at) => {
  const command = (curls[at] ?? '').replaceAll('http://127.0.0.1:8080', server.url);
  const { stdout, stderr, status } = spawnSync('bash', ['-ec', command], { encoding: 'utf8' });
  expect(stderr).toBe('');
  expect(status).toBe(0);
  const [, has, expected] = ANSWERS[at] as (typeof ANSWERS)[number];
  expect(has(JSON.parse(stdout))).toEqual(expected);
});

test('every curl example of the page is one of those', () => {
  expect(curls).toHaveLength(ANSWERS.length);
});

test('the two commands stand first, and the landing script runs both', () => {
  expect(blocks[0]).toMatch(/^npm ci && npm start[^\n]*\nnpm ci && npm test/);
  const landing = readFileSync('.ci/run', 'utf8');
  expect(landing).toMatch(/npm ci\n(?:.*\n)*npm test/);
  expect(readFileSync('test/smoke.ts', 'utf8')).toContain("spawn('npm', ['start']");
});

test('the conversation on the page is the one the program holds', () => {
  const shown = page.match(/<!-- conversation -->\n```text\n([\s\S]*?)\n```/)?.[1];
  expect(shown).toBe(readmeConversation());
});

test('every file the page links to exists', () => {
  const links = [...page.matchAll(/\]\(([^)#:]+)\)/g)].map((match) => match[1] ?? '');
  expect(links.length).toBeGreaterThan(2);
  expect(links.filter((path) => !existsSync(path))).toEqual([]);
});
