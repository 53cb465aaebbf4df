import { dimensionOf } from '../lengths/dimension.ts';
import type { Found } from '../lengths/length.ts';
import { subjectAfter, subjectBefore } from '../lengths/subject.ts';
import { isWord, type Token } from '../words/token.ts';

type WallPart = 'width' | 'height' | 'thickness' | null;

/** "wall is", "wall = ", "wall about": nothing else may stand between the wall and its bare figure. */
const TIES = new Set(
  'is its was of about bout around roughly approx = : ~ measures measured comes at only just have has says be to ,'.split(
    ' ',
  ),
);
/** A figure with one of these behind it says where something is. */
const PLACES = ['above', 'below', 'from', 'off', 'down', 'up', 'apart', 'over', 'under', 'beneath'] as const;

/** What a length says of the wall when the wall was not asked about: its words decide; null when it is about something else. */
export function partOfWall(all: readonly Token[], found: Found): WallPart {
  const dimension = dimensionOf(all, found);
  if (isPlace(all, found)) return null;
  const after = subjectAfter(all, found);
  const before = subjectBefore(all, found);
  const subject = after ?? before;
  if (subject === 'ceiling') return dimension === null || dimension === 'high' ? 'height' : null;
  if (dimension === 'deep' && subject === null && isMasonry(all, found)) return 'thickness';
  if (subject !== 'wall') return null;
  if (dimension === 'wide' || dimension === 'long') return 'width';
  if (dimension === 'high') return 'height';
  if (dimension === 'deep') return 'thickness';
  if (dimension !== null || all[found.to]?.text === 'x' || all[found.from - 1]?.text === 'x') return null;
  return after === 'wall' || isTied(all, found) ? 'width' : null;
}

/** True when the figure says where something is rather than how long the wall is. */
export function isPlace(all: readonly Token[], found: Found): boolean {
  const next = all[found.to];
  if (found.inward || isWord(next, ...PLACES)) return true;
  const before = all.slice(Math.max(0, found.from - 3), found.from);
  return before.some((each) =>
    isWord(
      each,
      'centre',
      'center',
      'middle',
      'top',
      'bottom',
      'edge',
      'socket',
      'switch',
      'above',
      'below',
      'datum',
      'hooks',
      'rings',
    ),
  );
}

function isTied(all: readonly Token[], found: Found): boolean {
  for (let at = found.from - 1; at >= Math.max(0, found.from - 5); at -= 1) {
    const token = all[at];
    if (token === undefined) return false;
    if (isWord(token, 'wall', 'walls', 'alcove', 'recess', 'nook', 'breast', 'wal')) return true;
    if (!TIES.has(token.text)) return false;
  }
  return false;
}

function isMasonry(all: readonly Token[], found: Found): boolean {
  return all
    .slice(Math.max(0, found.from - 6), found.to + 4)
    .some((each) =>
      /^(stone|rubble|stonework|bricks?|brickwork|blocks?|blockwork|concrete|masonry|cob)$/.test(each.text),
    );
}
