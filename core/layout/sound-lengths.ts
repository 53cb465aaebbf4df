import type { Job } from '../job.ts';
import type { DoesNotFit } from './set-out.ts';
import { doesNotFit } from './why-not.ts';

/** The first figure that is no length at all: not a number, or a size that is nothing or less. */
export function unsoundLength({ piece, wall, place }: Job): DoesNotFit | null {
  const sizes = { 'piece width': piece.widthMm, 'piece height': piece.heightMm, 'wall width': wall.widthMm };
  for (const [name, value] of Object.entries(sizes))
    if (!(isLength(value) && value > 0)) return notALength(name);
  if (wall.heightMm !== undefined && !(isLength(wall.heightMm) && wall.heightMm > 0))
    return notALength('wall height');
  const groups = { place, hanger: piece.hanging, datum: wall.datum };
  for (const [name, group] of Object.entries(groups)) if (!allLengths(group)) return notALength(name);
  if (piece.hanging.by === 'batten' && !(piece.hanging.lengthMm > 0)) return notALength('batten length');
  return null;
}

const isLength = (value: unknown): boolean => typeof value === 'number' && Number.isFinite(value);

function allLengths(value: unknown): boolean {
  if (typeof value === 'number') return Number.isFinite(value);
  if (value === null || typeof value !== 'object') return true;
  return Object.values(value).every(allLengths);
}

function notALength(name: string): DoesNotFit {
  return doesNotFit(
    'notALength',
    `The ${name} is not a length I can measure out.`,
    `Measure the ${name} again.`,
  );
}
