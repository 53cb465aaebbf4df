import type { Listening } from '../../reading.ts';
import { asks, type Found, fact, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { gone, toBeFound } from './ask.ts';
import type { Faces } from './empty.ts';
import { knownOf } from './list.ts';
import type { Mention } from './mentions.ts';
import { none, unaskedNone } from './none.ts';
import type { Told } from './told.ts';

/** "No sockets on either side", said unasked: it does not unsay what was told before. */
export function nothingInPassing(said: Outline, { known }: Listening): Found {
  const { accessories, unplaced } = knownOf(known.wall);
  const found = unaskedNone(said);
  if (found.facts.length === 0 || accessories.length + unplaced.length === 0) return found;
  return asks(said, gone(accessories, unplaced, said.said));
}

/** No fitting that is there was named. */
export function nothingNamed(
  outline: Outline,
  faces: Faces,
  mentions: readonly Mention[],
  { known, awaiting }: Listening,
): Found {
  const { accessories, unplaced } = knownOf(known.wall);
  const beside = standingBeside(mentions, []);
  if (beside.length > 0 && faces.empty.size === 0) {
    const read = fact('wall.accessories', { wall: { unplaced: [...unplaced, ...beside] } }, outline.said);
    return { ...nothing(outline), facts: [{ ...read, partial: toBeFound(beside) }] };
  }
  if (awaiting === 'wall.farSide') return nothing(outline);
  const found = none(
    outline,
    faces,
    mentions.some(({ denied }) => denied),
  );
  if (found.facts.length + found.asks.length === 0 || accessories.length + unplaced.length === 0)
    return found;
  const farOnly = faces.empty.has('far') && !faces.empty.has('this');
  if (farOnly && [...accessories, ...unplaced].every(({ face }) => face === 'this')) {
    const wall = { accessories: [...accessories], farSide: 'seen' as const };
    return { ...nothing(found.rest), facts: [fact('wall.accessories', { wall }, outline.said)] };
  }
  return asks(found.rest, gone(accessories, unplaced, outline.said));
}

/** A basin that a switch is said to be above is on the wall too; a door or a window hides nothing. */
export function standingBeside(mentions: readonly Mention[], heads: readonly Mention[]): Told['unplaced'] {
  return mentions
    .filter(({ landmark, denied, kind }) => landmark && !denied && kind !== 'door' && kind !== 'window')
    .filter(({ kind }) => !heads.some((head) => head.kind === kind))
    .map(({ kind }) => ({ kind }));
}
