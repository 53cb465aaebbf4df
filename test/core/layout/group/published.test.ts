import { expect, test } from 'vitest';
import { setOutGroup } from '../../../../core/layout/group/group-set-out.ts';
import { mm } from '../../../../core/quantity.ts';
import { REFERENCE, type ReferenceCase, titleOf } from '../reference.ts';
import { framesOf, groupOf, misfitOf, pictureOf } from './a-group.ts';

/** The published cases of gaps, put to the whole set-out of several pieces. */
const spread: Record<string, (each: ReferenceCase) => void> = {
  equal: (each) => {
    const { width_mm, items_mm, end_gaps } = each.inputs;
    const pieces = items_mm.map((width: number) => pictureOf(width, 500));
    const job = groupOf(width_mm, pieces, { as: 'row', spread: end_gaps ? 'ends' : 'flush' });
    if (each.expected.fits === false) {
      // Two end gaps and two between of -75 are 300 too little.
      expect(misfitOf(job)).toMatchObject({ id: 'C-FT-11', overByMm: -4 * each.expected.gap_mm });
      return;
    }
    const frames = framesOf(job);
    expect(frames.map((frame) => frame.leftMm)).toEqual(each.expected.left_edges_mm);
    expect(frames.map((frame) => (frame.leftMm + frame.rightMm) / 2)).toEqual(each.expected.centres_mm);
  },
  fixed: (each) => {
    const { width_mm, items_mm, gap_mm } = each.inputs;
    const pieces = items_mm.map((width: number) => pictureOf(width, 500));
    const frames = framesOf(groupOf(width_mm, pieces, { as: 'row', gapMm: mm(gap_mm) }));
    expect(frames.map((frame) => frame.leftMm)).toEqual(each.expected.left_edges_mm);
    expect((frames.at(-1)?.rightMm ?? 0) - (frames[0]?.leftMm ?? 0)).toBe(each.expected.group_mm);
  },
  grid: (each) => {
    const { rows, cols, w_mm, h_mm, gap_mm, centre_y_mm, wall_mm } = each.inputs;
    const pieces = Array.from({ length: rows * cols }, () => pictureOf(w_mm, h_mm));
    const frames = framesOf(
      groupOf(
        wall_mm,
        pieces,
        { as: 'grid', columns: cols, gapMm: mm(gap_mm) },
        {
          place: { up: { by: 'centre-at', mm: mm(centre_y_mm) } },
        },
      ),
    );
    const once = (values: number[]): number[] => [...new Set(values)].sort((one, other) => one - other);
    expect(once(frames.map((frame) => frame.leftMm))).toEqual(each.expected.left_edges_mm);
    expect(once(frames.map((frame) => frame.bottomMm))).toEqual(each.expected.bottoms_mm);
    expect(once(frames.map((frame) => frame.topMm))).toEqual(each.expected.tops_mm);
  },
  centres: (each) => {
    // The same pieces by edges: (3000 - 1500) / 4 = 375 everywhere, where equal centres leave 350 and 400.
    const pieces = each.inputs.items_mm.map((width: number) => pictureOf(width, 500));
    const frames = framesOf(groupOf(each.inputs.width_mm, pieces, { as: 'row', spread: 'ends' }));
    const gaps = frames.map((frame, at) => frame.leftMm - (frames[at - 1]?.rightMm ?? 0));
    expect(gaps).toEqual([375, 375, 375]);
  },
  thirds: (each) => {
    // Four 10 in frames flush over 60 in: their left edges are the thirds of 50 in, gaps of 6-2/3 in between.
    const inch = 25.4;
    const job = groupOf(60 * inch, Array(4).fill(pictureOf(10 * inch, 300)), { as: 'row', spread: 'flush' });
    const group = setOutGroup({ ...job, building: { country: 'US' } });
    const advice = group.ok ? group.advice.join(' ') : '';
    expect(advice).toContain('the last piece would come 1/16 in too far right');
    expect(advice).toContain(`each rounded once: 0, ${each.expected.each}, 33-5/16, 50.`);
    expect(each.expected.overshoot_in).toBe(1 / 16);
  },
};

const CASES: Record<string, string> = {
  'LY-01': 'equal',
  'LY-03': 'equal',
  'LY-04': 'equal',
  'LY-05': 'equal',
  'LY-06': 'equal',
  'LY-07': 'fixed',
  'LY-08': 'equal',
  'LY-11': 'centres',
  'LY-12': 'grid',
  'IN-10': 'thirds',
};

test.each(REFERENCE.filter(({ id }) => CASES[id]).map((each) => [titleOf(each), each] as const))(
  'on the wall, %s',
  (_, each) => {
    expect.hasAssertions();
    spread[CASES[each.id] ?? '']?.(each);
  },
);
