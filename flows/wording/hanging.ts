import type { HangingSoFar } from '../../core/piece/piece.ts';
import type { DisplayUnit } from '../reading.ts';
import { length } from './length.ts';
import { phrases } from './phrases.ts';

type Point = NonNullable<HangingSoFar['points']>[number];

const HANGER: Readonly<Record<NonNullable<HangingSoFar['by']>, string>> = {
  rings: 'rings',
  keyholes: 'keyholes',
  cord: 'cord',
  batten: 'split batten',
  clips: 'clips',
};

/** How it hangs, as said: "rings: 95 mm from each side, 240 mm down". */
export function hangingText(hanging: HangingSoFar, unit: DisplayUnit): string {
  const points = hanging.points ?? [];
  const name = nameOf(hanging);
  const figures = phrases([
    ...pointsText(points, unit),
    hanging.fromTopMm !== undefined && `${length(hanging.fromTopMm, unit)} down`,
    hanging.riseMm !== undefined && `pulls up ${length(hanging.riseMm, unit)}`,
    hanging.lengthMm !== undefined && `${length(hanging.lengthMm, unit)} long`,
    hanging.hooksApartMm !== undefined &&
      (hanging.hooksApartMm === 0 ? 'one hook' : `two hooks ${length(hanging.hooksApartMm, unit)} apart`),
    hanging.seatToScrewMm !== undefined && seatText(hanging.seatToScrewMm, unit),
    hanging.standOffMm !== undefined && `hanger ${length(hanging.standOffMm, unit)} off the wall`,
  ]);
  if (name === '') return figures.join('; ');
  return figures.length === 0 ? name : `${name}: ${figures.join('; ')}`;
}

function nameOf({ by, hanger, points = [] }: HangingSoFar): string {
  if (by === undefined) return points.length === 0 ? '' : 'hangers';
  return hanger === 'sawtooth' ? 'sawtooth hanger' : HANGER[by];
}

function seatText(seat: NonNullable<HangingSoFar['seatToScrewMm']>, unit: DisplayUnit): string {
  return seat === 0
    ? 'screw where the hanger bears'
    : `screw ${length(seat, unit)} above where the hanger bears`;
}

function pointsText(points: readonly Point[], unit: DisplayUnit): string[] {
  const [one, other] = points;
  if (one && other && points.length === 2 && mirrored(one, other)) {
    const side = one.fromLeftMm ?? other.fromLeftMm;
    if (side !== undefined) return [`${length(side, unit)} from each side${downText(one, unit)}`];
  }
  return points.map((point) => pointText(point, unit));
}

function mirrored(one: Point, other: Point): boolean {
  const left = one.fromLeftMm ?? other.fromLeftMm;
  const right = one.fromRightMm ?? other.fromRightMm;
  return left !== undefined && left === right && one.fromTopMm === other.fromTopMm;
}

function pointText(point: Point, unit: DisplayUnit): string {
  const down = downText(point, unit);
  if (point.fromRightMm !== undefined) return `${length(point.fromRightMm, unit)} from the right${down}`;
  if (point.fromLeftMm !== undefined) return `${length(point.fromLeftMm, unit)} from the left${down}`;
  if (point.fromCentreMm === 0) return `in the middle${down}`;
  if (point.fromCentreMm !== undefined) return `${length(point.fromCentreMm, unit)} from the middle${down}`;
  return `somewhere across${down}`;
}

const downText = ({ fromTopMm }: Point, unit: DisplayUnit): string =>
  fromTopMm === undefined ? '' : `, ${length(fromTopMm, unit)} down`;
