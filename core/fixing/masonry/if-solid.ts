import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import type { Alternative, Assumption } from '../../plan-shape.ts';
import type { Load } from '../acting/actions.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import type { HoldingCap } from '../proof/holding-cap.ts';
import type { Finding } from '../told/findings.ts';
import { walkedOf } from '../walk-candidates.ts';
import type { Walked } from '../walked.ts';

/**
 * Where coring is not known: the walk of the solid unit, every hole on rotary, which counts only once each of
 * them has proved solid (the trade's walk 1.2, coring unknown). Null for other walls.
 */
export function ifSolid(job: Job, setOut: SetOut, load: Load, proven: HoldingCap | null): Walked | null {
  const { baseMaterial, cores = 'unknown' } = job.wall;
  if (cores !== 'unknown' || (baseMaterial !== 'clay-brick' && baseMaterial !== 'concrete-block'))
    return null;
  const solid: Job = { ...job, wall: { ...job.wall, cores: 'solid' } };
  const walked = walkedOf(solid, setOut, load, proven);
  return (
    walked && {
      ...walked,
      walk: walked.walk.map(onRotary),
      assumptions: [PROVED_AT_THE_HOLE, ...walked.assumptions],
    }
  );
}

function onRotary(each: Candidate | Unusable): Candidate | Unusable {
  if (!each.ok) return each;
  const fixing = () => {
    const hammered = each.fixing();
    return { ...hammered, bit: { ...hammered.bit, action: 'rotary-until-known' as const } };
  };
  return { ...each, fixing };
}

const PROVED_AT_THE_HOLE: Assumption = {
  field: 'wall.cores',
  value: 'solid',
  because:
    'whether it has holes was not said, and in one that has them nothing here holds this; so it counts only once every hole has proved solid',
};

/** Said as a warn where only the solid unit would hold it; the severity is ours. */
export const EVERY_HOLE_PROVES_IT: Finding = {
  id: 'C-WL-1',
  text: 'Nobody knows whether this wall has holes in it, and this fixing counts only where it has none. Drill on rotary: a steady feed and one dust colour to full depth at every hole prove it. If the bit drops at one of them, put nothing in, hang nothing, and tell me.',
};

/** Beside a fastening that holds either way: what would do in the solid unit. */
export function onceProved({ fastener, name, worst }: Candidate): Alternative {
  return {
    fastener,
    utilisation: worst.utilisation,
    text: `${name}, once every hole has proved solid: a steady feed and one dust colour to full depth`,
    governing: governingOf(worst),
  };
}
