import type { Job } from '../job.ts';
import type { SetOut } from '../layout/set-out.ts';
import type { Assumption } from '../plan-shape.ts';
import { basisOf, sourced } from '../sources.ts';
import type { Load } from './acting/actions.ts';
import { onDabs } from './board/on-dabs.ts';
import { pinHook } from './board/pin-hook.ts';
import type { Candidate, Unusable } from './candidate.ts';
import { beforeMasonry } from './finish.ts';
import { framedWalk } from './frame/framed-walk.ts';
import type { Place } from './masonry/fixing-place.ts';
import { masonryCandidate } from './masonry/masonry-candidate.ts';
import { walkOf } from './masonry/walks.ts';
import type { HoldingCap } from './proof/holding-cap.ts';
import { standOffOf } from './stand-off.ts';
import { shelfOf } from './stocked-lengths.ts';
import type { Walked } from './walked.ts';

/** Every fastening of a wall's walk, reckoned through in order; null for a wall that is not computed yet. */
export function walkedOf(job: Job, setOut: SetOut, load: Load, proven: HoldingCap | null): Walked | null {
  const walk = walkOf(job.wall);
  const shelf = shelfOf(job.building?.country);
  const { standOffMm, assumptions } = standOffOf(job.piece.hanging);
  if (walk) {
    const finish = beforeMasonry(job);
    const place = { job, setOut, load, finish, standOffMm, shelf, proven };
    return {
      walk: [
        ...beforeTheDrill(place),
        ...walk.value
          .filter(({ only }) => !only || only === job.piece.hanging.by)
          .map((row) => masonryCandidate(row, place)),
      ],
      assumptions: [...finish.assumptions, ...assumptions, ...unitAssumed(job)],
      basis: [basisOf(walk)],
    };
  }
  return framedWalk(job, setOut, load, proven);
}

/** Thinner plaster does not hold a pin. */
const PIN_PLASTER = sourced(8, 'our-choice', 'plaster for a pin hook: 8 mm or more', 'our-choice', 'mm');

/** What comes before any hole in the masonry: board on dabs while it is light, a pin hook in the plaster of solid brick. */
function beforeTheDrill({ job, setOut, load, proven }: Place): readonly (Candidate | Unusable)[] {
  const { baseMaterial, cores, finish } = job.wall;
  if (baseMaterial === 'plasterboard-on-dabs') return onDabs(job, setOut, load, proven);
  const plastered =
    finish?.kind === 'plaster' &&
    (finish.thicknessMm ?? PIN_PLASTER.value) >= PIN_PLASTER.value &&
    cores === 'solid' &&
    baseMaterial === 'clay-brick';
  return plastered ? [pinHook(1, { job, setOut, load })] : [];
}

function unitAssumed({ wall }: Job): Assumption[] {
  const { baseMaterial, cores } = wall;
  if (baseMaterial === 'natural-stone')
    return [
      {
        field: 'wall.stone',
        value: 'soft',
        because: 'hard or soft stone was not said, so the caps are those of soft stone',
      },
    ];
  if (baseMaterial !== 'clay-brick' && baseMaterial !== 'concrete-block') return [];
  const taken: Assumption[] = [];
  if (cores === undefined || cores === 'unknown') {
    taken.push({
      field: 'wall.cores',
      value: 'unknown',
      because:
        'whether it has holes was not said, so it is reckoned as if it had, until every hole proves it solid',
    });
  }
  if (baseMaterial === 'concrete-block' && cores === 'solid') {
    taken.push({
      field: 'wall.aggregate',
      value: 'light',
      because: 'dense or light block was not said, so the caps are those of light block',
    });
  }
  return taken;
}
