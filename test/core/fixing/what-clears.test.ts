import { expect, test } from 'vitest';
import { chooseFixing } from '../../../core/fixing/choose.ts';
import type { Job } from '../../../core/job.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { mm } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { fixingJob, held, notHeld, rings } from './a-fixing-job.ts';

const BOARD = { baseMaterial: 'plasterboard-on-timber-studs', finish: { kind: 'bare' } } as const;
const board = (wall: Partial<Wall> = {}): Partial<Wall> => ({ ...BOARD, boardMm: mm(13), ...wall });

/** One hook in the middle of 3000, so at 1500. */
const oneHook = { hanging: rings(1, 400), widthMm: 400 };

test('a mark on the edge of a stud stops the job and says how far the piece has to move', () => {
  // A stud at 1515, 45 wide: the mark is 15 off its middle, where a 10 gauge screw may be 22.5 - 14.5 = 8 off.
  const studs = { spacingMm: mm(600), firstMm: mm(315), widthMm: mm(45) };
  const { because, clears } = notHeld({ ...oneHook, kg: 4, wall: board({ studs }) });
  expect(because).not.toContain('design and sign');
  expect(clears).toMatch(/^Moving the whole piece 15 mm to the right lands every mark in a stud\./);
});

test('where no move lands both marks it says what brings them clear of the edges', () => {
  // Rings 300 apart at 1350 and 1650; a stud at 1365, the next at 1965.
  const hanging = {
    by: 'rings' as const,
    points: [50, 350].map((from) => ({ fromLeftMm: mm(from), fromTopMm: mm(100) })),
  };
  const studs = { spacingMm: mm(600), firstMm: mm(165), widthMm: mm(45) };
  const { clears } = notHeld({ kg: 8, widthMm: 400, hanging, wall: board({ studs }) });
  // Clear is 22.5 + 4.83 from the middle: 27.33 - 15 = 12.33, so 13 to the left.
  expect(clears).toMatch(/^Moving the whole piece 13 mm to the left brings every mark clear/);
});

test('no move is named that would not make it hold, and a longer batten is where it would', () => {
  const studs = { spacingMm: mm(600), firstMm: mm(315), widthMm: mm(45) };
  // 40 kg on one hook is over any screw in a stud: 19 kg.
  expect(notHeld({ ...oneHook, kg: 40, wall: board({ studs }) }).clears).not.toContain('Moving');
  // Frame 800 to 2200; a batten of 500 from 1250 to 1750 meets the stud at 1515 alone, one of 1380 those at 915 and 2115 too.
  const hanging = { by: 'batten' as const, fromTopMm: mm(100), lengthMm: mm(500) };
  const { clears } = notHeld({ kg: 25, widthMm: 1400, hanging, wall: board({ studs }) });
  expect(clears).toMatch(/^A batten 1380 mm long reaches the studs/);
});

test('studs nobody has found are asked for before a designer is', () => {
  const { clears } = notHeld({ ...oneHook, kg: 19, wall: board() });
  expect(clears).toMatch(/^Find the studs.*Or: Someone who can design and sign/);
});

test('between its usual load and its cap a toggle comes last, and that is said [common-practice]', () => {
  // 12 kg on one hook of a frame too narrow for a board across studs: usual 10, cap 15.
  const { fixing, advice } = held({ ...oneHook, kg: 12, wall: board() });
  expect(fixing.fastener).toBe('strap-toggle');
  expect(advice.join(' ')).toContain('more than the usual 10 kg');
  // A wider frame hides a board across two studs, which comes first.
  expect(held({ kg: 24, wall: board() }).fixing.fastener).toBe('board-across-studs');
});

test('on board alone nothing is hung that is over 20 kg, though a toggle’s cap would take its share [common-practice]', () => {
  const two = { hanging: rings(2, 400), widthMm: 400, wall: board() };
  expect(held({ ...two, kg: 20 }).fixing.fastener).toBe('strap-toggle');
  expect(
    notHeld({ ...two, kg: 20.1 })
      .rejected.map((each) => each.because)
      .join(),
  ).toContain('20 kg is the most');
});

test('under a ceiling of unknown height the pull outward is reckoned from the mark’s own drop [statics]', () => {
  const cord = {
    by: 'cord' as const,
    points: [100, 700].map((from) => ({ fromLeftMm: mm(from), fromTopMm: mm(300) })),
    riseMm: mm(200),
    hooksApartMm: mm(0),
  };
  const floor = held({ kg: 8, hanging: cord });
  const { heightMm: _, ...wall } = fixingJob({ kg: 8 }).wall;
  const job: Job = {
    ...fixingJob({ kg: 8, hanging: cord, up: { by: 'below-ceiling', mm: mm(400) } }),
    wall: { ...wall, datum: { kind: 'ceiling' } },
  };
  const layout = setOut(job);
  if (!layout.ok) throw new Error(layout.text);
  const ceiling = chooseFixing(job, layout);
  // 8 x 9.80665 x 30 / (1000 - 300 + 200).
  expect(floor.actions.perMark[0]?.tensionN).toBeCloseTo((8 * 9.80665 * 30) / 900, 9);
  expect(ceiling.actions.perMark[0]?.tensionN).toBeCloseTo((8 * 9.80665 * 30) / 900, 9);
});

test('tile over lath and plaster sends to another wall, and to no stud behind it [common-practice]', () => {
  const wall = { baseMaterial: 'lath-and-plaster' as const, finish: { kind: 'tile' as const } };
  const { clears } = notHeld({ ...oneHook, kg: 2, wall });
  expect(clears).toMatch(/^Another wall\./);
  expect(clears).not.toContain('studs');
});
