import type { Hanging } from '../../piece/piece.ts';
import { SPRING_WIRE, WORKING_SHARE, wireBreakingForce, workingLoad } from '../../piece/wire-strength.ts';
import type { ChainLink } from '../../plan-shape.ts';
import { type Newtons, newtons } from '../../quantity.ts';
import { type Basis, basisOf, sourced } from '../../sources.ts';
import { upToWhole } from './in-kilograms.ts';

type Cord = Extract<Hanging, { by: 'cord' }>;

const PACKET = {
  source: 'packet',
  at: 'breaking strength of the line, as read out',
  standing: 'common-practice',
} as const;
/** What a single knot or twist leaves of a line. */
const KNOT_LEAVES = sourced(
  1 / 2,
  'common-practice',
  'knots and twists halve a line, rigging practice',
  'from-memory',
);

const QUARTER = basisOf(WORKING_SHARE.tieDown);

/**
 * The line: its tension T = W / (2 sin th) against a quarter of its breaking strength (49 CFR 393.108(e) by
 * analogy). Strength from the packet, else of one solid wire of known kind and size; else what it must be. Newtons.
 */
export function cordLink(cord: Cord, tensionN: Newtons): ChainLink {
  const strength = strengthOf(cord);
  const needs = `a line rated ${upToWhole(neededStrength(tensionN))} kg or more, with double turns at each end and no single knot`;
  if (strength === null) {
    return { link: 'cord', name: 'cord', actionN: tensionN, needs, basis: [QUARTER, basisOf(KNOT_LEAVES)] };
  }
  const resistanceN = workingLoad(strength.breakingN, WORKING_SHARE.tieDown);
  const utilisation = tensionN / resistanceN;
  return {
    link: 'cord',
    name: strength.name,
    actionN: tensionN,
    resistanceN,
    utilisation,
    // A knot takes half of it: where that would be too much, it is said.
    ...(utilisation > KNOT_LEAVES.value && { needs }),
    basis: [strength.basis, QUARTER, basisOf(KNOT_LEAVES)],
  };
}

/** Breaking strength a line needs: T over the share it may carry. */
function neededStrength(tensionN: Newtons): Newtons {
  return newtons(tensionN / WORKING_SHARE.tieDown.value);
}

function strengthOf(cord: Cord): { name: string; breakingN: Newtons; basis: Basis } | null {
  const { cordRatingN, cordKind, cordMm } = cord;
  if (cordRatingN !== undefined && Number.isFinite(cordRatingN) && cordRatingN > 0) {
    return { name: 'cord as rated', breakingN: newtons(cordRatingN), basis: basisOf(PACKET) };
  }
  if ((cordKind !== 'hard-drawn-steel' && cordKind !== 'stainless-wire') || cordMm === undefined) return null;
  const breakingN = wireBreakingForce(cordKind, cordMm);
  const name = cordKind === 'stainless-wire' ? 'stainless wire' : 'hard-drawn steel wire';
  return breakingN === null
    ? null
    : { name: `${cordMm} mm ${name}`, breakingN, basis: basisOf(SPRING_WIRE[cordKind]) };
}
