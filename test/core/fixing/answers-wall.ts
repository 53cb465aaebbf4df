import { expect } from 'vitest';
import { outwardPull } from '../../../core/fixing/acting/outward-pull.ts';
import { GRAB_BAR, liftingLoad } from '../../../core/fixing/acting/proof-loads.ts';
import {
  heightFactor,
  nonStructuralRatio,
  partForceRatio,
  seismicCoefficient,
} from '../../../core/fixing/acting/seismic.ts';
import { pryingPull } from '../../../core/fixing/batten/prying.ts';
import {
  BENDING_12_5,
  midBayPull,
  NAIL_PULL_HALF_INCH,
  punchingStress,
  sheetStress,
  stripModulus,
} from '../../../core/fixing/board/gypsum.ts';
import {
  aciShearBreakout,
  aciTensionBreakout,
  aciTensionBreakoutMetric,
} from '../../../core/fixing/masonry/concrete-aci.ts';
import {
  coneByCubeStrength,
  coneCharacteristic,
  pairAreaRatio,
  pryOut,
} from '../../../core/fixing/masonry/concrete-cone.ts';
import { edgeShear } from '../../../core/fixing/masonry/concrete-edge.ts';
import { CARBIDE_WINDOW, holeDepth, leastScrew } from '../../../core/fixing/masonry/hole.ts';
import {
  brickPullOut,
  INITIAL_SHEAR,
  plugDesign,
  plugForGood,
  plugNearHiddenJoint,
} from '../../../core/fixing/masonry/masonry-plug.ts';
import { pullTestAllowable } from '../../../core/fixing/proof/pull-test.ts';
import { steelInteraction } from '../../../core/fixing/steel/interaction.ts';
import {
  bendingCharacteristic,
  bendingWithTension,
  droop,
  leverArm,
  sectionModulus,
  shearOnArm,
} from '../../../core/fixing/steel/lever-arm.ts';
import { core, nominalOf } from '../../../core/fixing/steel/screw-sizes.ts';
import {
  boltTensionDesign,
  GAMMA_G,
  gammaShear,
  shearCharacteristic,
} from '../../../core/fixing/steel/steel.ts';
import { MPA_PER_PSI, NEWTONS_PER_LBF } from '../../../core/fixing/timber/us-units.ts';
import { mm, mm2, mpa, newtonMm, newtons, STANDARD_GRAVITY } from '../../../core/quantity.ts';
import { agrees, type ReferenceCase } from '../layout/reference.ts';

type Answer = (each: ReferenceCase) => void;

const inch = (value: number) => mm(value * 25.4);
const psi = (value: number) => mpa(value * MPA_PER_PSI);
const kilo = (value: number) => newtons(value * 1000);

