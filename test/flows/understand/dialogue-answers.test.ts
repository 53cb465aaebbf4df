import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { isQuestionName } from '../../../flows/questions/all.ts';
import { understand } from '../../../flows/understand/understand.ts';

type Dialogue = { id: string; open: string; answers: Record<string, string> };
const { dialogues }: { dialogues: Dialogue[] } = JSON.parse(
  readFileSync('test/fixtures/reference/dialogues.json', 'utf8'),
);
const rows = dialogues.flatMap(({ id, answers }) =>
  Object.entries(answers).map(([question, answer]) => ({ id, question, answer })),
);

describe('answers of the reference dialogues', () => {
  test.each(rows)('$id: "$answer" answers $question', ({ question, answer }) => {
    const name = isQuestionName(question) ? question : null;
    const reading = understand(answer, {
      awaiting: name,
      known: {},
      unit: 'mm',
      lastAnswered: null,
      hasPlan: false,
    });
    if (name === 'confirm' || name === 'acknowledge') return expect(reading.intent).toBe('yes');
    if (answer === "don't know") return expect(reading.intent).toBe('dont-know');
    expect(reading.facts.map((fact) => fact.question)).toContain(name);
    expect(reading.asks).toEqual([]);
    expect(reading.refused).toEqual([]);
  });

  test.each(dialogues)('$id: the first message names at least the piece', ({ open }) => {
    const reading = understand(open, {
      awaiting: null,
      known: {},
      unit: 'mm',
      lastAnswered: null,
      hasPlan: false,
    });
    expect(reading.facts.map((fact) => fact.question)).toContain('piece.kind');
  });
});
