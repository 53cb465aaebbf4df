import { expect, test } from 'vitest';
import type { InHand } from '../../../core/fixing/hand/hand.ts';
import { holds } from '../../../core/fixing/hand/in-hand.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import { fixingJob } from './a-fixing-job.ts';

const job = fixingJob({ kg: 24 });

function hand(inHand: InHand) {
  const layout = setOut(job);
  if (!layout.ok) throw new Error(layout.text);
  return holds(job, layout, inHand);
}

const plug = { diameterMm: mm(8), lengthMm: mm(50) };

/** Studs under both rings, which are 600 apart and the first 1200 from the left. */
const ON_STUDS = {
  baseMaterial: 'plasterboard-on-timber-studs',
  finish: { kind: 'bare' },
  boardMm: mm(13),
  studs: { spacingMm: mm(600), firstMm: mm(600), widthMm: mm(45) },
} as const;

/** 24 kg on two rings, 12 mm of plaster, solid brick. */
const rows: [string, InHand, boolean, string][] = [
  [
    'an 8 x 50 plug with a 14 gauge 75 in a hole of 74',
    { plug, screw: { gauge: 14, lengthMm: mm(75) }, bit: { depthMm: mm(74) } },
    true,
    'will do',
  ],
  [
    'a 6.0 mm screw, which is what 14 gauge is sold as',
    { plug, screw: { diameterMm: mm(6) } },
    true,
    'will do',
  ],
  ['a 12 gauge screw', { plug, screw: { gauge: 12, lengthMm: mm(75) } }, false, 'does not hold'],
  ['a 6 x 30 plug', { plug: { diameterMm: mm(6), lengthMm: mm(30) } }, false, 'does not hold'],
  [
    'a hole of 55, which leaves the plug in plaster',
    { plug, screw: { gauge: 14 }, bit: { depthMm: mm(55) } },
    false,
    'sits in plaster',
  ],
  [
    'a 65 screw, which does not fill the plug',
    { plug, screw: { gauge: 14, lengthMm: mm(65) } },
    false,
    'too short',
  ],
  [
    'a 100 screw in a hole of 74',
    { plug, screw: { gauge: 14, lengthMm: mm(100) }, bit: { depthMm: mm(74) } },
    false,
    'bottoms',
  ],
  [
    'an 8 x 30 plug, shorter than any cap is for',
    { plug: { diameterMm: mm(8), lengthMm: mm(30) } },
    false,
    'no value',
  ],
  ['a strap toggle in brick', { fastener: 'strap-toggle' }, false, 'no value'],
  ['nothing said', {}, false, 'not said'],
];

test.each(rows)('in the hand: %s [our-choice]', (_, inHand, held, says) => {
  const verdict = hand(inHand);
  expect(verdict.holds).toBe(held);
  expect(verdict.text).toContain(says);
});

/** Strong enough, but not as it is. */
const wrong: [string, Parameters<typeof fixingJob>[0], InHand, boolean, RegExp][] = [
  [
    'the hammer in perforated brick',
    { kg: 8, wall: { cores: 'perforated' } },
    {
      plug: { diameterMm: mm(8), lengthMm: mm(60) },
      screw: { gauge: 14 },
      bit: { action: 'hammer-after-finish' },
    },
    false,
    /No hammer/,
  ],
  [
    'a 10 mm bit for an 8 mm plug',
    { kg: 24 },
    { plug, screw: { gauge: 14 }, bit: { diameterMm: mm(10) } },
    false,
    /slack/,
  ],
  [
    'a countersunk head under a ring',
    { kg: 24 },
    { plug, screw: { gauge: 14, head: 'countersunk' } },
    false,
    /pan head/,
  ],
  [
    'a board screw of 25 for a stud',
    { kg: 8, wall: ON_STUDS },
    { screw: { gauge: 10, lengthMm: mm(25) } },
    false,
    /too short/,
  ],
  [
    'a 65 screw for a stud',
    { kg: 8, wall: ON_STUDS },
    { screw: { gauge: 10, lengthMm: mm(65) } },
    true,
    /will do/,
  ],
];

test.each(wrong)('in the hand: %s [common-practice]', (_, given, inHand, held, says) => {
  const other = fixingJob(given);
  const layout = setOut(other);
  if (!layout.ok) throw new Error(layout.text);
  const verdict = holds(other, layout, inHand);
  expect(verdict.text).toMatch(says);
  expect(verdict.holds).toBe(held);
});

/** Said in part: what was not said is what the plan reckons with, or is asked for. */
const partly: [string, Parameters<typeof fixingJob>[0], InHand, boolean, RegExp][] = [
  // 6 + 12 + 50 = 68.
  [
    'a 14 gauge screw of 50, plug not said',
    { kg: 24 },
    { screw: { gauge: 14, lengthMm: mm(50) } },
    false,
    /68 mm or longer/,
  ],
  [
    'an 8 x 50 plug, screw not said',
    { kg: 24 },
    { plug },
    false,
    /not said enough.* 14 gauge screw would.* 12 gauge screw would not/,
  ],
  [
    'a wood bit for brick',
    { kg: 24 },
    { plug, screw: { gauge: 14 }, bit: { kind: 'wood' } },
    false,
    /masonry bit/,
  ],
  [
    // Root of 10 gauge 3.86: seven tenths 2.7, nine tenths 3.5.
    'a pilot of 4 mm for 10 gauge',
    { kg: 8, wall: ON_STUDS },
    { fastener: 'stud-screw', screw: { gauge: 10 }, bit: { diameterMm: mm(4) } },
    false,
    /nothing to bite: drill 2.7 mm/,
  ],
  [
    'a pilot of 3 mm for 10 gauge',
    { kg: 8, wall: ON_STUDS },
    { fastener: 'stud-screw', screw: { gauge: 10 }, bit: { diameterMm: mm(3) } },
    true,
    /will do/,
  ],
];

test.each(partly)('in the hand, said in part: %s [common-practice]', (_, given, inHand, held, says) => {
  const other = fixingJob(given);
  const layout = setOut(other);
  if (!layout.ok) throw new Error(layout.text);
  const verdict = holds(other, layout, inHand);
  expect(verdict.text).toMatch(says);
  expect(verdict.holds).toBe(held);
});
