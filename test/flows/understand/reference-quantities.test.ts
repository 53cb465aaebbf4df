import { describe, expect, it } from 'vitest';
import type { JobSoFar } from '../../../core/job.ts';
import type { QuestionName } from '../../../flows/question.ts';
import sayings from '../../fixtures/reference/sayings.json' with { type: 'json' };
import { flat, hear, hearAll, outcome, pairs } from './hear.ts';

type Row = {
  id?: string;
  q: string;
  say: string;
  known?: Record<string, unknown>;
  points?: number[][];
  tol?: number;
  or?: string;
  ask?: boolean;
  reject?: boolean;
  unknown?: string;
  partial?: boolean;
  given?: Record<string, number>;
};

const OPEN = ['piece.massKg', 'piece.size', 'piece.hanging', 'wall.widthMm'];
const QUANTITY = /^(piece\.(massKg|widthMm|heightMm|hanging)|wall\.(widthMm|heightMm))/;

const rows = sayings.rows as Row[];
const open = rows.filter((row) => OPEN.includes(row.q));
const others = rows.filter(
  (row) =>
    ['start', 'after-mass'].includes(row.q) &&
    (row.points || Object.keys(row.known ?? {}).some((path) => QUANTITY.test(path))),
);

function givenJob(given: Record<string, number> | undefined): JobSoFar {
  return given === undefined ? {} : ({ piece: { widthMm: given['piece.widthMm'] } } as JobSoFar);
}

function expectKnown(row: Row, got: Record<string, unknown>): void {
  for (const [path, value] of Object.entries(row.known ?? {})) {
    if (!QUANTITY.test(path)) continue;
    if (typeof value === 'number')
      expect(Math.abs(Number(got[path]) - value), path).toBeLessThanOrEqual(row.tol ?? 0.001);
    else expect(got[path], path).toBe(value);
  }
  if (row.points) {
    const points = pairs(got['piece.hanging.points']);
    expect(points.length).toBe(row.points.length);
    row.points.forEach(([across, down], at) => {
      expect(Math.abs((points[at]?.[0] ?? Number.NaN) - (across ?? 0))).toBeLessThanOrEqual(row.tol ?? 0.001);
      expect(Math.abs((points[at]?.[1] ?? Number.NaN) - (down ?? 0))).toBeLessThanOrEqual(row.tol ?? 0.001);
    });
  }
}

describe('sayings.json, quantities', () => {
  it.each(open)('$q: "$say" is heard as the reference says', (row) => {
    const question = row.q as QuestionName;
    const heard = hear(question, row.say, { known: givenJob(row.given) });
    const got = outcome(heard);
    if (row.reject) expect([null, 'refused']).toContain(got);
    else if (row.ask) expect(got).toBe('ask');
    else if (row.unknown) expect(got).toBeNull();
    else {
      if (row.or && got === 'ask') return;
      expect(heard?.kind).toBe('facts');
      if (row.partial) expect(heard?.kind === 'facts' && heard.facts[0]?.partial).toBeTruthy();
      expectKnown(row, got as Record<string, unknown>);
    }
  });

  it.each(others)('$q: the figures of "$say" are heard', (row) => {
    if (row.q === 'start') return expectKnown(row, flat(hearAll(row.say, null), ''));
    const got = outcome(hear('piece.massKg', row.say, { lastAnswered: 'piece.massKg' }, 'piece.size'));
    // Right after the mass the size is open: only a mass may be heard.
    return expectKnown(row, got as Record<string, unknown>);
  });
});
