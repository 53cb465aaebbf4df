import { expect } from 'vitest';
import { woodScrewAtAngle } from '../../../core/fixing/steel/interaction.ts';
import { yieldMoment } from '../../../core/fixing/steel/lever-arm.ts';
import { nominal, nominalOf, root, WOOD_SCREW_ROOT } from '../../../core/fixing/steel/screw-sizes.ts';
import { K_MOD, LOAD_DURATION_CD } from '../../../core/fixing/timber/duration.ts';
import {
  bearingLength,
  bendingYield,
  dowelBearing,
  dowelBearingAsTabled,
  leastThread,
  PENETRATION,
  reductionTerm,
  STEEL_PLATE_BEARING,
} from '../../../core/fixing/timber/timber-bearing.ts';
import { proportionalLateral, textbookLateral } from '../../../core/fixing/timber/timber-empirical.ts';
import { lateralWithGap } from '../../../core/fixing/timber/timber-gap.ts';
import { type Joint, lateralNoGap } from '../../../core/fixing/timber/timber-lateral.ts';
import {
  densityOf,
  pilotHole,
  STRENGTH_CLASS_DENSITY,
  shankHole,
} from '../../../core/fixing/timber/timber-species.ts';
import {
  allowableWithdrawal,
  nailWithdrawal,
  ultimateWithdrawal,
  ultimateWithdrawalInchForm,
} from '../../../core/fixing/timber/timber-withdrawal.ts';
import { MPA_PER_PSI, NEWTONS_PER_LBF } from '../../../core/fixing/timber/us-units.ts';
import { degrees, mm, mpa, newtons } from '../../../core/quantity.ts';
import { agrees, type ReferenceCase } from '../layout/reference.ts';

type Answer = (each: ReferenceCase) => void;

const inch = (value: number) => mm(value * 25.4);
const psi = (value: number) => mpa(value * MPA_PER_PSI);
const lbf = (force: number) => force / NEWTONS_PER_LBF;
/** Pounds an inch, from newtons over a length of one inch. */
const ONE_INCH = inch(1);

/** A joint as a case writes it, in inches and psi. */
function jointOf({ D_r, t_s, l_s, l_m, F_em, F_es, F_yb, R_d, g }: ReferenceCase['inputs']): Joint {
  return {
    d: root(inch(D_r.value)),
    main: { lengthMm: inch(l_m.value), bearing: psi(F_em.value) },
    side: { lengthMm: inch((l_s ?? t_s).value), bearing: psi(F_es.value) },
    bendingYield: psi(F_yb.value),
    reduction: R_d.value,
    gapMm: inch(g?.value ?? 0),
  };
}

