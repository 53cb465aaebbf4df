import { type Millimetres, MM_PER_INCH, mm } from '../../quantity.ts';
import { type Sourced, sourced } from '../../sources.ts';

/**
 * Three diameters of one screw that must never be taken for each other. Each is its own shape, so that
 * a formula that wants a core diameter can't be handed a nominal one.
 */
export type NominalDiameter = { readonly nominalMm: Millimetres };
/** Root of a rolled wood-screw thread: the D of the NDS yield modes. */
export type RootDiameter = { readonly rootMm: Millimetres };
/** Core of a tapping screw, bolt or stud: the d of the steel checks. */
export type CoreDiameter = { readonly coreMm: Millimetres };

export const nominal = (value: Millimetres): NominalDiameter => ({ nominalMm: value });
export const root = (value: Millimetres): RootDiameter => ({ rootMm: value });
export const core = (value: Millimetres): CoreDiameter => ({ coreMm: value });

export type Gauge = 6 | 8 | 10 | 12 | 14;
export const GAUGES: readonly Gauge[] = [6, 8, 10, 12, 14];

/** D = 0.060 + 0.013 N inch. */
const GAUGE_BASE_IN = sourced(0.06, 'ASME-B18.6.1', 'NDS-2018 Appendix L, Table L3', 'read');
const GAUGE_STEP_IN = sourced(0.013, 'ASME-B18.6.1', 'NDS-2018 Appendix L, Table L3', 'read');

/** Nominal diameter of a gauge: D = 0.060 + 0.013 N inch (ASME B18.6.1, NDS Table L3), valid for No. 6 to 24. */
export function nominalOf(gauge: number): NominalDiameter {
  return nominal(mm((GAUGE_BASE_IN.value + GAUGE_STEP_IN.value * gauge) * MM_PER_INCH));
}

const inches = (value: number): Millimetres => mm(value * MM_PER_INCH);

/** Root diameters of wood screws by gauge, ASME B18.6.1 as in NDS Table L3. */
export const WOOD_SCREW_ROOT: Sourced<Record<Gauge, RootDiameter>> = sourced(
  {
    6: root(inches(0.113)),
    8: root(inches(0.131)),
    10: root(inches(0.152)),
    12: root(inches(0.171)),
    14: root(inches(0.196)),
  },
  'NDS-2018',
  'Appendix L, Table L3',
  'read',
);

/** Core diameters of tapping screws by gauge: ST3.5, ST4.2, ST4.8, ST5.5, ST6.3. */
export const TAPPING_SCREW_CORE: Sourced<Record<Gauge, CoreDiameter>> = sourced(
  { 6: core(mm(2.64)), 8: core(mm(3.1)), 10: core(mm(3.58)), 12: core(mm(4.17)), 14: core(mm(4.88)) },
  'ISO1478',
  'd2 max',
  'from-memory',
);

/** Thicker things that go in a wall: core of the thread, and what they are sold as. */
export const THICK_CORES: Sourced<
  Record<'coach-8' | 'stud-M8' | 'stud-M10' | 'concrete-screw-6' | 'bolt-M5', CoreDiameter>
> = sourced(
  {
    'coach-8': core(mm(5.6)),
    'stud-M8': core(mm(6.466)),
    'stud-M10': core(mm(8.16)),
    'concrete-screw-6': core(mm(4.8)),
    'bolt-M5': core(mm(4)),
  },
  'our-choice',
  'coach screw as the bending table of the trade reckons it, M8 and M10 the root of their coarse threads; the rest 0.8 of nominal',
  'our-choice',
);
