import type { Job } from '../job.ts';
import type { SetOut } from '../layout/set-out.ts';
import type { Alternative } from '../plan-shape.ts';
import type { Load } from './actions.ts';
import { pick } from './choose-from.ts';
import type { HoldingCap } from './holding-cap.ts';
import { walkedOf } from './walk-candidates.ts';

/** Where coring is not known: what would do once every hole has proved solid. Nothing for other walls. */
export function ifSolid(job: Job, setOut: SetOut, load: Load, proven: HoldingCap | null): Alternative[] {
  const { baseMaterial, cores = 'unknown' } = job.wall;
  if (cores !== 'unknown' || (baseMaterial !== 'clay-brick' && baseMaterial !== 'concrete-block')) return [];
  const solid: Job = { ...job, wall: { ...job.wall, cores: 'solid' } };
  const chosen = pick(walkedOf(solid, setOut, load, proven)?.walk ?? []).chosen;
  if (chosen === null) return [];
  return [
    {
      fastener: chosen.fastener,
      utilisation: chosen.worst.utilisation,
      text: `${chosen.name}, once every hole has proved solid: a steady feed and one dust colour to full depth`,
    },
  ];
}
