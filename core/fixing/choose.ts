import { STANDARD_GRAVITY } from '../quantity.ts';
import { basisOf, uniqueBases } from '../sources.ts';
import { loadOf } from './acting/actions.ts';
import { shakenBy } from './acting/earthquake.ts';
import { grabbedBy } from './acting/knock.ts';
import { battenActions } from './batten/batten-actions.ts';
import type { Candidate } from './candidate.ts';
import { chainOf } from './chain/chain.ts';
import { chainTold } from './chain/chain-told.ts';
import type { ChooseFixing } from './choice.ts';
import { pick } from './choose-from.ts';
import { edgeAdvice } from './masonry/edge-advice.ts';
import { EVERY_HOLE_PROVES_IT, ifSolid, onceProved } from './masonry/if-solid.ts';
import { provenOf } from './proof/holding-cap.ts';
import { isOverUsual } from './proof/usual.ts';
import { BATTEN } from './stand-off.ts';
import { clipsAdvice } from './told/clips-advice.ts';
import { findingsOf } from './told/findings.ts';
import { UNKNOWN_WALL } from './told/unknown-wall.ts';
import { nothingHolds } from './told/what-clears.ts';
import { actionWhys } from './told/why-it-pulls.ts';
import { walkedOf } from './walk-candidates.ts';

/**
 * Chooses a fastener for a job that is set out: walks the preference list of its base material and takes the
 * first whose utilisation is at most 1; where coring is unknown and nothing holds either way, what holds in the
 * solid unit, with the word that every hole must prove it. Forces in newtons without any factor; throws never.
 */
export const chooseFixing: ChooseFixing = (job, setOut) => {
  const load = loadOf(job, setOut);
  const proven = provenOf(job);
  const asSaid = walkedOf(job, setOut, load, proven.cap);
  const { actions } = load;
  if (asSaid === null) {
    return {
      ok: false,
      actions,
      ...UNKNOWN_WALL,
      rejected: [],
      assumptions: [...load.assumptions],
      basis: [...load.basis],
    };
  }
  const { chosen: eitherWay, alternatives, rejected, basis: besides } = pick(asSaid.walk);
  const solid = ifSolid(job, setOut, load, proven.cap);
  const { chosen: proved, alternatives: provedToo, basis: provedBasis } = pick(solid?.walk ?? []);
  const chosen = eitherWay ?? proved;
  const walked = eitherWay === null && proved !== null ? (solid ?? asSaid) : asSaid;
  if (chosen === null) {
    return {
      ok: false,
      actions,
      ...nothingHolds(job, setOut, load),
      rejected,
      assumptions: [...load.assumptions, ...walked.assumptions],
      basis: [...load.basis, ...walked.basis],
    };
  }
  const onBatten =
    job.piece.hanging.by === 'batten' ||
    chosen.fastener === 'batten-screws' ||
    chosen.fastener === 'board-across-studs';
  const fixing = chosen.fixing();
  const acting =
    job.piece.hanging.by === 'batten'
      ? { ...actions, perMark: battenActions(job, setOut, load, chosen) }
      : actions;
  const chain = chainOf(job, setOut, acting, {
    fixing,
    worst: chosen.worst,
    shearN: (chosen.worst.acting ?? chosen.point).shearN,
  });
  const links = chainTold(chain);
  const grabbed = grabbedBy(job, (chosen.worst.acting ?? chosen.point).shearN, fixing.utilisation);
  const shaken = shakenBy(job, load.massKg, actions.weightN, fixing.utilisation);
  const why = [
    load.massWhy,
    ...actionWhys(job, setOut, acting, load.comFromWallMm, load.comFromLeftEndMm),
    ...chosen.why(),
    ...links.why,
    ...shaken.why,
    ...grabbed.why,
  ];
  return {
    ok: true,
    actions: acting,
    fixing,
    alternatives: eitherWay ? [...(proved ? [onceProved(proved)] : []), ...alternatives] : provedToo,
    rejected,
    chain,
    findings: [
      ...findingsOf(job, setOut, load),
      ...links.findings,
      ...(eitherWay ? [] : [EVERY_HOLE_PROVES_IT]),
    ],
    advice: [
      ...chosen.advice,
      ...usualAdvice(chosen),
      ...links.advice,
      ...shaken.advice,
      ...grabbed.advice,
      ...clipsAdvice(job.piece.hanging),
      ...proven.advice,
      ...(fixing.bit.kind === 'masonry' || fixing.plug ? edgeAdvice(job, setOut, fixing.bit.depthMm) : []),
    ],
    assumptions: [
      ...load.assumptions,
      ...walked.assumptions,
      ...(chosen.taken ?? []),
      ...shaken.taken,
      ...(onBatten ? [BATTEN_TAKEN] : []),
    ],
    why,
    basis: uniqueBases([
      ...chosen.worst.basis,
      ...why.flatMap((each) => each.basis),
      ...load.basis,
      ...walked.basis,
      ...(eitherWay ? besides : provedBasis),
      ...(eitherWay && proved ? proved.worst.basis : []),
      ...(onBatten ? [basisOf(BATTEN)] : []),
    ]),
  };
};

const BATTEN_TAKEN = {
  field: 'batten',
  value: BATTEN.value,
  because: 'the batten or board is taken as 18 mm thick, with 40 mm from its screws to its lower edge',
};

function usualAdvice({ name, usualKg, point, worst }: Candidate): string[] {
  const acting = point.shearN / STANDARD_GRAVITY;
  if (
    usualKg === undefined ||
    !isOverUsual(point.shearN, usualKg) ||
    worst.mode === 'packet-rating' ||
    worst.mode === 'pull-test'
  )
    return [];
  return [
    `${Math.round(acting * 10) / 10} kg a fixing is more than the usual ${usualKg} kg for this (${name}), though within its cap.`,
  ];
}
