import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as flow from '../../flows/step.ts';
import { aloud, talk } from './talk.ts';

/**
 * Whole conversations, to be read aloud. ">" is what the person says; below it "-" stands in the reply, "x" does
 * not, "?" is the question then open. "#" is arithmetic. The first line says what it is about.
 */
const FOLDER = new URL('./transcripts/', import.meta.url);
const FILES = readdirSync(FOLDER).filter((name) => name.endsWith('.txt'));

type Turn = { said: string; checks: { kind: string; text: string }[] };
type Transcript = { about: string; atMost: number; turns: Turn[] };

function read(file: string): Transcript {
  const lines = readFileSync(new URL(file, FOLDER), 'utf8').split('\n');
  const atMost = lines
    .map((line) => /^asks at most (\d+)/.exec(line)?.[1])
    .find((each) => each !== undefined);
  const turns: Turn[] = [];
  for (const line of lines) {
    const [, kind, text = ''] = /^([>x?-]) (.*)$/.exec(line) ?? [];
    if (kind === '>') turns.push({ said: text, checks: [] });
    else if (kind !== undefined) turns.at(-1)?.checks.push({ kind, text });
  }
  return { about: lines[0] ?? file, atMost: Number(atMost ?? Infinity), turns };
}

describe('aloud', () => {
  test.each(FILES.map((file) => [read(file).about, file] as const))('%s (%s)', (_, file) => {
    const { atMost, turns } = read(file);
    expect(turns.length).toBeGreaterThan(2);
    const held = talk(flow);
    const asked = new Set<string>();
    for (const { said, checks } of turns) {
      const { replies, awaiting } = held.say(said);
      const text = aloud(replies);
      for (const check of checks) {
        const at = `after "${said}"`;
        if (check.kind === '-') expect(text, at).toContain(check.text);
        if (check.kind === 'x') expect(text, at).not.toContain(check.text);
        if (check.kind === '?') expect(awaiting ?? 'nothing', at).toBe(check.text);
      }
      expect(text, `after "${said}"`).not.toMatch(/!|\b(?:wall|it) is safe\b/);
      if (awaiting !== null && awaiting !== 'confirm' && awaiting !== 'acknowledge') asked.add(awaiting);
    }
    expect(asked.size).toBeLessThanOrEqual(atMost);
  });
});
