import { expect } from 'vitest';
import { outwardPull } from '../../../core/fixing/acting/outward-pull.ts';
import { liftOffNeeded } from '../../../core/layout/batten.ts';
import { cordOfRise, riseOfCord } from '../../../core/piece/cord.ts';
import { cordTension, inwardPull, tensionFactor } from '../../../core/piece/cord-tension.ts';
import {
  BACKING_DENSITY,
  densityOfWeight,
  FRAME_DENSITY,
  GLAZING_DENSITY,
} from '../../../core/piece/densities.ts';
import { forwardLean } from '../../../core/piece/lean.ts';
import { centreLine, partsOf, sheetMass } from '../../../core/piece/mass.ts';
import { shareOf } from '../../../core/piece/share.ts';
import {
  ROPE_6X7_FC,
  ropeBreakingForce,
  WORKING_SHARE,
  workingLoad,
} from '../../../core/piece/wire-strength.ts';
import { degrees, kg, kgPerM3, mm, mpa, newtons, weightOf } from '../../../core/quantity.ts';
import { coursesHigh, GAUGES, MODULE_AU, USUAL_JOINT, unitMiddle } from '../../../core/wall/courses.ts';
import { agrees, type ReferenceCase } from './reference.ts';

type Answer = (each: ReferenceCase) => void;

/** Metres to millimetres, as the case writes its sizes. */
const metres = (value: number) => mm(value * 1000);

const slingFactor: Answer = (each) => {
  const { W, theta } = each.inputs;
  agrees(each, tensionFactor(degrees(theta.value)), each.expected.factor);
  agrees(each, tensionFactor(degrees(theta.value)), each.expected.published_factor);
  agrees(each, cordTension(newtons(W.value), degrees(theta.value)), each.expected.T);
};

const shallowWire: Answer = (each) => {
  const weight = newtons(each.inputs.W.value);
  const theta = degrees(each.inputs.theta.value);
  agrees(each, cordTension(weight, theta), each.expected.T);
  agrees(each, inwardPull(weight, theta), each.expected.H_inward_on_ring);
  agrees(each, cordTension(weight, theta) / weight, each.expected.T_over_W);
};

const glass: Answer = (each) => {
  const { w, h, t, rho } = each.inputs;
  expect(GLAZING_DENSITY.glass.value).toBe(rho.value);
  const mass = sheetMass(metres(w.value), metres(h.value), mm(t.value), GLAZING_DENSITY.glass.value);
  agrees(each, mass, each.expected.m);
  if (each.expected.W) agrees(each, weightOf(mass), each.expected.W);
};