/** One row for each case of steel, lever arm, concrete, masonry, board, earthquake and drilling. */
export const WALL_ANSWERS: Record<string, Answer> = {
  'STEEL-02': (each) => {
    const { d_core, f_ub } = each.inputs;
    agrees(each, boltTensionDesign(core(mm(d_core.value)), mpa(f_ub.value)), each.expected.F_tRd);
  },
  'STEEL-03': (each) => {
    const { A_s, f_uk } = each.inputs;
    agrees(each, shearCharacteristic(mm2(A_s.value), mpa(f_uk.value)), each.expected.V_Rk);
  },
  'LEVER-01': (each) => {
    const { d_core, f_uk, e1, alpha_M } = each.inputs;
    const d = core(mm(d_core.value));
    const moment = bendingCharacteristic(d, mpa(f_uk.value));
    agrees(each, sectionModulus(d), each.expected.W_el);
    agrees(each, moment, each.expected.M0_Rk);
    agrees(each, leverArm(d, mm(e1.value)), each.expected.l);
    agrees(each, shearOnArm(moment, leverArm(d, mm(e1.value)), alpha_M.value), each.expected.V_Rk);
  },
  'LEVER-03': (each) => {
    const { M0, N_Ed, N_Rd, l, alpha_M } = each.inputs;
    const moment = bendingWithTension(newtonMm(M0.value), newtons(N_Ed.value), newtons(N_Rd.value));
    agrees(each, moment, each.expected.M_Rk);
    agrees(each, shearOnArm(moment, mm(l.value), alpha_M.value), each.expected.V_Rk);
  },
  'LEVER-06': (each) => {
    const { P, e, E, d } = each.inputs;
    agrees(each, droop(newtons(P.value), mm(e.value), mpa(E.value), core(mm(d.value))), each.expected.delta);
  },
  'LEVER-07': (each) => {
    const { d_core, f_uk, t_plaster, e, gamma_Ms } = each.inputs;
    const d = core(mm(d_core.value));
    const arm = leverArm(d, mm(t_plaster.value + e.value));
    const characteristic = shearOnArm(bendingCharacteristic(d, mpa(f_uk.value)), arm);
    const gamma = gammaShear(mpa(240), mpa(f_uk.value));
    expect(gamma).toBeCloseTo(gamma_Ms.value, 9);
    agrees(each, arm, each.expected.l);
    agrees(each, characteristic, each.expected.V_Rk);
    agrees(each, characteristic / gamma, each.expected.V_Rd);
    agrees(each, characteristic / gamma / GAMMA_G.value / STANDARD_GRAVITY, each.expected.mass_equiv_kg);
  },
  'CONC-01': (each) => {
    const { f_ck, h_ef } = each.inputs;
    for (const crack of ['cracked', 'uncracked'] as const) {
      agrees(
        each,
        coneCharacteristic('post-installed', crack, mpa(f_ck.value), mm(h_ef.value)),
        each.expected[crack],
      );
    }
  },
  'CONC-02': (each) => {
    const { f_ck, h_ef, gamma_Mc } = each.inputs;
    const cone = coneCharacteristic('headed', 'cracked', mpa(f_ck.value), mm(h_ef.value));
    agrees(each, cone, each.expected.N0_Rk_c);
    agrees(each, pryOut(cone, mm(h_ef.value)) / gamma_Mc.value, each.expected.V_Rd_cp);
  },
  'CONC-03': (each) => {
    const { f_ck_cube, h_ef, gamma } = each.inputs;
    const cone = coneByCubeStrength('uncracked', mpa(f_ck_cube.value), mm(h_ef.value));
    agrees(each, cone / gamma.value, each.expected.N_Rd_c);
    agrees(each, cone / gamma.value, each.expected.published_N);
  },
  'CONC-05': (each) => {
    const { h_ef, s, N0 } = each.inputs;
    const share = pairAreaRatio(mm(s.value), mm(h_ef.value));
    agrees(each, share, each.expected.A_ratio);
    agrees(each, share * N0.value, each.expected.N_group);
    agrees(each, share / 2, each.expected.efficiency_per_anchor);
  },
  'CONC-06': (each) => {
    const { d, h_ef, c1, f_ck } = each.inputs;
    const edge = edgeShear('uncracked', mm(d.value), mm(h_ef.value), mm(c1.value), mpa(f_ck.value));
    agrees(each, edge.alpha, each.expected.alpha);
    agrees(each, edge.beta, each.expected.beta);
    agrees(each, edge.resistance, each.expected.V0_Rk_c);
  },
  'CONC-07': (each) => {
    const { f_c, h_ef } = each.inputs;
    const force = aciTensionBreakout('cast-in', psi(f_c.value), inch(h_ef.value)) / NEWTONS_PER_LBF;
    agrees(each, force, each.expected.N_b_lbf);
    agrees(each, force / 1000, each.expected.published_kips);
  },
  'CONC-08': (each) => {
    const { d, h_ef, c_a1, f_c } = each.inputs;
    const force =
      aciShearBreakout('welded', inch(d.value), inch(h_ef.value), inch(c_a1.value), psi(f_c.value)) /
      NEWTONS_PER_LBF;
    agrees(each, force, each.expected.V_b_lbf);
    agrees(each, force / 1000, each.expected.published_kips);
  },
  'CONC-09': (each) => {
    const { f_c, h_ef } = each.inputs;
    agrees(
      each,
      aciTensionBreakoutMetric('post-installed', mpa(f_c.value), mm(h_ef.value)),
      each.expected.N_b,
    );
  },
  'MAS-04': (each) => {
    const test = pullTestAllowable(each.inputs.F_u.value.map(kilo));
    if (!test.ok) throw new Error(test.because);
    agrees(each, test.meanN / 1000, each.expected.mean);
    agrees(each, test.allowableN / 1000, each.expected.F_allow);
  },
  'MAS-05': (each) => {
    const design = plugDesign(kilo(each.inputs.F_Rk.value), 'masonry');
    agrees(each, design / 1000, each.expected.F_Rd);
    agrees(each, plugForGood(design) / 1000, each.expected.F_perm);
    agrees(each, plugForGood(design) / STANDARD_GRAVITY, each.expected.mass);
  },
  'MAS-06': (each) => {
    agrees(each, plugNearHiddenJoint(kilo(each.inputs.F_Rd.value)) / 1000, each.expected.F_Rd_j);
  },
  'MAS-07': (each) => {
    const { l_brick, b_brick, h_brick, f_vk0, sigma_d } = each.inputs;
    const brick = { lengthMm: mm(l_brick.value), breadthMm: mm(b_brick.value), heightMm: mm(h_brick.value) };
    const pull = (uprights: 'open' | 'filled') =>
      brickPullOut(brick, mpa(f_vk0.value), mpa(sigma_d.value), uprights);
    agrees(each, pull('open'), each.expected.N_unfilled);
    agrees(each, pull('filled'), each.expected.N_filled);
  },
  'MAS-09': (each) => {
    agrees(each, steelInteraction(each.inputs.n.value, each.inputs.v.value), each.expected.sum);
  },
  'MAS-11': (each) => {
    const shear = INITIAL_SHEAR.value;
    const found = each.inputs.mortar.map((mortar: keyof typeof shear) => shear[mortar]);
    expect(found).toEqual(each.expected.f_vk0_MPa);
  },
  'GYP-01': (each) => {
    agrees(each, NAIL_PULL_HALF_INCH.value, each.expected.N);
    agrees(each, NAIL_PULL_HALF_INCH.value / NEWTONS_PER_LBF, each.expected.lbf);
  },
  'GYP-04': (each) => {
    const { F_long, F_trans, L, b, t } = each.inputs;
    expect(BENDING_12_5.value).toEqual({
      alongN: F_long.value,
      acrossN: F_trans.value,
      spanMm: L.value,
      widthMm: b.value,
    });
    const stress = (force: number) => sheetStress(newtons(force), mm(L.value), mm(b.value), mm(t.value));
    agrees(each, stress(F_long.value), each.expected.sigma_long);
    agrees(each, stress(F_trans.value), each.expected.sigma_trans);
  },
  'GYP-05': (each) => {
    const { F, d_head, t } = each.inputs;
    agrees(each, punchingStress(newtons(F.value), mm(d_head.value), mm(t.value)), each.expected.tau);
  },
  'GYP-06': (each) => {
    const { sigma, b, t, L, FS } = each.inputs;
    const modulus = stripModulus(mm(b.value), mm(t.value));
    agrees(each, modulus, each.expected.W);
    agrees(each, midBayPull(mpa(sigma.value), modulus, mm(L.value), FS.value), each.expected.P);
  },
  'STAT-01': (each) => {
    const { W, e_cg, h_fix_to_bottom, n } = each.inputs;
    const pull = outwardPull(newtons(W.value), mm(e_cg.value), mm(h_fix_to_bottom.value));
    agrees(each, pull, each.expected.N_total);
    agrees(each, pull / n, each.expected.N_each);
    agrees(each, W.value / n, each.expected.V_each);
  },
  'STAT-03': (each) => {
    const { V, a, z, n } = each.inputs;
    agrees(each, pryingPull(newtons(V.value), mm(a.value), mm(z.value), n), each.expected.N);
  },
  'SEIS-03': (each) => {
    const { kpZ, Ch0, h_x, h_n, I_c, a_c, R_c } = each.inputs;
    const ax = heightFactor(h_x.value, h_n.value);
    agrees(each, ax, each.expected.a_x);
    const ratio = partForceRatio({
      kpZ: kpZ.value,
      ch0: Ch0.value,
      heightFactor: ax,
      importance: I_c,
      amplification: a_c,
      ductility: R_c,
    });
    agrees(each, ratio, each.expected.Fc_over_Wc);
  },
  'SEIS-04': (each) => {
    const { alpha, S, z_over_H, Ta_over_T1, gamma_a, q_a } = each.inputs;
    const coefficient = seismicCoefficient(alpha.value, S, z_over_H, Ta_over_T1);
    agrees(each, coefficient, each.expected.S_a);
    agrees(each, nonStructuralRatio(coefficient, gamma_a, q_a), each.expected.Fa_over_Wa);
  },
  'SF-02': (each) => {
    const breaking = newtons(each.inputs.F_min.value);
    for (const kind of ['wire', 'chain', 'textile'] as const)
      agrees(each, liftingLoad(breaking, kind), each.expected[kind]);
  },
  'SF-03': (each) => agrees(each, GRAB_BAR.value, each.expected.F_N),
  'DRILL-01': (each) => {
    const { l_plug, t_plaster, t_fix, d_s } = each.inputs;
    const least = leastScrew(mm(t_fix.value), mm(t_plaster.value), mm(l_plug.value));
    const hole = { plugMm: mm(l_plug.value), screwMm: mm(least + d_s.value), outsideMm: mm(t_fix.value) };
    agrees(each, least, each.expected.L_s_min_textbook);
    agrees(each, least + d_s.value, each.expected.L_s_recommended);
    agrees(
      each,
      holeDepth({ ...hole, finishMm: mm(t_plaster.value) }),
      each.expected.drill_depth_from_surface,
    );
    agrees(
      each,
      holeDepth({ ...hole, finishMm: mm(t_plaster.value) }) - t_plaster.value,
      each.expected.h1_in_masonry,
    );
  },
  'DRILL-02': (each) => {
    for (const [at, size] of each.inputs.d_nom.entries()) {
      const [least, most] = CARBIDE_WINDOW.value[size as 6 | 8 | 10];
      agrees(each, least, each.expected.d_cut_min[at]);
      agrees(each, most, each.expected.d_cut_max[at]);
    }
  },
  'DRILL-04': (each) => {
    for (const [at, gauge] of each.inputs.N.entries())
      agrees(each, nominalOf(gauge).nominalMm, each.expected.D_mm[at]);
  },
};
