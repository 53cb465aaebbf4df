import { expect, test } from 'vitest';
import type { JobSoFar } from '../../../core/job.ts';
import type { Entry } from '../../../flows/entry.ts';
import type { CrewDefaults } from '../../../flows/step-shape.ts';
import { rememberedAfter } from '../../../src/ledger/remembered.ts';

const entry = (act: Entry['act'], value: JobSoFar | null, more: Partial<Entry> = {}): Entry => ({
  ...{ act, value, question: 'building.country', said: 'as said', by: 'u7', at: '2026-03-02T09:00:00Z' },
  ...more,
});
const AU: JobSoFar = { building: { country: 'AU' } };

const CASES: [what: string, before: CrewDefaults, added: Entry[], after: CrewDefaults][] = [
  ['a country that was said', {}, [entry('set', AU)], { country: 'AU' }],
  ['a later answer rather than an earlier one', { country: 'UK' }, [entry('set', AU)], { country: 'AU' }],
  [
    'both from one message, and neither whose wall it is nor who lifts today',
    {},
    [
      entry('set', {
        building: { country: 'NZ', tenure: 'client' },
        crew: { people: 2, dustExtraction: false },
      }),
    ],
    { country: 'NZ', dustExtraction: false },
  ],
  ['nothing of what was read between the lines', {}, [entry('set', AU, { inferred: true })], {}],
  ['nothing new of what it remembered itself', { country: 'UK' }, [entry('default', AU)], { country: 'UK' }],
  ['nothing of a "don\'t know"', {}, [entry('unknown', { building: { country: 'unknown' } })], {}],
  ['nothing of the wall or the piece', {}, [entry('set', { wall: { baseMaterial: 'clay-brick' } })], {}],
  [
    'no longer what was taken back',
    { country: 'AU', dustExtraction: true },
    [entry('take-back', null)],
    { dustExtraction: true },
  ],
];

test.each(CASES)('a crew remembers %s', (_, before, added, after) => {
  expect(rememberedAfter(before, added)).toEqual(after);
});

test('what did not change is the same object, so that nothing need be written', () => {
  const before: CrewDefaults = { country: 'AU' };
  expect(
    rememberedAfter(before, [entry('set', AU), entry('take-back', null, { question: 'crew.people' })]),
  ).toBe(before);
});
