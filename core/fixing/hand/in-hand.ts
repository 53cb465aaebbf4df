import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import { sourced } from '../../sources.ts';
import { loadOf } from '../acting/actions.ts';
import type { Candidate } from '../candidate.ts';
import { pick } from '../choose-from.ts';
import type { Fixing } from '../fixing-shape.ts';
import { EVERY_HOLE_PROVES_IT, ifSolid } from '../masonry/if-solid.ts';
import { provenOf } from '../proof/holding-cap.ts';
import { GAUGES, nominalOf } from '../steel/screw-sizes.ts';
import { walkedOf } from '../walk-candidates.ts';
import type { InHand } from './hand.ts';
import { wrongWith } from './wrong-in-hand.ts';

export type HandVerdict = { holds: boolean; utilisation: number | null; text: string };

/**
 * Whether the fixing in the hand will hold this piece here: the row of the wall's walk it is nearest to,
 * with the lengths it really has. `utilisation` null where nothing here has a value for it. Throws never.
 */
export function holds(job: Job, setOut: SetOut, inHand: InHand): HandVerdict {
  const load = loadOf(job, setOut);
  const proven = provenOf(job).cap;
  const asSaid = walkedOf(job, setOut, load, proven);
  const onlyIfSolid = asSaid !== null && pick(asSaid.walk).chosen === null;
  const walked = (onlyIfSolid ? ifSolid(job, setOut, load, proven) : null) ?? asSaid;
  if (walked === null) return unknown('This wall is not worked out yet, so I can’t say that it holds.');
  const { fastener, bit, plug, screw } = inHand;
  if (!fastener && !bit && !plug && !screw) return unknown('You have not said what is in your hand.');
  const fits = walked.walk
    .filter((each): each is Candidate => each.ok)
    .filter((each) => matches(each, inHand));
  const [first] = fits;
  if (!first)
    return unknown(
      'I have no value for that fixing in this wall, so I can’t say that it holds. Use the one in the plan.',
    );
  // Nothing said of the screw: the thinnest it may be decides.
  const worst = fits.reduce(
    (one, other) => (other.worst.utilisation > one.worst.utilisation ? other : one),
    first,
  );
  const utilisation = worst.worst.utilisation;
  const wrong = wrongWith(job, inHand, worst.fixing());
  const enough = fits.find((each) => each.worst.utilisation <= 1);
  if (utilisation > 1 && enough) {
    return {
      holds: false,
      utilisation,
      text: `You have not said enough for me to say that it holds: ${enough.name} would, ${worst.name} would not. Say which fixing it is, the plug’s size and the screw’s gauge.`,
    };
  }
  if (utilisation > 1) {
    return {
      holds: false,
      utilisation,
      text: `That does not hold: ${worst.name} would carry ${Math.round(utilisation * 100)} % of what it may bear.`,
    };
  }
  if (wrong.length > 0) return { holds: false, utilisation, text: `Not as it is. ${wrong.join(' ')}` };
  return {
    holds: true,
    utilisation,
    text: `The fixing in your hand will do: ${Math.round(utilisation * 100)} % of what it may bear.${onlyIfSolid && (job.wall.cores ?? 'unknown') === 'unknown' ? ` ${EVERY_HOLE_PROVES_IT.text}` : ''}`,
  };
}

const unknown = (text: string): HandVerdict => ({ holds: false, utilisation: null, text });

function matches(candidate: Candidate, { fastener, plug, screw, bit }: InHand): boolean {
  const fixing = candidate.fixing();
  if (fastener === undefined && candidate.fastener === 'batten-screws' && candidate.onAddedBatten)
    return false;
  if (fastener !== undefined && fastener !== fixing.fastener) return false;
  if (plug?.diameterMm !== undefined && !same(plug.diameterMm, fixing.plug?.diameterMm)) return false;
  // A shorter plug than a cap was declared for has no value here.
  if (plug?.lengthMm !== undefined && fixing.plug && plug.lengthMm < fixing.plug.lengthMm) return false;
  if (
    plug === undefined &&
    fastener === undefined &&
    bit?.diameterMm !== undefined &&
    !same(bit.diameterMm, fixing.bit.diameterMm)
  ) {
    return false;
  }
  return suits(screw, fixing.screw);
}

/** By gauge where both have one, else by diameter; a bolt or a stud is sold by its diameter alone. */
function suits(screw: InHand['screw'], reckoned: Fixing['screw']): boolean {
  if (screw?.gauge === undefined && screw?.diameterMm === undefined) return true;
  if (reckoned?.gauge !== undefined) return gaugeOf(screw) === reckoned.gauge;
  return (
    screw.gauge === undefined &&
    screw.diameterMm !== undefined &&
    same(screw.diameterMm, reckoned?.diameterMm)
  );
}

const same = (one: number, other: number | undefined): boolean =>
  other !== undefined && Math.abs(one - other) < GAUGE_TAPE.value.sameMm;

/** The gauge of a screw: as said, else the thickest that is no thicker than it was measured. */
function gaugeOf(screw: InHand['screw']): number | undefined {
  if (screw?.gauge !== undefined) return screw.gauge;
  const diameter = screw?.diameterMm;
  if (diameter === undefined) return undefined;
  return GAUGES.findLast(
    (gauge) =>
      nominalOf(gauge).nominalMm <= diameter + GAUGE_TAPE.value.offMm &&
      nominalOf(gauge).nominalMm > diameter - GAUGE_TAPE.value.bandMm,
  );
}

/** A metric screw sold for a gauge is up to this much off it: 6.0 for 14 gauge, 5.0 for 10. */
const GAUGE_TAPE = sourced(
  { offMm: 0.2, bandMm: 1, sameMm: 0.5 },
  'common-practice',
  'gauges sold as metric',
  'common-practice',
);
