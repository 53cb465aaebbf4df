import type { JobSoFar } from '../../core/job.ts';
import { type Open, situationIn } from '../open.ts';
import { assumedBriefly } from './assumption.ts';
import { describe } from './describe.ts';
import { reckonedMass } from './reckoned-mass.ts';
import { sentence } from './sentence.ts';

const HEADS: readonly (readonly [string, (job: JobSoFar) => JobSoFar])[] = [
  ['Piece', ({ piece }) => ({ ...(piece && { piece }) })],
  ['Wall', ({ wall }) => ({ ...(wall && { wall: lessBareDatum(wall) }) })],
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

type Wall = NonNullable<JobSoFar['wall']>;

/** Where heights are taken from is said with the place; here only how high that is. */
function lessBareDatum({ datum, ...wall }: Wall): Wall {
  return datum?.aboveFloorMm === undefined ? wall : { ...wall, datum };
}

/** All that is known, a line for each part, and what is assumed in one. */
export function summaryOf(open: Open): string {
  const { unit } = open.folded;
  const { said, none } = lessGates(open.folded.said);
  const lines = HEADS.flatMap(([head, part]) => {
    const phrases = describe(part(said), unit);
    return phrases.length === 0 ? [] : [`${head}: ${sentence(phrases.join(', '))}`];
  });
  const reckoned = reckonedMass(said, unit);
  const assumed = assumedBriefly(situationIn(open).plan?.assumptions ?? [], unit);
  return [
    ...lines,
    ...(reckoned === '' ? [] : [reckoned]),
    ...(none === null ? [] : [`Hazards: none of ${none} I asked about.`]),
    ...(assumed === '' ? [] : [`Assumed: ${assumed}. A measured figure beats any of them.`]),
  ].join('\n');
}

/** Gates that were answered no are said in one line, not one by one. */
function lessGates(said: JobSoFar): { said: JobSoFar; none: 'those' | 'the others' | null } {
  const { lit, ...piece } = said.piece ?? {};
  const { wet, coating, condition, separating, ...wall } = said.wall ?? {};
  const { heritage, ...building } = said.building ?? {};
  const isNo =
    lit === false || wet === 'no' || coating === 'none' || condition === 'sound' || separating === false;
  const holds =
    lit === true ||
    separating === true ||
    heritage === true ||
    coating === 'textured' ||
    condition === 'poor' ||
    wet === 'bathroom' ||
    wet === 'shower';
  return {
    said: {
      ...said,
      piece: { ...piece, ...(lit !== undefined && lit !== false && { lit }) },
      wall: {
        ...wall,
        ...(wet !== undefined && wet !== 'no' && { wet }),
        ...(coating !== undefined && coating !== 'none' && { coating }),
        ...(condition !== undefined && condition !== 'sound' && { condition }),
        ...(separating !== undefined && separating !== false && { separating }),
      },
      building: { ...building, ...(heritage !== undefined && heritage !== false && { heritage }) },
    },
    none: isNo ? (holds ? 'the others' : 'those') : null,
  };
}
