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
  expect(resin.indexOf('mesh sleeve')).toBeLessThan(resin.indexOf('turn the stud in'));
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
