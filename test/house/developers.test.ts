import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { drawConversation } from '../../src/scripts/draw-conversation.ts';

const page = readFileSync('DEVELOPERS.md', 'utf8');

test('every path that DEVELOPERS.md names exists', () => {
  const named = [...page.matchAll(/`((?:core|flows|src|test|\.ci)\/[\w./-]+)`/g)].map(
    (match) => match[1] ?? '',
  );
  expect(named.length).toBeGreaterThan(20);
  expect(named.filter((path) => !existsSync(path))).toEqual([]);
});

test('the drawing of the conversation is the machine’s own', () => {
  expect(page).toContain(`\`\`\`mermaid\n${drawConversation()}\n\`\`\``);
});
