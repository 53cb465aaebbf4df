import { mm, toTenth } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import type { BoardPlace } from '../board/board-place.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import { cappedCandidate, type Reach } from '../proof/capped-candidate.ts';
import { practice } from '../proof/caps.ts';
import { practiceCap } from '../proof/holding-cap.ts';
import { nominalOf } from '../steel/screw-sizes.ts';
import { stockedScrew } from '../stocked-lengths.ts';
import { hangerNote } from '../told/hanger-note.ts';
import { pickedWhys } from '../told/picked-whys.ts';

const GAUGE = 8;
/** Line 4 of the trade's walk 1.11. */
const LATH_SCREW = sourced(
  { usualKg: 2, capKg: 3, throughMm: 4, pilotMm: 2, lathMm: 6, pastMm: 6 },
  'common-practice',
  'lath and plaster, line 4: a screw in a lath',
  'common-practice',
);
/** What a lath of the usual thickness adds behind the plaster. */
export const LATH_MM = LATH_SCREW.value.lathMm;

/** A thin screw through the plaster into a lath at every mark: for light pieces, one hanger on each. */
export function lathScrew(place: BoardPlace, reach: Reach): Candidate | Unusable {
  const fastener = 'lath-screw';
  const name = `${GAUGE} gauge screw in a lath`;
  const no = (because: string): Unusable => ({
    ok: false,
    fastener,
    name,
    because,
    ...(reach === 'to-the-cap' && { quiet: true as const }),
  });
  const rule = LATH_SCREW.value;
  const { outsideMm, beyondMm, standOffMm, job, setOut } = place;
  const { nominalMm } = nominalOf(GAUGE);
  const least = mm(outsideMm + beyondMm + rule.pastMm);
  const head = job.piece.hanging.by === 'keyholes' ? 'pan-only' : 'pan-first';
  const stocked = stockedScrew(place.shelf, head, GAUGE, least, nominalMm);
  if (stocked === null) return no('no screw of that gauge is stocked that long');
  const plasterMm = mm(Math.ceil(beyondMm - rule.lathMm));
  return cappedCandidate({
    fastener,
    name,
    shank: GAUGE,
    usualKg: rule.usualKg,
    cap: place.proven ?? practiceCap(practice(rule.capKg, LATH_SCREW.at), 'anchor-cap'),
    // The plaster carries nothing: the screw stands on the lath alone.
    armMm: mm(plasterMm + standOffMm),
    points: place.load.actions.perMark,
    reach,
    fixing: (worst) => ({
      fastener,
      count: setOut.marks.length,
      bit: { kind: 'masonry', action: 'rotary', diameterMm: mm(rule.throughMm), depthMm: plasterMm },
      pilot: { diameterMm: mm(rule.pilotMm), depthMm: mm(Math.ceil(beyondMm)) },
      screw: {
        gauge: GAUGE,
        diameterMm: nominalMm,
        lengthMm: stocked.screwMm,
        head: job.piece.hanging.by === 'keyholes' ? 'round' : stocked.washer ? 'washer' : 'pan',
      },
      note: [
        'By hand, into the middle of a lath. Stop at the void; if the lath splits or the plaster moves, it holds nothing: another place.',
        ...hangerNote(job.piece.hanging.by, nominalMm),
      ].join(' '),
      governing: governingOf(worst),
      utilisation: worst.utilisation,
    }),
    why: () => [
      {
        of: 'hole depth',
        formula: 'the plaster on a masonry bit and no further',
        inputs: { beyondMm: toTenth(beyondMm), lathMm: rule.lathMm },
        result: `${plasterMm} mm`,
        basis: [basisOf(LATH_SCREW)],
        symbols: 'up(beyondMm - lathMm)',
        paths: ['fixing.bit.depthMm'],
      },
      {
        of: 'pilot depth',
        formula: 'plaster and lath, no further than the void',
        inputs: { beyondMm: toTenth(beyondMm) },
        result: `${Math.ceil(beyondMm)} mm`,
        basis: [basisOf(LATH_SCREW)],
        symbols: 'up(beyondMm)',
        paths: ['fixing.pilot.depthMm'],
      },
      ...pickedWhys(
        {
          marks: setOut.marks.length,
          count: setOut.marks.length,
          bitMm: rule.throughMm,
          pilotMm: rule.pilotMm,
          gauge: GAUGE,
        },
        [basisOf(LATH_SCREW)],
      ),
      {
        of: 'screw length',
        formula: 'outside part + plaster + lath + 6, the next stocked length',
        inputs: { outsidePartMm: toTenth(outsideMm), beyondMm: toTenth(beyondMm), shelf: place.shelf },
        result: `${Math.round(stocked.screwMm * 10) / 10} mm`,
        basis: [basisOf(LATH_SCREW)],
        symbols: 'stocked(outsidePartMm + beyondMm)',
      },
    ],
    advice: ['A stud is the better fixing: look for one first; in a lath each hanger has its own screw.'],
    taken: [],
  });
}
