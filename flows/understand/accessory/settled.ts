import type { JobSoFar } from '../../../core/job.ts';
import { difference, type Millimetres, mm } from '../../../core/quantity.ts';
import type { AccessoryKind } from '../../../core/wall/wall.ts';
import type { Lengths } from './units.ts';

/** Where a fitting is, as far as the words tell. More than one of an axis: as many places. */
export type Place = {
  xs: Millimetres[];
  ys: Millimetres[];
  /** Told with "both" or "all": of those before it too. */
  sharedX: boolean;
  sharedY: boolean;
  widthMm?: Millimetres;
  heightMm?: Millimetres;
  /** No word said which way a figure is measured. */
  inferred: boolean;
  /** Figures that do not fit together: none of them is taken. */
  muddled: boolean;
};

export type Room = {
  words: string;
  wall: JobSoFar['wall'];
  lengths: Lengths;
  mirrored: boolean;
  kind: AccessoryKind;
  atEnd: 'left' | 'right' | null;
  /** Across is known from before. */
  onlyUp: boolean;
};

/** Nearer than this to an end, or higher than this, no fitting has its middle; our choice. */
const LEAST_ACROSS = mm(20);
const LEAST_UP = mm(45);
const MOST_UP = mm(6000);
const MOST_ACROSS = mm(30_000);
/** The lower of the common door leaves: a door reaches from the floor at least so far. Our choice. */
const DOOR_HEIGHT = mm(1980);
/** A figure given twice, in two units, differs by no more; our choice. */
const SAME = 0.02;

const FULL_HEIGHT =
  /\b(?:floor to ceiling|full height|all the way (?:up|down)|top to bottom|vertical(?:ly)?|(?:runs?|running|goes|going|comes|straight) (?:straight )?(?:up|down))\b/;

/** A place once its figures are together: what goes without saying is added, and what cannot be is nobody's. */
export function settled(place: Place, count: number, room: Room): Place {
  atTheEnd(place, room);
  doorStands(place, room.kind);
  runsUp(place, room);
  return within(place, count, room);
}

function atTheEnd(place: Place, { atEnd, wall }: Room): void {
  if (atEnd === null || place.widthMm === undefined || place.xs.length > 0) return;
  if (atEnd === 'left') place.xs.push(mm(place.widthMm / 2));
  else if (wall?.widthMm !== undefined) place.xs.push(difference(wall.widthMm, mm(place.widthMm / 2)));
}

function doorStands(place: Place, kind: AccessoryKind): void {
  if (kind !== 'door' || place.ys.length > 0) return;
  place.heightMm ??= DOOR_HEIGHT;
  place.ys.push(mm(place.heightMm / 2));
  place.inferred = true;
}

/** A pipe from floor to ceiling has no height of its own: it is taken where it leaves the floor. */
function runsUp(place: Place, { kind, words }: Room): void {
  if (
    (kind !== 'pipe' && kind !== 'cable' && kind !== 'gas') ||
    place.ys.length > 0 ||
    !FULL_HEIGHT.test(words)
  )
    return;
  place.ys.push(LEAST_UP);
  place.inferred = true;
}

/** A figure told twice counts once; more places than fittings, or one outside the wall, is a muddle. */
function within(place: Place, count: number, { wall, mirrored }: Room): Place {
  const once = (values: readonly Millimetres[]): Millimetres[] =>
    values.filter((value, at) => !values.slice(0, at).some((each) => Math.abs(each - value) <= SAME * each));
  const [xs, ys] = [count > 1 ? place.xs : once(place.xs), count > 1 ? place.ys : once(place.ys)];
  const width = wall?.widthMm ?? MOST_ACROSS;
  const height = wall?.heightMm ?? MOST_UP;
  const off =
    xs.some((x) => x < LEAST_ACROSS || x > difference(width, LEAST_ACROSS)) ||
    ys.some((y) => y < LEAST_UP || y > height);
  const many = xs.length > count || ys.length > count;
  if (place.muddled || off || many) return { ...place, xs: [], ys: [], inferred: false, muddled: true };
  if (!mirrored) return { ...place, xs, ys };
  const turned = wall?.widthMm === undefined ? [] : xs.map((x) => difference(width, x));
  return { ...place, xs: turned, ys };
}
