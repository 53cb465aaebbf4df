import { expect, it } from 'vitest';
import type { Job } from '../../core/job.ts';
import { planOf } from '../../core/plan.ts';
import { kg, mm } from '../../core/quantity.ts';

/** A job with no more than the contract requires, and both faces looked at. */
const bare = (over: Partial<Job> = {}): Job => ({
  piece: {
    kind: 'picture',
    widthMm: mm(600),
    heightMm: mm(800),
    massKg: kg(8),
    hanging: {
      by: 'rings',
      points: [
        { fromLeftMm: mm(95), fromTopMm: mm(200) },
        { fromRightMm: mm(95), fromTopMm: mm(200) },
      ],
    },
  },
  wall: { baseMaterial: 'clay-brick', widthMm: mm(2700), accessories: [] },
  place: { across: { by: 'centre' }, up: { by: 'centre-at', mm: mm(1450) } },
  ...over,
});

const fieldsOf = (job: Job): string[] => planOf(job).assumptions.map((each) => each.field);

it('says everything that was taken for what nobody gave [contract 4]', () => {
  expect(fieldsOf(bare()).sort()).toEqual(
    [
      'building.country building.heritage building.kind building.tenure building.yearBuilt',
      'crew.dustExtraction crew.people piece.depthMm piece.glass piece.hanging.seatToScrewMm',
      'piece.hanging.standOffMm place.below wall.coating wall.condition wall.cores wall.datum.kind',
      'wall.finish.thicknessMm wall.separating wall.thicknessMm wall.wet',
    ]
      .join(' ')
      .split(' ')
      .sort(),
  );
});

it('says the room behind a sheet that nobody felt, and only then [contract 4]', () => {
  const board = { ...bare().wall, baseMaterial: 'plasterboard-on-timber-studs' } as const;
  expect(fieldsOf(bare({ wall: board }))).toContain('wall.voidMm');
  expect(fieldsOf(bare({ wall: { ...board, voidMm: mm(90) } }))).not.toContain('wall.voidMm');
});

it('says on a stop too what was taken, and names no fastening in a wall nobody may drill [contract 5]', () => {
  const heavy = { ...bare().piece, massKg: kg(45) };
  const held = planOf(bare({ piece: heavy, wall: { ...bare().wall, cores: 'perforated' } }));
  expect(held.verdict).toBe('stop');
  expect(held.rejected.length).toBeGreaterThan(0);
  expect(held.assumptions.map((each) => each.field)).toContain('wall.finish.thicknessMm');
  const coated = planOf(bare({ piece: heavy, wall: { ...bare().wall, coating: 'textured' } }));
  expect(coated.cautions.map((each) => each.id)).toContain('C-AB-1');
  expect(coated.rejected).toEqual([]);
});
