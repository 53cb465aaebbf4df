import type { Job } from '../../job.ts';
import { lengthText } from '../../layout/length-text.ts';
import { setOut as setOutOf } from '../../layout/marks.ts';
import type { SetOut } from '../../layout/set-out.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { shiftOntoStuds } from '../../wall/stud-shift.ts';
import { hasStuds, type KnownStuds, knownStuds, studAt, TEN_GAUGE } from '../../wall/studs.ts';
import { type Load, loadOf } from '../acting/actions.ts';
import { pick } from '../choose-from.ts';
import { provenOf } from '../proof/holding-cap.ts';
import { walkedOf } from '../walk-candidates.ts';

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
  if (wall.baseMaterial === 'lath-and-plaster' && wall.finish?.kind === 'tile') return ['Another wall.'];
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

/** The nearest move after which something holds: into studs, else clear of their edges; only what was reckoned through is said. */
function moveFor(job: Job, { frame, marks }: SetOut, studs: KnownStuds): string[] {
  const { piece, wall } = job;
  const places = marks.map((mark) => mark.fromLeftMm);
  const room = { leftMm: frame.leftMm, rightMm: mm(wall.widthMm - frame.rightMm) };
  const holds = (by: Millimetres): boolean =>
    holdsAs({ ...job, place: { ...job.place, across: { by: 'left-edge', mm: mm(frame.leftMm + by) } } });
  if (piece.hanging.by === 'batten') {
    const longer = { ...piece.hanging, lengthMm: mm(piece.widthMm - BATTEN_SHOWS.value) };
    return longer.lengthMm > piece.hanging.lengthMm &&
      holdsAs({ ...job, piece: { ...piece, hanging: longer } })
      ? [`A batten ${lengthText(longer.lengthMm)} long reaches the studs that bear it.`]
      : [];
  }
  const onto = shiftOntoStuds(places, studs, TEN_GAUGE.value, room);
  if (onto !== null && onto.centredMm !== 0 && holds(onto.centredMm))
    return [`${moving(onto.centredMm)} lands every mark in a stud.`];
  const clear = offTheEdges(places, studs, room);
  return clear === null || !holds(clear)
    ? []
    : [
        `${moving(clear)} brings every mark clear of the studs' edges, where neither a screw nor an anchor holds.`,
      ];
}

/** Whether something on the wall's walk holds a job so changed. */
function holdsAs(changed: Job): boolean {
  const layout = setOutOf(changed);
  if (!layout.ok) return false;
  const walked = walkedOf(changed, layout, loadOf(changed, layout), provenOf(changed).cap);
  return walked !== null && pick(walked.walk).chosen !== null;
}

/** A batten may come this near the width of the frame before it shows. */
const BATTEN_SHOWS = sourced(
  mm(20),
  'our-choice',
  'a batten 10 mm short of the frame at each end',
  'our-choice',
);

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
