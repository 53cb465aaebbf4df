import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import type { Hole } from '../wall/clearance.ts';
import type { Facts } from './facts.ts';
import { aboveFloor } from './heights.ts';

const BIT_UNKNOWN = sourced(mm(10), 'our-choice', 'bit, while no fastener is chosen', 'our-choice');

/** The holes of a set-out in the wall's own frame, heights above the floor; none while nothing is set out. */
export function holesOf({ job, setOut }: Facts): Hole[] {
  if (!setOut) return [];
  const ceiling = job.wall?.heightMm;
  return setOut.marks.map(({ id, fromLeftMm, upMm, downMm }) => {
    const up = aboveFloor(job, upMm, setOut.datumAboveFloorMm);
    const below = up !== null && ceiling !== undefined ? mm(ceiling - up) : (downMm ?? null);
    return { id, xMm: fromLeftMm, upMm: up, downMm: below };
  });
}

/** Radius of the hole in the finish, millimetres. */
export function radiusOf({ fixing }: Facts): Millimetres {
  const diameter = fixing?.ok ? fixing.fixing.bit.diameterMm : BIT_UNKNOWN.value;
  return mm(diameter / 2);
}

/** How deep from the finished face anything goes: bit, pilot, or a screw in timber. Null while nothing is chosen. */
export function depthOf({ fixing }: Facts): Millimetres | null {
  if (!fixing?.ok) return null;
  const { bit, pilot, screw, plug } = fixing.fixing;
  const screwOnly = plug === undefined ? (screw?.lengthMm ?? 0) : 0;
  const inTimber = bit.kind === 'wood' || bit.kind === 'metal' ? screwOnly : 0;
  return mm(Math.max(bit.depthMm, pilot?.depthMm ?? 0, inTimber));
}
