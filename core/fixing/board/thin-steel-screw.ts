import { mm, toTenth } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import type { Why } from '../../why.ts';
import type { WorstCheck } from '../acting/worst-check.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import type { Fixing } from '../fixing-shape.ts';
import { cappedCandidate, type Reach } from '../proof/capped-candidate.ts';
import { practice } from '../proof/caps.ts';
import { practiceCap } from '../proof/holding-cap.ts';
import { nominalOf } from '../steel/screw-sizes.ts';
import { stockedScrew } from '../stocked-lengths.ts';
import { hangerNote } from '../told/hanger-note.ts';
import { pickedWhys } from '../told/picked-whys.ts';
import type { BoardPlace } from './board-place.ts';
import { missesStud } from './misses-stud.ts';
import { FLANGE_MM, steelOf, THIN_STEEL_SCREW } from './steel-stud-rules.ts';

const GAUGE = 10;

/** What a thin-steel screw may be held to, by the steel; what was taken where nobody measured it. */
export function thinSteelCap({ job, proven }: BoardPlace) {
  const { steelMm, said } = steelOf(job.wall);
  const rule = THIN_STEEL_SCREW.value;
  const capKg = steelMm >= rule.thickMm ? rule.thickKg : rule.thinKg;
  return {
    cap: proven ?? practiceCap(practice(capKg, THIN_STEEL_SCREW.at), 'anchor-cap'),
    taken: said
      ? []
      : [
          {
            field: 'wall.steelMm',
            value: steelMm,
            because: 'how thick the steel is was not said; this is the thinnest that studs are made of',
          },
        ],
  };
}

/** How deep a hole through board and flange goes. */
export function flangeDepthWhy({ beyondMm }: BoardPlace): Why {
  return {
    of: 'hole depth',
    formula: 'through finish, board and the flange of the stud',
    inputs: { beyondMm: toTenth(beyondMm), flangeMm: FLANGE_MM.value },
    result: `${Math.ceil(beyondMm + FLANGE_MM.value)} mm`,
    basis: [basisOf(FLANGE_MM)],
    symbols: 'up(beyondMm + flangeMm)',
  };
}

/** A thin-steel screw through the board into the flange at every mark; never a wood screw. */
export function thinSteelScrew(place: BoardPlace, reach: Reach): Candidate | Unusable {
  const fastener = 'steel-stud-screw';
  const name = `${GAUGE} gauge thin-steel screw in the stud flange`;
  const no = (because: string): Unusable => ({
    ok: false,
    fastener,
    name,
    because,
    ...(reach === 'to-the-cap' && { quiet: true as const }),
  });
  const misses = missesStud(place, nominalOf(GAUGE).nominalMm);
  if (misses !== null) return no(misses);
  const rule = THIN_STEEL_SCREW.value;
  if (steelOf(place.job.wall).steelMm < rule.thinMm)
    return no(`steel under ${rule.thinMm} mm is too thin for it`);
  const least = mm(Math.max(rule.leastMm, place.outsideMm + place.beyondMm + FLANGE_MM.value));
  const stocked = stockedScrew(place.shelf, 'pan-only', GAUGE, least, nominalOf(GAUGE).nominalMm);
  if (stocked === null) return no('no pan head of that gauge is stocked that long');
  const { cap, taken } = thinSteelCap(place);
  const { hanging } = place.job.piece;
  return cappedCandidate({
    fastener,
    name,
    shank: GAUGE,
    usualKg: rule.usualKg,
    cap,
    // The board holds nothing: the screw stands on the steel alone.
    armMm: mm(place.beyondMm + place.standOffMm),
    points: place.load.actions.perMark,
    reach,
    fixing: (worst: WorstCheck): Fixing => ({
      fastener,
      count: place.setOut.marks.length,
      bit: {
        kind: place.tiled ? 'tile' : 'metal',
        action: 'rotary',
        diameterMm: mm(rule.pilotMm),
        depthMm: mm(Math.ceil(place.beyondMm + FLANGE_MM.value)),
      },
      screw: {
        gauge: GAUGE,
        diameterMm: nominalOf(GAUGE).nominalMm,
        lengthMm: stocked.screwMm,
        head: hanging.by === 'keyholes' ? 'round' : 'pan',
      },
      note: [
        'A thin-steel screw, sharp or drill point, thread to the head; never a wood screw. Drive it at hand speed and stop at the head. If it spins it is stripped: a new place 20 mm up or down, never a longer one in the same hole.',
        ...hangerNote(hanging.by, nominalOf(GAUGE).nominalMm),
      ].join(' '),
      governing: governingOf(worst),
      utilisation: worst.utilisation,
    }),
    why: () => [
      {
        of: 'screw length',
        formula: 'outside part + board and finish + flange, 30 mm or more, the next stocked length',
        inputs: { outsidePartMm: toTenth(place.outsideMm), beyondMm: toTenth(place.beyondMm) },
        result: `${Math.round(stocked.screwMm * 10) / 10} mm`,
        basis: [basisOf(THIN_STEEL_SCREW)],
        symbols: 'stocked(outsidePartMm + beyondMm)',
      },
      flangeDepthWhy(place),
      ...pickedWhys(
        {
          marks: place.setOut.marks.length,
          count: place.setOut.marks.length,
          bitMm: rule.pilotMm,
          gauge: GAUGE,
        },
        [basisOf(THIN_STEEL_SCREW)],
      ),
    ],
    advice: ['Find both edges of each stud before drilling: the screw goes in the middle of its flange.'],
    taken,
  });
}
