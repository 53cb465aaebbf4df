import type { Listening } from '../../reading.ts';
import { measures } from '../words/measure.ts';
import type { Token } from '../words/token.ts';
import { massesIn } from './mass.ts';

/** Beyond this a bare figure after "make it" is no mass; our choice. */
const MOST_AGAIN_KG = 150;

const CORRECTS =
  /^(make|nah|no|nope|sorry|oops|whoops|meant|mean|should|actually|not|change|wait|rather|again|misread|reweighed|weighed)$/;
const NUMERIC =
  /^(piece\.(size|depthMm|hanging)|wall\.(widthMm|heightMm|thicknessMm|boardMm|voidMm|datum|studs)|place\.)/;

/** True when the mass was told last and this corrects it: "make it 28", "nah its 31 not 13". */
export function correctsMass(said: readonly Token[], all: readonly Token[], listening: Listening): boolean {
  if (listening.lastAnswered !== 'piece.massKg') return false;
  const [only, second] = massesIn(all).filter((each) => each.unit === null);
  if (only === undefined || second !== undefined || only.value.gt(MOST_AGAIN_KG)) return false;
  if (measures(all).length > 1) return false;
  const numeric = NUMERIC.test(listening.awaiting ?? '');
  return !numeric || said.some((each) => each.kind === 'word' && CORRECTS.test(each.text));
}
