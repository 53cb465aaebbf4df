import { describe, expect, test } from 'vitest';
import { hear } from '../as-said.ts';
import { at, jobOf } from '../score.ts';

/** Invented by us. A question keeps its answer, and what is told beside it is recorded. */
describe('facts beside a question of the trade', () => {
  test.each([
    [null, "how deep should I drill? it's 24kg by the way", 'piece.massKg', 24],
    ['piece.massKg', "how deep should I drill? it's 24kg by the way", 'piece.massKg', 24],
    ['piece.massKg', "it's 24kg, how deep should I drill?", 'piece.massKg', 24],
    ['piece.massKg', 'how deep do I drill btw its 24 kg', 'piece.massKg', 24],
    [null, 'am i about to do something stupid? want to hang a big mirror on my wall', 'piece.kind', 'mirror'],
    ['wall.baseMaterial', 'can I drill above a switch? its brick btw', 'wall.baseMaterial', 'clay-brick'],
  ] as const)('%s: "%s" asks, and sets %s to %s', (awaiting, say, path, want) => {
    const reading = hear(say, awaiting);
    expect(reading.intent).toBe('trade-question');
    expect(at(jobOf(reading), path)).toBe(want);
  });

  test.each(['hollow block, what do I use', 'what bit for a 14 gauge in brick?'])(
    '"%s" only asks, and its premise is not the job',
    (say) => {
      const { intent, facts } = hear(say, 'piece.massKg');
      expect([intent, facts]).toEqual(['trade-question', []]);
    },
  );
});
