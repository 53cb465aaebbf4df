import type { Job } from '../job.ts';
import { lengthText } from '../layout/length-text.ts';
import type { SetOut } from '../layout/set-out.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { shiftOntoStuds } from '../wall/stud-shift.ts';
import { hasStuds, type KnownStuds, knownStuds, studAt, TEN_GAUGE } from '../wall/studs.ts';
import type { Load } from './actions.ts';

const GENERAL =
  'Someone who can design and sign for it; or a rating from the packet or a pull test on site that holds; or more hangers, or a split batten, where the piece allows; or standing it on the floor.';

export type NothingDoes = { readonly because: string; readonly clears: string };

/**
 * Why a job that nothing holds is stopped, and what would clear it: first what can be found out or moved, then
 * who can design it. No hole position is in it, only how far the piece would have to move.
 */
export function nothingHolds(job: Job, setOut: SetOut, { actions }: Load): NothingDoes {
  if (!Number.isFinite(actions.weightN)) {
    return {
      because: 'How heavy the piece is is not known, so nothing can be said to hold it.',
      clears: 'Weigh it, or say what it is made of.',
    };
  }
  const remedies = remediesFor(job, setOut);
  return {
    because:
      remedies.length > 0
        ? 'Nothing this program has a value for holds that in this wall as it stands.'
        : 'Nothing this program has a value for holds that in this wall. This needs someone who can design and sign for it.',
    clears: [...remedies, GENERAL].join(' Or: '),
  };
}

function remediesFor(job: Job, setOut: SetOut): string[] {
  const { wall } = job;
  const said: string[] = [];
  if (hasStuds(wall.baseMaterial)) {
    const studs = knownStuds(wall);
    if (studs === null)
      said.push(
        'Find the studs, and give the middle of the first, the spacing and the width: timber bears more than board.',
      );
    else said.push(...moveFor(job, setOut, studs));
  } else if (wall.cores === 'hollow' && wall.voidMm === undefined) {
    said.push('Measure how deep the cells are clear behind the face: a toggle needs that room.');
  }
  return said;
}

/** The nearest move that lands every mark in a stud; else the one that brings them clear of its edges. */
function moveFor({ piece, wall }: Job, { frame, marks }: SetOut, studs: KnownStuds): string[] {
  if (piece.hanging.by === 'batten')
    return marks.length < 2 ? ['A batten long enough to cross two studs.'] : [];
  const places = marks.map((mark) => mark.fromLeftMm);
  const room = { leftMm: frame.leftMm, rightMm: mm(wall.widthMm - frame.rightMm) };
  const onto = shiftOntoStuds(places, studs, TEN_GAUGE.value, room);
  if (onto !== null && onto.centredMm !== 0) return [`${moving(onto.centredMm)} lands every mark in a stud.`];
  const clear = offTheEdges(places, studs, room);
  return clear === null
    ? []
    : [
        `${moving(clear)} brings every mark clear of the studs' edges, where neither a screw nor an anchor holds.`,
      ];
}

const moving = (by: Millimetres): string =>
  `Moving the whole piece ${lengthText(mm(Math.abs(by)))} to the ${by < 0 ? 'left' : 'right'}`;

/** The least move, in whole steps, after which no mark is on a stud at all; null when none is needed or none does. */
function offTheEdges(
  places: readonly Millimetres[],
  studs: KnownStuds,
  room: { leftMm: Millimetres; rightMm: Millimetres },
): Millimetres | null {
  const isOn = (by: number): boolean =>
    places.some(
      (at) => Math.abs(at + by - studAt(mm(at + by), studs)) <= studs.widthMm / 2 + TEN_GAUGE.value,
    );
  if (!isOn(0)) return null;
  for (let by = 1; by <= studs.spacingMm / 2; by += 1) {
    if (by <= room.rightMm && !isOn(by)) return mm(by);
    if (by <= room.leftMm && !isOn(0 - by)) return mm(0 - by);
  }
  return null;
}
