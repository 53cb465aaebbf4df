import type { Fastener } from '../fixing/fastener.ts';
import { ceilingApart, ceilingOver } from '../layout/ceiling.ts';
import { type Millimetres, mm, settled } from '../quantity.ts';
import { sourced } from '../sources.ts';
import type { Hole } from '../wall/clearance.ts';
import type { Facts } from './facts.ts';
import { aboveFloor } from './heights.ts';

const BIT_UNKNOWN = sourced(mm(10), 'our-choice', 'bit, while no fastener is chosen', 'our-choice');

/** The holes of a set-out in the wall's own frame, heights above the floor; none while nothing is set out. */
export function holesOf({ job, setOut }: Facts): Hole[] {
  if (!setOut) return [];
  const wall = ceilingApart(job.wall ?? {});
  return setOut.marks.map(({ id, fromLeftMm, upMm, downMm }) => {
    const up = aboveFloor(job, upMm, setOut.datumAboveFloorMm);
    const ceiling = ceilingOver(wall, fromLeftMm);
    const below = up !== null && ceiling !== null ? mm(ceiling - up) : (downMm ?? null);
    return { id, xMm: fromLeftMm, upMm: up, downMm: below };
  });
}

/** Radius of the hole in the finish, millimetres. */
export function radiusOf({ fixing }: Facts): Millimetres {
  const diameter = fixing?.ok ? fixing.fixing.bit.diameterMm : BIT_UNKNOWN.value;
  return mm(diameter / 2);
}

/** Screws that bite in timber: where no pilot is told, the screw itself says how deep they go. */
const IN_TIMBER: readonly Fastener[] = ['stud-screw', 'timber-screw', 'batten-screws', 'board-across-studs'];

/**
 * How deep from the finished face the hole goes: bit or pilot, or a screw in timber. A bolt that only passes
 * a sheet into the cavity behind it makes no deeper hole than the sheet. Null while nothing is chosen.
 */
export function depthOf({ fixing }: Facts): Millimetres | null {
  if (!fixing?.ok) return null;
  const { bit, fastener, pilot, plug, screw } = fixing.fixing;
  const byScrew = plug === undefined && pilot === undefined && IN_TIMBER.includes(fastener);
  return settled(mm(Math.max(bit.depthMm, pilot?.depthMm ?? 0, byScrew ? (screw?.lengthMm ?? 0) : 0)));
}
