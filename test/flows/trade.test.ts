import { describe, expect, test } from 'vitest';
import * as flow from '../../flows/step.ts';
import { aloud, questionIn, talk } from './talk.ts';

/** Questions people ask on site, with the figure the answer must hold: reference/trade.md part 8, by its number. */
const ASKED: readonly (readonly [number, string, string, RegExp])[] = [
  [1, 'common practice', 'what bit for a 14 gauge in brick', /\b8 mm masonry bit\b.*\b8 x 50\b/],
  [2, 'common practice', 'what plug for a 10 gauge', /\b6 x 30 mm\b/],
  [4, 'our choice on common practice', 'how deep do I drill for a 50 plug, 12 of plaster', /^72 mm/],
  [8, 'exact', '3/16 masonry in mm', /\b4\.76 mm\b/],
  [9, 'read', '8 gauge in mm', /\b4\.17 mm\b/],
  [10, 'read', '14 gauge in inches', /\b0\.242 in\b/],
  [11, 'secondary', 'pilot hole for a 10 gauge in pine', /\b2\.7 mm\b.*\b3\.5 mm\b/],
  [12, 'common practice', 'how much will 2 board anchors hold', /\b20 kg \(12 is comfortable\)/],
  [13, 'common practice', 'how much does an 8 mm plug hold in brick', /\b15 kg each\b/],
  [28, 'secondary', 'can I go straight above a switch', /^No\./],
  [37, 'arithmetic', 'is a flat wire bad', /\b1\.93 times\b/],
  [67, 'secondary', 'can I drill over the light switch', /^No\./],
  [68, 'our choice', 'so is it safe to drill here', /^I can’t say that of any wall/],
  [104, 'read', 'readings 1.9 2.1 2.3 2.0 2.2 kN', /\b0\.42 kN\b.*\b42 kg\b/],
];

describe('a question of the trade', () => {
  test.each(ASKED)(
    '%i (%s): "%s" is answered with its source and the place is kept',
    (_, __, asked, wanted) => {
      const held = talk(flow);
      held.all('24 kg mirror on a brick wall', 'Australia');
      const before = held.last().awaiting;
      const { added, replies, awaiting } = held.say(asked);
      const answer = replies[0]?.text ?? '';
      expect(answer).toMatch(wanted);
      expect(answer).toMatch(/\.\)$|own bit\.$/);
      expect([added, awaiting]).toEqual([[], before]);
      expect(questionIn(replies)).toBeDefined();
    },
  );

  test('that has no answer yet is said to have none', () => {
    const held = talk(flow);
    held.say('24 kg mirror on a brick wall');
    expect(aloud(held.say('what glue for a marble slab?').replies)).toContain(
      'I can’t answer yet, and I won’t guess',
    );
  });

  test('never hears that a wall is safe', () => {
    const held = talk(flow);
    held.say('hello');
    for (const asked of [
      'is this wall safe?',
      'is it safe to drill here',
      'the detector is quiet, good to go?',
    ]) {
      expect(aloud(held.say(asked).replies)).not.toMatch(/\b(?:is|it’s|wall’s) safe\b/);
    }
  });
});
