import type { Build, Piece } from '../../piece/piece.ts';
import type { ChainLink } from '../../plan-shape.ts';
import { mm, type Newtons, newtons, times } from '../../quantity.ts';
import { type Basis, basisOf, sourced } from '../../sources.ts';
import { type Gauge, nominalOf, WOOD_SCREW_ROOT } from '../steel/screw-sizes.ts';
import { LOAD_DURATION_CD } from '../timber/duration.ts';
import {
  bearingLength,
  bendingYield,
  dowelBearing,
  PENETRATION,
  penetrationShare,
  reductionTerm,
  STEEL_PLATE_BEARING,
} from '../timber/timber-bearing.ts';
import { lateralNoGap } from '../timber/timber-lateral.ts';

type FrameMaterial = NonNullable<Build['frame']>['material'];

/** Specific gravity of a frame by what it is called: of what the name covers, the lightest listed. */
const FRAME_G = sourced<Partial<Record<FrameMaterial, number>>>(
  { softwood: 0.36, hardwood: 0.43, oak: 0.67 },
  'NDS-2018',
  'Table 12.3.3A: the lightest softwood, yellow poplar, red oak',
  'read',
);
/** Screws of a ring, when nobody said: gauge, how many carry, plate thickness; and how far the point stays off the face. */
const RING_SCREW = sourced(
  {
    'd-ring': { gauge: 6, count: 1 },
    'strap-ring': { gauge: 8, count: 2 },
    plateMm: mm(1.2),
    shortOfFaceMm: mm(3),
  } as const,
  'our-choice',
  'the screws rings are sold with; as long as the frame is thick less 3 (trade 5.3)',
  'our-choice',
);

const YIELD: Basis = basisOf({
  source: 'NDS-2018',
  at: '12.3.1 with a thin steel side plate',
  standing: 'read',
});

/**
 * The ring's own screws in the frame, the load square to them: NDS 12.3.1 through a thin steel plate, x C_D 0.9,
 * in newtons; null where the frame or the ring is not known. Below 6 D in the wood the tables give nothing.
 */
export function ringScrewLink(
  { build }: Pick<Piece, 'build'>,
  ring: 'd-ring' | 'strap-ring',
  actionN: Newtons,
): ChainLink | null {
  const g = build?.frame ? FRAME_G.value[build.frame.material] : undefined;
  if (!build?.frame || g === undefined) return null;
  const { gauge, count } = RING_SCREW.value[ring];
  const { plateMm, shortOfFaceMm } = RING_SCREW.value;
  const inWoodMm = mm(build.frame.thicknessMm - shortOfFaceMm);
  const basis = [YIELD, basisOf(FRAME_G), basisOf(RING_SCREW), basisOf(PENETRATION)];
  const name = `${count === 1 ? 'the ring’s screw' : 'the ring’s two screws'} in the frame`;
  const resistanceN = lateralOf(gauge, g, inWoodMm, plateMm, count);
  if (resistanceN === null) {
    const least = Math.ceil(PENETRATION.value.least * nominalOf(gauge).nominalMm);
    const needs = `${least} mm of screw in the wood before any published figure counts; a back batten across the frame gives it`;
    return { link: 'hanger-screw', name, actionN, needs, basis };
  }
  return { link: 'hanger-screw', name, actionN, resistanceN, utilisation: actionN / resistanceN, basis };
}

function lateralOf(
  gauge: Gauge,
  g: number,
  inWoodMm: ReturnType<typeof mm>,
  plateMm: ReturnType<typeof mm>,
  count: number,
): Newtons | null {
  const nominal = nominalOf(gauge);
  const d = WOOD_SCREW_ROOT.value[gauge];
  const share = penetrationShare(inWoodMm, nominal);
  const yieldMpa = bendingYield(nominal);
  if (share === 0 || typeof yieldMpa === 'object') return null;
  const { allowable } = lateralNoGap({
    d,
    main: { lengthMm: bearingLength(inWoodMm, nominal), bearing: dowelBearing(g) },
    side: { lengthMm: plateMm, bearing: STEEL_PLATE_BEARING.value },
    bendingYield: yieldMpa,
    reduction: reductionTerm(d),
    gapMm: mm(0),
  });
  return newtons(times(allowable, share * count) * LOAD_DURATION_CD.value.permanent);
}
