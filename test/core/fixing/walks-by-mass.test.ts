import { expect, test } from 'vitest';
import type { Job } from '../../../core/job.ts';
import { planOf } from '../../../core/plan.ts';
import { kg, mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';

const STUDS = { spacingMm: mm(450), firstMm: mm(375), widthMm: mm(45) };
const WALLS = {
  aerated: { baseMaterial: 'aerated-concrete', thicknessMm: mm(200) },
  stone: { baseMaterial: 'natural-stone', thicknessMm: mm(500) },
  rubble: { baseMaterial: 'natural-stone', cores: 'hollow', thicknessMm: mm(500) },
  dabs: { baseMaterial: 'plasterboard-on-dabs', boardMm: mm(12.5), voidMm: mm(25), thicknessMm: mm(215) },
  'board on brick': {
    baseMaterial: 'clay-brick',
    cores: 'solid',
    finish: { kind: 'board', thicknessMm: mm(33) },
    thicknessMm: mm(230),
  },
  'steel, marks in the flange': {
    baseMaterial: 'plasterboard-on-steel-studs',
    boardMm: mm(12.5),
    voidMm: mm(70),
    studs: STUDS,
  },
  'steel, studs unknown': { baseMaterial: 'plasterboard-on-steel-studs', boardMm: mm(12.5), voidMm: mm(70) },
  'lath, marks in studs': {
    baseMaterial: 'lath-and-plaster',
    finish: { kind: 'plaster', thicknessMm: mm(22) },
    studs: STUDS,
  },
  'lath, studs unknown': {
    baseMaterial: 'lath-and-plaster',
    finish: { kind: 'plaster', thicknessMm: mm(10) },
  },
  'fibre cement, marks in studs': { baseMaterial: 'fibre-cement-on-studs', boardMm: mm(6), studs: STUDS },
  'fibre cement, studs unknown': { baseMaterial: 'fibre-cement-on-studs', boardMm: mm(6), voidMm: mm(80) },
  'timber, solid': { baseMaterial: 'timber', boardMm: mm(90) },
  'timber, lining boards': { baseMaterial: 'timber', boardMm: mm(19) },
} as const satisfies Record<string, Partial<Wall>>;

/** A mirror 1200 wide on two rings 900 apart, centred on 3000: marks at 1050 and 1950, which 450 from 375 has no stud at. */
function planned(name: keyof typeof WALLS, kgEach: number) {
  const wall: Partial<Wall> = WALLS[name];
  // Rings over studs at 825 + 450 n where the wall has them: 1275 and 1725.
  const insetMm = mm(wall.studs ? 375 : 150);
  const job: Job = {
    building: { country: 'AU', yearBuilt: 2015, kind: 'house', tenure: 'owner' },
    piece: {
      kind: 'mirror',
      widthMm: mm(1200),
      heightMm: mm(900),
      depthMm: mm(0),
      massKg: kg(2 * kgEach),
      glass: 'safety',
      hanging: {
        by: 'rings',
        points: [
          { fromLeftMm: insetMm, fromTopMm: mm(100) },
          { fromRightMm: insetMm, fromTopMm: mm(100) },
        ],
        standOffMm: mm(1.5),
      },
    },
    wall: {
      widthMm: mm(3000),
      heightMm: mm(2400),
      finish: { kind: 'bare', thicknessMm: mm(0) },
      accessories: [],
      farSide: 'seen',
      wet: 'no',
      coating: 'none',
      ...wall,
    } as Wall,
    place: { across: { by: 'centre' }, up: { by: 'centre-at', mm: mm(1500) }, below: 'nothing' },
    crew: { people: 3, dustExtraction: true, lifter: true },
  };
  const { fixing } = planOf(job);
  if (fixing === null) return 'nothing';
  const { plug, screw } = fixing;
  const thick = screw?.gauge ? `${screw.gauge} g` : screw ? `${screw.diameterMm}` : '';
  return [fixing.fastener, plug ? `${plug.diameterMm} x ${plug.lengthMm}` : '', thick]
    .filter((each) => each)
    .join(', ');
}

/** Kilograms on each of two rings, and the line of the trade's walk that takes them: the first whose usual or cap, and whose bending, covers it. */
test.each([
  // 1.6: 8 x 60 to 7.5 (half of the declared 15), 10 x 80 to 10, resin to 15, batten to 40 whole less the prying of its own thickness.
  ['aerated', 7, 'aerated-plug, 8 x 60, 10 g'],
  ['aerated', 9, 'aerated-plug, 10 x 80, 14 g'],
  ['aerated', 14, 'resin-stud, 8'],
  ['aerated', 15.5, 'batten-screws, 10 x 80, 14 g'],
  ['aerated', 21, 'nothing'],
  // 1.7, soft: 8 x 60 to 8, 10 x 80 to 10, resin to 12.
  ['stone', 7.5, 'plug-and-screw, 8 x 60, 12 g'],
  ['stone', 9.5, 'plug-and-screw, 10 x 80, 14 g'],
  ['stone', 11.5, 'resin-stud, 8'],
  ['stone', 13, 'nothing'],
  ['rubble', 11.5, 'resin-stud, 8'],
  // 1.10: short anchor 3 usual, 14 g 7 less bending over 37.5 (its 14 g bears 5.6), coach 10 less bending (8.7), resin M10 to 15, batten to 30 whole.
  ['dabs', 2.5, 'screw-in-anchor, 8 g'],
  ['dabs', 5, 'frame-plug, 8 x 100, 14 g'],
  ['dabs', 8, 'frame-plug, 10 x 100, 8'],
  ['dabs', 14, 'batten-screws, 10 x 100, 8'],
  ['dabs', 16, 'nothing'],
  ['board on brick', 5, 'frame-plug, 8 x 100, 14 g'],
  // 1.9: strap toggle in the flange 10 usual, 15 cap; screw-in anchor between the studs 6 usual, sleeve 8, strap 10.
  ['steel, marks in the flange', 9, 'strap-toggle, 5'],
  ['steel, studs unknown', 5, 'screw-in-anchor, 8 g'],
  ['steel, studs unknown', 7, 'expanding-sleeve-anchor, 5'],
  ['steel, studs unknown', 9.5, 'strap-toggle, 5'],
  // 1.11: a stud bears at most 8 with 10 g, 10 with 12 or 14 g, and bare through 28 of plaster and lath less; in a lath 2 usual, and nothing on laths over 5 whole.
  ['lath, marks in studs', 5.5, 'stud-screw, 10 g'],
  ['lath, marks in studs', 7, 'stud-screw, 12 g'],
  ['lath, marks in studs', 11, 'board-across-studs, 14 g'],
  ['lath, studs unknown', 1.9, 'lath-screw, 8 g'],
  ['lath, studs unknown', 2.4, 'spring-toggle, 5'],
  ['lath, studs unknown', 4, 'board-across-studs, 14 g'],
  // 1.12: a stud to 15; sleeve 4 usual, toggle 5 usual, then a board across.
  ['fibre cement, marks in studs', 12, 'stud-screw, 10 g'],
  ['fibre cement, studs unknown', 3.5, 'expanding-sleeve-anchor, 5'],
  ['fibre cement, studs unknown', 4.5, 'strap-toggle, 5'],
  ['fibre cement, studs unknown', 9, 'board-across-studs, 10 g'],
  // 1.13: solid 8 g to 12, 10 g to 20, 12 g to 25; through a lining board 6.
  ['timber, solid', 11, 'timber-screw, 8 g'],
  ['timber, solid', 18, 'timber-screw, 10 g'],
  ['timber, solid', 24, 'timber-screw, 12 g'],
  ['timber, lining boards', 5, 'timber-screw, 8 g'],
  ['timber, lining boards', 9, 'board-across-studs, 10 g'],
] as const)(
  '%s, %s kg on each ring: %s (common practice, no source; bending and timber derived)',
  (wall, each, line) => {
    expect(planned(wall, each)).toBe(line);
  },
);
