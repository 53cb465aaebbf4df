import type { JobSoFar, Up } from '../../../core/job.ts';
import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { AskBack } from '../../reading.ts';
import { fact } from '../words/found.ts';
import { datumOf } from './datum.ts';

/** Which line of the piece a word names. */
export function byOf(ref: string | undefined, fallback: Up['by']): Up['by'] {
  if (ref === undefined) return fallback;
  if (/^(?:bottom|base|underside|lower)/.test(ref)) return 'bottom-above';
  return /^(?:top|upper)/.test(ref) ? 'top-at' : 'centre-at';
}

/** A height as the part of a job it sets; the floor is at nought by itself. */
export function upValue(by: Up['by'], length: Millimetres, datum: string | null): JobSoFar {
  const kind = datum === null ? null : datumOf(datum);
  const floor = kind === 'floor' ? { kind, aboveFloorMm: mm(0) } : null;
  return {
    place: { up: { by, mm: length } },
    ...(kind === null ? {} : { wall: { datum: floor ?? { kind } } }),
  };
}

/** A bare height at least this large can only be from the floor; our choice. */
export const FLOOR_FROM = mm(800);

/** A bare height: of the bottom, the centre or the top is asked. */
export function whichLine(length: Millimetres, text: string, said: string, datum: string | null): AskBack {
  const reading = (label: string, by: Up['by']) => ({
    label: `${label} ${text}`,
    fact: fact('place.up', upValue(by, length, datum), said),
  });
  return {
    question: 'place.up',
    text: `${text}: is that the bottom of the frame, its centre, or its top?`,
    readings: [
      reading('bottom at', 'bottom-above'),
      reading('centre at', 'centre-at'),
      reading('top at', 'top-at'),
    ],
  };
}
