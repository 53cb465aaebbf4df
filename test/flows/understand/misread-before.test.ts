import { expect, test } from 'vitest';
import type { QuestionName } from '../../../flows/question.ts';
import { understand } from '../../../flows/understand/understand.ts';

/** Sayings that once were taken for something else. Invented. */
const hear = (awaiting: QuestionName, said: string) =>
  understand(said, {
    awaiting,
    known: { piece: { kind: 'mirror', massKg: 24 as never }, wall: { baseMaterial: 'clay-brick' } },
    unit: 'mm',
    lastAnswered: 'piece.massKg',
    hasPlan: false,
  });

test('not knowing whether it is solid does not make it solid', () => {
  expect(hear('wall.cores', 'dunno if solid')).toMatchObject({ intent: 'dont-know', facts: [] });
});

test('a bathroom away from the shower is no shower wall', () => {
  const [fact] = hear('hazards', 'bathroom but not near the shower').facts;
  expect(fact?.value.wall?.wet).toBe('bathroom');
});

test('a height said while the size is asked for is no width', () => {
  const { facts } = hear('piece.size', 'middle at 1500');
  expect(facts.map(({ question }) => question)).toEqual(['place.up']);
  expect(facts[0]?.value.place?.up).toEqual({ by: 'centre-at', mm: 1500 });
});

test('a bathroom wall next to the shower still counts as a shower wall', () => {
  const [fact] = hear('hazards', 'bathroom, next to the shower').facts;
  expect(fact?.value.wall?.wet).toBe('shower');
});