/** One row for each case of timber. */
export const TIMBER_ANSWERS: Record<string, Answer> = {
  'WOOD-WD-01': (each) => {
    const { G, D, L } = each.inputs;
    agrees(each, ultimateWithdrawal(G.value, nominal(mm(D.value)), mm(L.value)), each.expected.p_ultimate);
  },
  'WOOD-WD-02': (each) => {
    const { G, D, L } = each.inputs;
    const force = ultimateWithdrawalInchForm(G.value, nominal(inch(D.value)), inch(L.value));
    agrees(each, lbf(force), each.expected.p_ultimate);
  },
  'WOOD-WD-03': (each) => {
    const { G, D } = each.inputs;
    const force = allowableWithdrawal(G.value, nominal(inch(D.value)), ONE_INCH);
    agrees(each, lbf(Number(force)), each.expected.W);
  },
  'WOOD-WD-04': (each) => {
    const { G, D, C_D, p_t } = each.inputs;
    const force = Number(allowableWithdrawal(G.value, nominal(inch(D.value)), inch(p_t.value))) * C_D.value;
    expect(LOAD_DURATION_CD.value.permanent).toBe(C_D.value);
    agrees(each, force, each.expected.F_allow_N);
    agrees(each, lbf(force), each.expected.F_allow_lbf);
  },
  'WOOD-GAUGE-01': (each) => {
    const { D_in, D_mm } = each.expected;
    for (const [at, gauge] of each.inputs.N.entries()) {
      agrees(each, nominalOf(gauge).nominalMm / 25.4, D_in[at]);
      expect(nominalOf(gauge).nominalMm).toBeCloseTo(D_mm[at], 2);
    }
  },
  'WOOD-PILOT-01': (each) => {
    const d = WOOD_SCREW_ROOT.value[10];
    expect(d.rootMm / 25.4).toBeCloseTo(each.inputs.D_root.value, 6);
    agrees(each, pilotHole(d, 'softwood'), each.expected.pilot_softwood_mm);
    agrees(each, pilotHole(d, 'hardwood'), each.expected.pilot_hardwood_mm);
    agrees(each, shankHole(nominalOf(10)).nominalMm, each.expected.shank_hole_mm);
  },
  'WOOD-THREAD-01': (each) => {
    const d = nominal(inch(each.inputs.D.value));
    const { T_min, E, p_min, p_full } = each.expected;
    agrees(each, leastThread(d, inch(each.inputs.L.value)) / 25.4, T_min);
    agrees(each, (PENETRATION.value.tip * d.nominalMm) / 25.4, E);
    agrees(each, (PENETRATION.value.least * d.nominalMm) / 25.4, p_min);
    agrees(each, (PENETRATION.value.full * d.nominalMm) / 25.4, p_full);
  },
  'WOOD-LAT-01': (each) => {
    const g = each.inputs.G.value;
    agrees(each, dowelBearing(g) / MPA_PER_PSI, each.expected.F_e_raw);
    agrees(each, dowelBearingAsTabled(g) / MPA_PER_PSI, each.expected.F_e_rounded);
    agrees(each, dowelBearingAsTabled(g), each.expected.F_e_MPa);
  },
  'WOOD-LAT-02': (each) => {
    for (const [at, g] of each.inputs.G.entries()) {
      agrees(each, dowelBearingAsTabled(g) / MPA_PER_PSI, each.expected.F_e_rounded[at]);
    }
  },
  'WOOD-LAT-03': (each) => {
    const { D, D_r, p, l_m, F_yb, R_d } = each.inputs;
    const d = nominal(inch(D.value));
    expect(bearingLength(inch(p.value), d) / 25.4).toBeCloseTo(l_m.value, 6);
    expect(Number(bendingYield(d)) / MPA_PER_PSI).toBeCloseTo(F_yb.value, 3);
    expect(reductionTerm(root(inch(D_r.value)))).toBe(R_d.value);
    const { mode, allowable } = lateralNoGap(jointOf(each.inputs));
    expect(mode).toBe(each.expected.mode);
    agrees(each, lbf(allowable), each.expected.Z);
    agrees(each, lbf(allowable), each.expected.published_table_value_lbf);
  },
  'WOOD-LAT-05': (each) => {
    const { D, G } = each.inputs;
    // A smooth nail: its nominal diameter stands where a screw's root does; bearing not rounded.
    const bearing = { value: dowelBearing(G.value) / MPA_PER_PSI };
    const { mode, allowable } = lateralNoGap(
      jointOf({ ...each.inputs, D_r: D, F_em: bearing, F_es: bearing }),
    );
    expect(mode).toBe(each.expected.mode);
    agrees(each, allowable, each.expected.Z_N);
    agrees(each, lbf(allowable), each.expected.Z_lbf);
  },
  'WOOD-LAT-06': (each) => {
    const { G, D } = each.inputs;
    const force = nailWithdrawal(G.value, nominal(inch(D.value)), ONE_INCH);
    agrees(each, lbf(force), each.expected.W_lbf_in);
    agrees(each, nailWithdrawal(G.value, nominal(inch(D.value)), mm(1000)), each.expected.W_N_per_m);
  },
  'WOOD-LAT-07': (each) => {
    expect(STEEL_PLATE_BEARING.value / MPA_PER_PSI).toBeCloseTo(each.inputs.F_es.value, 3);
    const { mode, allowable } = lateralNoGap(jointOf(each.inputs));
    expect(mode).toBe(each.expected.mode);
    agrees(each, lbf(allowable), each.expected.Z);
    agrees(each, allowable, each.expected.Z_N);
  },
  'WOOD-LAT-10': (each) => {
    const force = proportionalLateral('softwood', 0.45, nominal(mm(each.inputs.D.value)));
    agrees(each, Number(force), each.expected.p);
    agrees(each, lbf(Number(force)), each.expected.p_lbf);
  },
  'WOOD-LAT-11': (each) => {
    agrees(each, lbf(textbookLateral('II', nominal(inch(each.inputs.D.value)))), each.expected.p);
  },
  'WOOD-LAT-12': (each) => {
    const joint = jointOf(each.inputs);
    const { mode, allowable } = lateralWithGap(joint);
    expect(mode).toBe(each.expected.mode);
    agrees(each, lbf(allowable), each.expected.Z);
    agrees(each, allowable, each.expected.Z_N);
    agrees(each, lbf(lateralNoGap(joint).allowable), each.expected.Z_no_gap);
    // With no gap the general dowel equations are the yield modes of the code.
    agrees(each, lbf(lateralWithGap({ ...joint, gapMm: mm(0) }).allowable), each.expected.Z_no_gap);
  },
  'WOOD-COMB-01': (each) => {
    const { W_p, Z, alpha } = each.inputs;
    const force = woodScrewAtAngle(newtons(W_p.value), newtons(Z.value), degrees(alpha.value));
    agrees(each, force, each.expected.Z_alpha);
  },
  'WOOD-SG-02': (each) => {
    const classes = STRENGTH_CLASS_DENSITY.value;
    const rows = each.inputs.class.map((name: keyof typeof classes) => classes[name]);
    expect(rows.map((row: { characteristic: number }) => row.characteristic)).toEqual(each.expected.rho_k);
    expect(rows.map((row: { mean: number }) => row.mean)).toEqual(each.expected.rho_mean);
  },
  'WOOD-DENS-01': (each) => {
    const { G_M, M } = each.inputs;
    agrees(each, densityOf(G_M.value, M.value / 100), each.expected.rho);
  },
  'LEVER-05': (each) => {
    const { F_yb, D_r } = each.inputs;
    const moment = yieldMoment(root(inch(D_r.value)), psi(F_yb.value));
    agrees(each, moment, each.expected.M_Nmm);
    agrees(each, lbf(moment) / 25.4, each.expected.M_lbf_in);
  },
  'SF-01': (each) => {
    expect(LOAD_DURATION_CD.value.permanent).toBe(each.expected.C_D);
    expect(K_MOD.value.permanent).toBe(each.expected.kmod_SC1);
  },
};
