import type { JobSoFar } from '../../../core/job.ts';
import type { Accessory, Unplaced } from '../../../core/wall/wall.ts';
import { soundsReplacing } from '../steering/replacing.ts';
import type { Told } from './told.ts';

/** Two readings of a tape this near are of one fitting; our choice. In millimetres. */
const SAME_PLACE_MM = 5;

type Known = { accessories: readonly Accessory[]; unplaced: readonly Unplaced[] };

export function knownOf(wall: JobSoFar['wall']): Known {
  const accessories = Array.isArray(wall?.accessories) ? wall.accessories : [];
  return { accessories, unplaced: wall?.unplaced ?? [] };
}

/**
 * What is on the wall once a message is heard. A fitting told later is one more; only words that take
 * something back put one in another's place. Null when they do, and it is not plain which is meant.
 */
export function listWith(
  told: Told,
  known: Known,
  words: string,
): { accessories: Accessory[]; unplaced: Unplaced[] } | null {
  const accessories = [...known.accessories];
  let unplaced = [...known.unplaced];
  const more: Unplaced[] = [];
  const replaces = soundsReplacing(words);
  const take = (one: Accessory): void => {
    if (!accessories.some((each) => isSame(each, one))) accessories.push(one);
  };
  for (const one of told.placed) {
    const filled = unplaced.findIndex((each) => couldBe(each, one));
    if (filled >= 0) {
      const size = unplaced[filled];
      unplaced = unplaced.filter((_, at) => at !== filled);
      take({ ...(size?.widthMm !== undefined && { widthMm: size.widthMm }), ...one });
    } else if (replaces && known.accessories.length > 0) {
      const meant = meantBy(one, known.accessories, words);
      if (meant === null) return null;
      if (meant === 'none') take(one);
      else accessories[accessories.indexOf(meant)] = { ...meant, ...one };
    } else take(one);
  }
  for (const one of told.unplaced) {
    const meant = replaces ? corrected(one, accessories, words) : null;
    if (meant !== null) {
      accessories[accessories.indexOf(meant.was)] = meant.now;
      continue;
    }
    const at = unplaced.findIndex(
      (each) => each.kind === one.kind && (each.face ?? one.face) === (one.face ?? each.face),
    );
    const before = unplaced[at];
    if (before === undefined) more.push(one);
    else {
      unplaced = unplaced.filter((each) => each !== before);
      more.push({ ...before, ...one });
    }
  }
  return wholeNow(accessories, [...unplaced, ...more]);
}

/** What has all of its place now is a fitting like the others. */
function wholeNow(
  accessories: Accessory[],
  unplaced: readonly Unplaced[],
): { accessories: Accessory[]; unplaced: Unplaced[] } {
  const left: Unplaced[] = [];
  for (const { whereabouts, ...one } of unplaced) {
    const { face, xMm, yMm } = one;
    if (face === undefined || xMm === undefined || yMm === undefined)
      left.push({ ...one, ...(whereabouts && { whereabouts }) });
    else accessories.push({ ...one, face, xMm, yMm });
  }
  return { accessories, unplaced: left };
}

const isSame = (one: Accessory, other: Accessory): boolean =>
  one.kind === other.kind && one.face === other.face && near(one.xMm, other.xMm) && near(one.yMm, other.yMm);

const near = (one: number, other: number): boolean => Math.abs(one - other) <= SAME_PLACE_MM;

function couldBe(each: Unplaced, one: Accessory): boolean {
  return (
    each.kind === one.kind &&
    (each.face === undefined || each.face === one.face) &&
    (each.xMm === undefined || near(each.xMm, one.xMm)) &&
    (each.yMm === undefined || near(each.yMm, one.yMm))
  );
}

/** The fitting that a correction is about: the only one of its kind and face, or the one whose old figure is named. */
function meantBy(
  one: Pick<Accessory, 'kind'> & Partial<Accessory>,
  list: readonly Accessory[],
  words: string,
): Accessory | 'none' | null {
  const alike = list.filter(
    ({ kind, face }) => kind === one.kind && (one.face === undefined || face === one.face),
  );
  const not = /\bnot (\d+)/.exec(words)?.[1];
  const named = alike.filter(
    ({ xMm, yMm }) => not !== undefined && (near(xMm, Number(not)) || near(yMm, Number(not))),
  );
  const [only, other] = named.length > 0 ? named : alike;
  if (only === undefined) return 'none';
  return other === undefined ? only : null;
}

/** "The socket is at 700, not 600": one figure is changed, the others stay. */
function corrected(
  one: Unplaced,
  list: readonly Accessory[],
  words: string,
): { was: Accessory; now: Accessory } | null {
  if (one.xMm === undefined && one.yMm === undefined) return null;
  const was = meantBy(one, list, words);
  return was === null || was === 'none' ? null : { was, now: { ...was, ...one } };
}
