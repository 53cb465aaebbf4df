import { expect, it } from 'vitest';
import type { Job } from '../../core/job.ts';
import { planOf } from '../../core/plan.ts';
import { mm } from '../../core/quantity.ts';
import { fixingJob, rings } from './fixing/a-fixing-job.ts';

const stepsOf = (job: Job): string => planOf(job).steps.join('\n');

it('tells how far an uneven hanger stands off the level line of the first', () => {
  const uneven = rings(2, 800);
  const [left, right] = uneven.points;
  if (!left || !right) throw new Error('two rings');
  const points = [left, { ...right, fromTopMm: mm(right.fromTopMm + 7) }];
  expect(stepsOf(fixingJob({ kg: 12, hanging: { ...uneven, points } }))).toMatch(
    /Mark B: .* 7 mm below the level line of A\./,
  );
  expect(stepsOf(fixingJob({ kg: 12 }))).not.toMatch(/level line/);
});

it('cleans a hole for resin before the stud goes in, and drills a tile with its own bit first [common-practice]', () => {
  const resin = stepsOf(fixingJob({ kg: 24, wall: { cores: 'perforated' } }));
  expect(resin.indexOf('mesh sleeve')).toBeGreaterThan(0);
  expect(resin.indexOf('mesh sleeve')).toBeLessThan(resin.indexOf('threaded stud'));
  const tiled = stepsOf(fixingJob({ kg: 9, wall: { finish: { kind: 'tile', thicknessMm: mm(14) } } }));
  expect(tiled.indexOf('tile bit')).toBeLessThan(tiled.indexOf('masonry bit'));
});

it('counts the depth of a hole behind a board from the wall, not from the board', () => {
  const boarded = fixingJob({
    kg: 24,
    wall: { baseMaterial: 'plasterboard-on-timber-studs', finish: { kind: 'bare' }, boardMm: mm(13) },
  });
  expect(planOf(boarded).fixing?.fastener).toBe('board-across-studs');
  expect(stepsOf(boarded)).toMatch(/At each stud the board crosses.*from the face of the wall/);
});

it('drills for an added batten along the batten and not at the marks, which are for the hangers', () => {
  const steps = stepsOf(fixingJob({ kg: 42, widthMm: 1200, hanging: rings(2, 1200) }));
  expect(steps).toMatch(/At each plug of the batten: 8 mm masonry bit, .* from the face of the wall/);
  expect(steps).not.toContain('At each mark: 8 mm');
});

it('puts two screws in each stud that a split batten crosses', () => {
  const hanging = { by: 'batten' as const, fromTopMm: mm(100), lengthMm: mm(1000) };
  const wall = {
    baseMaterial: 'plasterboard-on-timber-studs' as const,
    boardMm: mm(13),
    studs: { spacingMm: mm(450), firstMm: mm(300), widthMm: mm(45) },
  };
  expect(stepsOf(fixingJob({ kg: 20, widthMm: 1200, hanging, wall }))).toContain(
    'At each mark, two holes one above the other',
  );
});

it('says of a fixing that counts only in solid brick that a drop of the bit ends it', () => {
  // Nothing for a unit with holes goes into 110 mm at 12 kg a hanger; 8 x 50 in the solid does.
  const steps = stepsOf(fixingJob({ kg: 24, wall: { cores: 'unknown', thicknessMm: mm(110) } }));
  expect(steps).toContain('a drop means stop, put nothing in and plan again');
  expect(steps).not.toContain('this holds in either');
});

const BOARD = { baseMaterial: 'plasterboard-on-timber-studs', boardMm: mm(13) } as const;

it.each([
  ['solid brick', { cores: 'solid' }, 'a void'],
  ['perforated brick', { cores: 'perforated' }, 'more than two'],
  ['brick whose coring is not known', { cores: 'unknown' }, 'this holds in either'],
  ['board with no stud known', BOARD, 'steel or wood just behind the board'],
] as const)('says what stops the drill in %s [common-practice]', (_, wall, said) => {
  expect(stepsOf(fixingJob({ kg: 8, wall }))).toContain(said);
});
