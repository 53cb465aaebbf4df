import type { JobSoFar } from '../../core/job.ts';
import { type Open, situationIn } from '../open.ts';
import { assumptionText } from './assumption.ts';
import { describe } from './describe.ts';
import { sentence } from './sentence.ts';

const HEADS: readonly (readonly [string, (job: JobSoFar) => JobSoFar])[] = [
  ['Piece', ({ piece }) => ({ ...(piece && { piece }) })],
  ['Wall', ({ wall }) => ({ ...(wall && { wall }) })],
  [
    'Place',
    ({ place, wall }) => ({
      ...(place && { place }),
      ...(wall?.datum && { wall: { datum: { kind: wall.datum.kind ?? 'floor' } } }),
    }),
  ],
  ['Building', ({ building }) => ({ ...(building && { building }) })],
  ['Crew', ({ crew, proof }) => ({ ...(crew && { crew }), ...(proof && { proof }) })],
];

/** All that is known, a line for each part, and what is assumed with the reason. */
export function summaryOf(open: Open): string {
  const { unit, said } = open.folded;
  const lines = HEADS.flatMap(([head, part]) => {
    const phrases = describe(part(said), unit);
    return phrases.length === 0 ? [] : [`${head}: ${sentence(phrases.join(', '))}`];
  });
  const assumed = (situationIn(open).plan?.assumptions ?? []).map((each) => assumptionText(each, unit));
  return [
    ...lines,
    ...(assumed.length === 0 ? [] : ['Assumed:', ...assumed.map((each) => `- ${each}`)]),
  ].join('\n');
}
