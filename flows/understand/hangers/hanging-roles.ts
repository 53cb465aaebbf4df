import type { Hanging } from '../../../core/piece/piece.ts';
import type { Found } from '../lengths/length.ts';
import { isPartedFromNoun, subjectBefore } from '../lengths/subject.ts';
import { isWord, type Token } from '../words/token.ts';
import { type Sided, sided } from './hanging-side.ts';
import { type Target, target } from './hanging-target.ts';

type Role =
  | 'in'
  | 'from-left'
  | 'from-right'
  | 'down'
  | 'rise'
  | 'peak'
  | 'length'
  | 'apart'
  | 'span'
  | 'seat'
  | 'stand-off'
  | null;

/** A length with what it measures and on which side. */
export type Placed = Sided<Found & { role: Role }>;

/** A small bare figure beside a large one counts hangers; our choice. */
const MOST_COUNTED = 8;

/** What each length of an answer about hangers measures, and on which side. */
export function placed(all: readonly Token[], lengths: readonly Found[], by: Hanging['by'] | null): Placed[] {
  const roles = lengths.map((each) => roleOf(all, each, by));
  for (let at = lengths.length - 2; at >= 0; at -= 1) {
    if (roles[at] !== null) continue;
    const [here, next] = [lengths[at], lengths[at + 1]];
    if (here && next) roles[at] = inherited(all, here, next, roles[at + 1] ?? null, roles.slice(0, at));
  }
  return sided(
    all,
    lengths.map((each, at) => ({ ...each, role: roles[at] ?? null })),
  );
}

function roleOf(all: readonly Token[], found: Found, by: Hanging['by'] | null): Role {
  const next = all[found.to];
  const before = all.slice(Math.max(0, found.from - 4), found.from).map((each) => each.text);
  const near = before.slice(-2).join(' ');
  if (
    before.join(' ').endsWith('to screw') ||
    /\bto screw( is| =| of)?$/.test(before.join(' ')) ||
    seatAfter(all, found)
  )
    return 'seat';
  if (/\b(stand ?off)( is| =| of)?$/.test(before.join(' '))) return 'stand-off';
  const tight = before.some((word) =>
    /^(pull|pulls|pulled|comes|come|goes|go|rise|rises|up|lifts|tight|peak|peaks|slack|apex)$/.test(word),
  );
  if (isWord(next, 'apart', 'between', 'centres', 'centers'))
    return by === 'cord' && !isOfRings(all, found.from) ? 'apart' : 'span';
  const where = target(all, found.to);
  if (where === 'elsewhere') return null;
  const down =
    isWord(next, 'down', 'dwn', 'drop') || where === 'top' || /\b(down|drop)( of| by| is| =| :)?$/.test(near);
  if (by === 'cord' && tight && isWord(next, 'in') && isMiddle(all, found.to + 1)) return 'rise';
  if (by === 'cord' && tight)
    return where === 'top' ? 'peak' : isWord(next, 'in', 'down', 'long') ? plain(next, where, down) : 'rise';
  if (by === 'cord' && (isWord(next, 'above', 'up', 'rise') || where === 'rings')) return 'rise';
  if (isWord(next, 'long') || (by === 'batten' && isWord(next, 'wide', 'across'))) return 'length';
  if (
    /^(length|long|lenght)( is| =| of)?$/.test(before.at(-1) ?? '') ||
    /\b(length|long) (is|=|of|:)$/.test(near)
  )
    return 'length';
  if (where === null && !down && /\binset( by| of)?$/.test(near)) return 'in';
  return plain(next, where, down);
}

/** Of a cord, "rings 640 apart" are its ends on the frame; what else is apart are the hooks on the wall. */
function isOfRings(all: readonly Token[], from: number): boolean {
  for (let at = from - 1; at >= 0; at -= 1) {
    if (isWord(all[at], 'ring', 'rings', 'dring', 'drings', 'eye', 'eyes', 'ends', 'straps')) return true;
    if (isWord(all[at], 'hook', 'hooks', 'nail', 'nails', 'screw', 'screws', 'pins')) return false;
  }
  return false;
}

function plain(next: Token | undefined, where: Target, down: boolean): Role {
  if (down) return 'down';
  if (where === 'left') return 'from-left';
  if (where === 'right') return 'from-right';
  if (isWord(next, 'in', 'inset', 'inside', 'inward', 'inwards', 'inboard', 'inn') || where === 'side')
    return 'in';
  return null;
}

/** "up 80 in the middle": that "in" is not inward. */
function isMiddle(all: readonly Token[], at: number): boolean {
  const word = isWord(all[at], 'the') ? all[at + 1] : all[at];
  return isWord(word, 'middle', 'centre', 'center', 'total');
}

function seatAfter(all: readonly Token[], found: Found): boolean {
  return (
    isWord(all[found.to], 'seat') && isWord(all[found.to + 1], 'to') && isWord(all[found.to + 2], 'screw')
  );
}

/** A figure without a word of its own, joined to one that has: "100, 450 and 800 from the left". */
function inherited(
  all: readonly Token[],
  here: Found,
  next: Found,
  role: Role,
  earlier: readonly Role[],
): Role {
  const joint = all.slice(here.to, next.from);
  if (joint.length > 2 || !joint.every((each) => /^(,|and|\/|-|x|by)$/.test(each.text))) return null;
  // "2, 95 in": the two are rings.
  if (here.unitSaid === null && here.valueMm <= MOST_COUNTED && next.valueMm > 2 * MOST_COUNTED) return null;
  if (role === 'in' || role === 'from-left' || role === 'from-right') return role;
  if (role !== 'down') return null;
  const acrossSaid = earlier.some((each) => each === 'in' || each === 'from-left' || each === 'from-right');
  return acrossSaid ? 'down' : 'in';
}

/** Lengths that belong to the wall, a place or the size are not the hangers'. */
export function isOfHangers(all: readonly Token[], found: Placed, open: boolean): boolean {
  if (found.role === null) return false;
  const subject = subjectBefore(all, found);
  if (subject === 'hanger') return true;
  const plain = isWord(all[found.to], 'in', 'down');
  return (
    open &&
    (subject !== 'place' || plain) &&
    (subject !== 'wall' ||
      ((found.role === 'in' || found.role === 'down') && isPartedFromNoun(all, found))) &&
    subject !== 'ceiling' &&
    subject !== 'datum'
  );
}