/** One row for each case of cords, wire, lean, mass, shares and courses. */
export const HANGING_ANSWERS: Record<string, Answer> = {
  'HG-01': (each) => {
    const { mass_kg, ring_spacing_mm, sag_mm } = each.inputs;
    const cord = cordOfRise(mm(sag_mm), mm(ring_spacing_mm), mm(0));
    if (!cord.ok) throw new Error('a cord that rises 75 over 600 is possible');
    const weight = weightOf(kg(mass_kg));
    agrees(each, cord.legAngle, each.expected.theta_deg);
    agrees(each, cordTension(weight, cord.legAngle), each.expected.tension_N);
    agrees(each, inwardPull(weight, cord.legAngle), each.expected.inward_pull_N);
    agrees(each, cordTension(weight, cord.legAngle) / weight, each.expected.tension_over_weight);
  },
  'HG-04': (each) => {
    const { wire_mm, ring_spacing_mm, hook_spacing_mm } = each.inputs;
    const cord = riseOfCord(mm(wire_mm), mm(ring_spacing_mm), mm(hook_spacing_mm));
    agrees(each, cord.ok ? cord.riseMm : Number.NaN, each.expected.rise_mm);
  },
  'HG-08': (each) => {
    const { hook_standoff_mm, bumper_mm, hang_point_above_bottom_mm } = each.inputs;
    const lean = forwardLean(mm(hook_standoff_mm), mm(bumper_mm), mm(hang_point_above_bottom_mm));
    agrees(each, lean ?? Number.NaN, each.expected.lean_deg);
    const bumped = forwardLean(mm(hook_standoff_mm), mm(12), mm(hang_point_above_bottom_mm));
    agrees(each, bumped ?? Number.NaN, each.expected.with_12mm_bumper_deg);
  },
  'HG-10': (each) => {
    const { mass_kg, com_from_wall_mm, hang_point_above_bottom_mm } = each.inputs;
    const pull = outwardPull(weightOf(kg(mass_kg)), mm(com_from_wall_mm), mm(hang_point_above_bottom_mm));
    agrees(each, pull, each.expected.outward_N);
  },
  'HG-11': (each) => {
    const needed = liftOffNeeded(mm(each.inputs.engagement_mm));
    agrees(each, needed, each.expected.needed_mm);
    expect(each.inputs.gap_above_frame_mm >= needed).toBe(each.expected.fits);
  },
  'WIRE-01': slingFactor,
  'WIRE-02': slingFactor,
  'WIRE-05': shallowWire,
  'WIRE-06': shallowWire,
  'WIRE-07': (each) => {
    const cord = riseOfCord(mm(each.inputs.L.value), mm(each.inputs.S.value), mm(0));
    if (!cord.ok) throw new Error('a cord of 560 over 500 is possible');
    agrees(each, cord.riseMm, each.expected.sag);
    agrees(each, cord.legAngle, each.expected.theta);
    agrees(each, cordTension(newtons(each.inputs.W.value), cord.legAngle), each.expected.T);
  },
  'WIRE-10': (each) => {
    const { K, d, R_r } = each.inputs;
    expect(ROPE_6X7_FC.value).toBe(K.value);
    const force = ropeBreakingForce(ROPE_6X7_FC, mm(d.value), mpa(R_r.value));
    agrees(each, force / 1000, each.expected.F_min);
    agrees(each, workingLoad(force, WORKING_SHARE.lifting) / 1000, each.expected.WLL_5to1);
  },
  'WIRE-11': (each) => {
    const strength = newtons(each.inputs.F_nominal.value * 1000);
    agrees(each, workingLoad(strength, WORKING_SHARE.tieDown) / 1000, each.expected.WLL);
  },
  'MASS-01': glass,
  'MASS-02': glass,
  'MASS-03': (each) => {
    const { glass: pane, frame, back } = each.inputs;
    // The case gives the pane; the frame's outside is a face wider on each side.
    const wide = mm(metres(pane.w_m) + 2 * frame.b_mm);
    const high = mm(metres(pane.h_m) + 2 * frame.b_mm);
    expect(FRAME_DENSITY.hardwood.value).toBe(frame.rho);
    expect(BACKING_DENSITY.mdf.value).toBe(back.rho);
    agrees(each, centreLine(wide, high, mm(frame.b_mm)) / 1000, frame.centreline_perimeter_m);
    const parts = partsOf(
      {
        glazing: { material: 'glass', thicknessMm: mm(pane.t_mm) },
        frame: { material: 'hardwood', widthMm: mm(frame.b_mm), thicknessMm: mm(frame.t_mm) },
        backing: { material: 'mdf', thicknessMm: mm(back.t_mm) },
      },
      wide,
      high,
    );
    const masses = parts.map((part) => part.massKg);
    const wanted = [each.expected.glass, each.expected.frame, each.expected.back];
    expect(masses).toHaveLength(3);
    for (const [at, mass] of masses.entries()) agrees(each, mass, wanted[at]);
    agrees(
      each,
      masses.reduce((all, mass) => all + mass, 0),
      each.expected.total,
    );
  },
  'MASS-05': (each) => {
    const { gamma } = each.inputs;
    for (const [at, weight] of gamma.value.entries()) {
      agrees(each, densityOfWeight(weight), kgPerM3(each.expected.rho[at]));
    }
  },
  'STAT-02': (each) => {
    const { W, a, b } = each.inputs;
    const share = shareOf(newtons(W.value), mm(0), mm(a.value + b.value), mm(a.value));
    agrees(each, share.left, each.expected.V1);
    agrees(each, share.right, each.expected.V2);
  },
  'COURSE-01': (each) => {
    agrees(each, GAUGES.AU.value, each.expected.gauge_mm);
    agrees(each, coursesHigh(each.inputs.n, GAUGES.AU.value), each.expected.height_mm);
    agrees(each, MODULE_AU.value, each.expected.module_length_mm);
  },
  'COURSE-02': (each) => agrees(each, coursesHigh(each.inputs.n, GAUGES.UK.value), each.expected.height_mm),
  'COURSE-03': (each) => {
    agrees(each, coursesHigh(each.inputs.n, GAUGES.US.value), each.expected.height_mm);
    agrees(each, coursesHigh(each.inputs.n, GAUGES.US.value) / 25.4, each.expected.height_in);
    agrees(each, GAUGES.US.value, each.expected.course_mm);
  },
  'COURSE-04': (each) => {
    const { n, gauge, joint, h } = each.inputs;
    expect(USUAL_JOINT.value).toBe(joint.value);
    agrees(each, unitMiddle(n, mm(gauge.value), mm(joint.value), mm(h.value)), each.expected.y);
  },
};
