import { expect } from 'vitest';
import { equalGaps, fixedGap, gapsOfCentres, groupLength, rowBottoms } from '../../../core/layout/gaps.ts';
import { hookOfCentre, overFurniture } from '../../../core/layout/hook-height.ts';
import { feetAndInches, sixteenthsOf, sixteenthsText, toSixteenths } from '../../../core/layout/inch.ts';
import { heightOfTilt, tiltOf, tiltSeen, wedgeOver } from '../../../core/layout/level.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { diagonals } from '../../../core/layout/square.ts';
import { degrees, type Millimetres, mm } from '../../../core/quantity.ts';
import { studsUnder } from '../../../core/wall/studs.ts';
import { jobOf } from './a-job.ts';
import { agrees, type ReferenceCase } from './reference.ts';

type Answer = (each: ReferenceCase) => void;

const lengths = (figures: number[]): Millimetres[] => figures.map(mm);

/** Inches as written, "23-7/8", read here by hand so that the program's own reading is not its own witness. */
function inches(written: string): number {
  const [whole = '0', fraction] = written.split('-');
  const [top = '0', bottom = '1'] = (fraction ?? '0/1').split('/');
  return Number(whole) + Number(top) / Number(bottom);
}

const hookInInches: Answer = (each) => {
  const { centre_in, height_in, top_to_loaded_hanger_in } = each.inputs;
  agrees(
    each,
    hookOfCentre(mm(centre_in), mm(height_in), mm(top_to_loaded_hanger_in), mm(0)).seatMm,
    each.expected.hook_in,
  );
};

const levelError: Answer = (each) => {
  const tilt = tiltOf(mm(each.inputs.dy_mm), mm(each.inputs.span_mm));
  agrees(each, tilt, each.expected.angle_deg);
  expect(tiltSeen(tilt) === 'crooked').toBe(each.expected.visible_at_0p6_deg);
};

const gapsAcross: Answer = (each) => {
  const { width_mm, items_mm, end_gaps } = each.inputs;
  const spread = equalGaps(mm(width_mm), lengths(items_mm), end_gaps ? 'ends' : 'flush');
  agrees(each, spread.gapMm, each.expected.gap_mm);
  expect(spread.ok).toBe(each.expected.fits ?? true);
  if (spread.ok) {
    expect(spread.leftsMm).toEqual(each.expected.left_edges_mm);
    expect(spread.leftsMm.map((left, at) => left + items_mm[at] / 2)).toEqual(each.expected.centres_mm);
  }
};

const nearestSixteenth: Answer = (each) => {
  const tape = toSixteenths(mm(each.inputs.mm));
  expect(tape.text).toBe(each.expected.inches);
  agrees(each, tape.inches, each.expected.decimal);
  agrees(each, tape.errorMm, each.expected.error_mm);
};

