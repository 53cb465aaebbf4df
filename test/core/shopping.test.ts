import { expect, it } from 'vitest';
import { planOf } from '../../core/plan.ts';
import { fixingJob, rings } from './fixing/a-fixing-job.ts';

type Given = Parameters<typeof fixingJob>[0];
const listOf = (given: Given): string[] =>
  planOf(fixingJob(given)).shopping.map(({ item, count }) => `${count} ${item}`);

it('brings plug, screw and bit for every mark', () => {
  expect(listOf({ kg: 24 })).toEqual([
    '2 plastic plug 8 x 50 mm',
    '2 14 gauge (6.1 mm) x 75 mm pan head screw',
    '1 masonry bit 8 mm',
  ]);
});

it('brings the plugs of an added batten, the batten, and a screw for each hanger', () => {
  // 1200 wide less 50 at each end is 1100: plugs 250 or more apart make five.
  const list = listOf({ kg: 42, widthMm: 1200, hanging: rings(2, 1200) });
  expect(list[0]).toBe('5 plastic plug 8 x 50 mm');
  expect(list[1]).toMatch(/^1 batten /);
  expect(list[2]).toMatch(/^2 10 gauge pan head/);
});

it('brings a sleeve for resin where the unit has holes, and none where it is solid', () => {
  expect(listOf({ kg: 24, wall: { cores: 'perforated' } }).join()).toContain('2 mesh sleeve 16 mm');
  // 30 mm of plaster bends every plugged screw under 10 kg a hanger; the stud in resin holds.
  const solid = listOf({ kg: 34, wall: { finish: { kind: 'bare' } }, hanging: rings(1, 800) }).join();
  expect(solid).not.toContain('mesh sleeve');
});
