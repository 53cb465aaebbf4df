import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { afterEach, beforeEach, expect, onTestFinished, test } from 'vitest';
import { choiceTyped, printed, type Question } from '../../../src/scripts/chat-print.ts';
import { freePort, startServer } from '../crew/running-server.ts';
import { started } from '../started.ts';

let data: string;

beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), 'wallhand-terminal-'));
});

afterEach(() => rmSync(data, { recursive: true, force: true }));

async function conversation(env: Record<string, string>, lines: string[]): Promise<string> {
  const terminal = started('src/scripts/chat.ts', env, ['hall']);
  terminal.child.stdin?.end(`${lines.join('\n')}\n`);
  expect([await terminal.ended, terminal.err()]).toEqual([0, '']);
  return terminal.out();
}

test('the terminal talks to a running server', async () => {
  const server = await startServer(data, await freePort());
  onTestFinished(() => server.kill());
  const said = await conversation({ PORT: new URL(server.url).port, WALLHAND_DATA: data }, [
    'a 24 kg mirror',
  ]);
  expect(said).toContain(`Talking to the server at ${server.url}`);
  expect(said).toMatch(/24 kg/);
}, 30_000);

test('without a server the terminal opens the ledger itself, and the conversation goes on the next day', async () => {
  const env = { PORT: String(await freePort()), WALLHAND_DATA: data };
  expect(await conversation(env, ['a 24 kg mirror'])).toMatch(/is opened here/);
  const again = await conversation(env, ['what do you know so far?', 'plastered brick wall']);
  expect(again).toMatch(/[Bb]rick/);
}, 30_000);

test('a number picks a choice', async () => {
  const env = { PORT: String(await freePort()), WALLHAND_DATA: data };
  const said = await conversation(env, ['a 24 kg mirror', '1']);
  expect(said).toMatch(/1\) Clay brick[\s\S]*> \nBrick\./);
}, 30_000);

test('the terminal’s own ledger takes no more than the server’s door does', async () => {
  const env = { PORT: String(await freePort()), WALLHAND_DATA: data };
  const said = await conversation(env, ['x'.repeat(2001), '\u0000', 'a 24 kg mirror']);
  expect(said).toMatch(/text of at most 2,000 characters/);
  expect(said).toMatch(/text that says something/);
  const db = new DatabaseSync(join(data, 'local.sqlite'), { readOnly: true });
  expect(db.prepare('SELECT count(*) AS turns FROM turn').get()).toEqual({ turns: 1 });
  db.close();
}, 30_000);

test('a ledger the terminal can’t open is said in one sentence', async () => {
  writeFileSync(join(data, 'local.sqlite'), 'not a ledger, but long enough to be read as one '.repeat(200));
  const terminal = started('src/scripts/chat.ts', {
    PORT: String(await freePort()),
    WALLHAND_DATA: data,
  });
  expect(await terminal.ended).toBe(1);
  expect(terminal.err()).toMatch(/^The ledger .*local\.sqlite is damaged [^\n]*\n$/);
}, 30_000);

const asked = (expects: string): Question => ({
  question: 'wall.baseMaterial',
  expects,
  text: 'What is it?',
  choices: [
    { value: 'clay-brick', label: 'Brick' },
    { value: 'unknown', label: 'Not sure' },
  ],
});

test.each([
  ['choice', '2', 'unknown'],
  ['choice', ' 1 ', 'clay-brick'],
  ['choice', '3', null],
  ['choice', '24', null],
  ['choice', 'brick', null],
  // Where a figure is asked for, 2 is a figure.
  ['mass', '2', null],
  ['mass', 'b', 'unknown'],
])('of a question that expects a %s the line %j picks %s', (expects, line, choice) => {
  expect(choiceTyped(asked(expects), line)).toBe(choice);
});

test('words that would steer a terminal are printed as words', () => {
  const shown = printed({
    awaiting: null,
    replies: [{ kind: 'text', text: '\u001b[2J\u001b]0;x\u0007kept' }],
  });
  expect(shown).toBe('kept');
});
