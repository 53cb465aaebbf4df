import { expect, test } from 'vitest';
import { planOf } from '../../../../core/plan.ts';
import { mm } from '../../../../core/quantity.ts';
import { type Changes, jobWith, severityOf } from '../ordinary-job.ts';

/** Of the ordinary job, 1120 high. */
const up = (by: 'bottom-above' | 'below-ceiling', value: number): NonNullable<Changes['place']> => ({
  up: { by, mm: mm(value) },
});
const ceiling = (fallMm?: number): NonNullable<Changes['wall']> => ({
  datum: { kind: 'ceiling', ...(fallMm !== undefined && { fallMm: mm(fallMm) }) },
});

test.each<[string, Changes, string | undefined]>([
  ['299 left of 2400: 2400 - 981 - 1120', { place: up('bottom-above', 981) }, 'note'],
  ['300 left of 2400: 2400 - 980 - 1120', { place: up('bottom-above', 980) }, undefined],
  ['299 down from a ceiling', { place: up('below-ceiling', 299), wall: ceiling() }, 'note'],
  ['300 down from a ceiling', { place: up('below-ceiling', 300), wall: ceiling() }, undefined],
  [
    '100 down from a ceiling that was found level',
    { place: up('below-ceiling', 100), wall: ceiling(0) },
    undefined,
  ],
  ['100 down from a ceiling that falls 12', { place: up('below-ceiling', 100), wall: ceiling(12) }, 'note'],
])(
  'level or along the ceiling: %s (LV-09 by NHBC 9.1.3; the least gap is our choice)',
  (_, changes, severity) => {
    expect(severityOf(planOf(jobWith(changes)).cautions, 'C-LV-3')).toBe(severity);
  },
);

test('down from a ceiling whose height nobody measured the gap is known all the same', () => {
  const job = jobWith({ place: up('below-ceiling', 100), wall: ceiling() });
  const { heightMm: _, ...wall } = job.wall;
  expect(severityOf(planOf({ ...job, wall }).cautions, 'C-LV-3')).toBe('note');
});