/** One row for each case of heights, level, set-out and inches. */
export const SET_OUT_ANSWERS: Record<string, Answer> = {
  'HT-01': hookInInches,
  'HT-02': hookInInches,
  'HT-03': (each) => {
    const { centre_mm, height_mm, top_to_loaded_hanger_mm, screw_above_seat_mm } = each.inputs;
    const hook = hookOfCentre(
      mm(centre_mm),
      mm(height_mm),
      mm(top_to_loaded_hanger_mm),
      mm(screw_above_seat_mm),
    );
    agrees(each, hook.seatMm, each.expected.seat_mm);
    agrees(each, hook.screwMm, each.expected.screw_mm);
    agrees(each, hook.bottomMm, each.expected.bottom_mm);
    agrees(each, hook.topMm, each.expected.top_mm);
  },
  'HT-04': (each) => {
    const { furniture_top_mm, height_mm, centre_mm, gap_min_mm } = each.inputs;
    const gap = overFurniture(mm(furniture_top_mm), mm(height_mm), mm(centre_mm), mm(gap_min_mm));
    agrees(each, gap.gapMm, each.expected.gap_mm);
    expect(gap.enough).toBe(each.expected.ok);
    agrees(each, gap.centreNeededMm, each.expected.centre_needed_mm);
  },
  'HT-06': (each) => {
    const { centre_mm, height_mm, ceiling_mm } = each.inputs;
    const job = jobOf({
      piece: { heightMm: mm(height_mm) },
      wall: { heightMm: mm(ceiling_mm) },
      place: { up: { by: 'centre-at', mm: mm(centre_mm) } },
    });
    const layout = setOut(job);
    expect(layout.ok).toBe(each.expected.fits);
    expect(layout).toMatchObject({ id: 'C-FT-4', overByMm: each.expected.top_mm - ceiling_mm });
  },
  'LV-01': levelError,
  'LV-03': levelError,
  'LV-04': levelError,
  'LV-05': levelError,
  'LV-06': levelError,
  'LV-07': (each) =>
    agrees(
      each,
      heightOfTilt(degrees(each.inputs.threshold_deg), mm(each.inputs.span_mm)),
      each.expected.dy_mm,
    ),
  'LV-08': (each) =>
    agrees(each, heightOfTilt(degrees(each.inputs.target_deg), mm(each.inputs.span_mm)), each.expected.dy_mm),
  'LV-09': (each) => {
    const { frame_width_mm, ceiling_slope_mm_per_m } = each.inputs;
    agrees(
      each,
      wedgeOver(mm(frame_width_mm), mm(ceiling_slope_mm_per_m), mm(1000)),
      each.expected.gap_change_across_frame_mm,
    );
    agrees(each, tiltOf(mm(ceiling_slope_mm_per_m), mm(1000)), each.expected.angle_deg);
  },
  'WL-05': (each) => {
    const { frame_width_mm, spacing_mm } = each.inputs;
    const { studs_min, studs_max } = each.expected;
    expect(studsUnder(mm(frame_width_mm), mm(spacing_mm))).toEqual({ least: studs_min, most: studs_max });
  },
  'LY-01': gapsAcross,
  'LY-03': gapsAcross,
  'LY-04': gapsAcross,
  'LY-05': gapsAcross,
  'LY-06': gapsAcross,
  'LY-07': (each) => {
    const { width_mm, items_mm, gap_mm } = each.inputs;
    agrees(each, groupLength(lengths(items_mm), mm(gap_mm)), each.expected.group_mm);
    expect(fixedGap(mm(width_mm), lengths(items_mm), mm(gap_mm))).toMatchObject({
      ok: true,
      leftsMm: each.expected.left_edges_mm,
    });
  },
  'LY-08': gapsAcross,
  'LY-10': (each) => {
    const { w_mm, h_mm, shear_mm } = each.inputs;
    const found = diagonals(mm(w_mm), mm(h_mm), mm(shear_mm));
    agrees(each, found.longMm, each.expected.d1_mm);
    agrees(each, found.shortMm, each.expected.d2_mm);
    agrees(each, found.differenceMm, each.expected.difference_mm);
    agrees(each, found.skew, each.expected.skew_deg);
  },
  'LY-11': (each) => {
    const { width_mm, items_mm } = each.inputs;
    const { centres_mm, gaps_mm } = each.expected;
    expect(gapsOfCentres(mm(width_mm), lengths(items_mm), lengths(centres_mm))).toEqual(gaps_mm);
  },
  'LY-12': (each) => {
    const { rows, cols, w_mm, h_mm, gap_mm, centre_y_mm, wall_mm } = each.inputs;
    const widths = lengths(Array(cols).fill(w_mm));
    expect(groupLength(widths, mm(gap_mm))).toBe(each.expected.group_w_mm);
    expect(groupLength(lengths(Array(rows).fill(h_mm)), mm(gap_mm))).toBe(each.expected.group_h_mm);
    expect(fixedGap(mm(wall_mm), widths, mm(gap_mm))).toMatchObject({ leftsMm: each.expected.left_edges_mm });
    const bottoms = rowBottoms(rows, mm(h_mm), mm(gap_mm), mm(centre_y_mm));
    expect(bottoms).toEqual(each.expected.bottoms_mm);
    expect(bottoms.map((bottom) => bottom + h_mm)).toEqual(each.expected.tops_mm);
  },
  'IN-01': nearestSixteenth,
  'IN-02': nearestSixteenth,
  'IN-03': nearestSixteenth,
  'IN-07': nearestSixteenth,
  'IN-08': (each) => {
    const parts = sixteenthsOf(inches(each.inputs.a)) + sixteenthsOf(inches(each.inputs.b));
    expect(sixteenthsText(parts)).toBe(each.expected.sum);
    agrees(each, parts / 16, each.expected.decimal);
  },
  'IN-09': (each) => {
    expect(sixteenthsText(sixteenthsOf(inches(each.inputs.a) / each.inputs.divide))).toBe(
      each.expected.result,
    );
  },
  'IN-10': (each) => {
    const parts = sixteenthsOf(inches(each.inputs.a) / each.inputs.divide);
    expect(sixteenthsText(parts)).toBe(each.expected.each);
    agrees(each, (3 * parts) / 16, each.expected.sum_of_three_in);
    agrees(each, (3 * parts) / 16 - inches(each.inputs.a), each.expected.overshoot_in);
  },
  'IN-11': (each) => {
    const { centre, height, drop } = each.inputs;
    const hook = hookOfCentre(mm(inches(centre)), mm(inches(height)), mm(inches(drop)), mm(0));
    expect(sixteenthsText(sixteenthsOf(hook.seatMm))).toBe(each.expected.hook);
  },
  'IN-12': (each) => {
    const found = feetAndInches(each.inputs.ft, inches(each.inputs.inch));
    agrees(each, found, each.expected.mm);
    agrees(each, found / 25.4, each.expected.inches);
  },
};
