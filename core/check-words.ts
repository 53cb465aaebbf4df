import { tiltCaution } from './caution/hanging/level.ts';
import { TAPE_READING } from './layout/tolerance.ts';
import type { Pair } from './measured-marks.ts';
import type { Caution } from './plan-shape.ts';
import { type Degrees, degrees, difference, type Millimetres, mm, toTenth } from './quantity.ts';

/** A tape from the datum below a later mark reads what the datum's fall makes of it: said, so that nobody moves a right mark. */
export function readBelow({ planned, found }: Pair): string[] {
  const { id, upMm, upHereMm } = planned;
  if (upMm === undefined || upHereMm === undefined) return [];
  const reads = Math.abs(difference(found.upMm, upHereMm)) <= TAPE_READING.value;
  return reads && Math.abs(difference(upHereMm, upMm)) > TAPE_READING.value
    ? [
        `If ${id} was measured up from straight below it, it is right: the datum runs out, and a tape there should read ${toTenth(upHereMm)} mm.`,
      ]
    : [];
}

/** What a tilt is worth saying. */
export function tiltSaid(tiltDeg: Degrees | null): Caution[] {
  const said = tiltDeg === null ? null : tiltCaution(tiltDeg);
  return said === null ? [] : [said];
}

/** A tilt in words, where it is worth saying. */
export function tiltText(tiltDeg: Degrees | null): string[] {
  return tiltDeg === null || tiltSaid(tiltDeg).length === 0
    ? []
    : [
        `As marked it would hang ${toTenth(degrees(Math.abs(tiltDeg)))} degrees out, ${tiltDeg > 0 ? 'right' : 'left'} side high.`,
      ];
}

/** Which way and how far a mark is off, in words; what a tape can't tell is left out. */
export function wayOff({ across, up }: { across: Millimetres; up: Millimetres }): string {
  const ways: string[] = [];
  if (Math.abs(across) > TAPE_READING.value)
    ways.push(`${toTenth(mm(Math.abs(across)))} mm too far ${across > 0 ? 'right' : 'left'}`);
  if (Math.abs(up) > TAPE_READING.value)
    ways.push(`${toTenth(mm(Math.abs(up)))} mm too ${up > 0 ? 'high' : 'low'}`);
  return ways.join(' and ');
}
