import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import type { Actions, ChainLink } from '../../plan-shape.ts';
import { type Newtons, newtons } from '../../quantity.ts';
import { basisOf } from '../../sources.ts';
import type { WorstCheck } from '../acting/worst-check.ts';
import type { Fixing } from '../fixing-shape.ts';
import { battenLink } from './batten-link.ts';
import { cordLink } from './cord-link.ts';
import { hangerKind, hangerLink } from './hanger-link.ts';
import { upToWhole } from './in-kilograms.ts';
import { ringScrewLink } from './ring-screw.ts';

/** What the wall fixing is, as a link. */
type Held = { fixing: Fixing; worst: WorstCheck; shearN: Newtons };

const HOOK = {
  source: 'common-practice',
  at: 'trade 5.1: a grooved hook with a keeper',
  standing: 'common-practice',
} as const;

/** Every link from the wall to the piece, the wall fixing first; forces in newtons on one of each, without any factor. */
export function chainOf(job: Job, setOut: SetOut, actions: Actions, held: Held): ChainLink[] {
  const { piece } = job;
  const { hanging } = piece;
  const links: ChainLink[] = [wallLink(held)];
  const shear = newtons(Math.max(0, ...actions.perMark.map((each) => each.shearN)));
  if (hanging.by === 'batten') {
    const batten = battenLink(setOut, actions.weightN);
    if (batten) links.push(batten);
    return links;
  }
  if (hanging.by === 'clips') return links;
  // A cord pulls its ring along itself: down with half the weight, and inward.
  const onHanger = hanging.by === 'cord' ? (actions.cordN ?? shear) : shear;
  if (hanging.by === 'cord') {
    if (held.fixing.fastener !== 'pin-hook' && held.fixing.fastener !== 'picture-rail-hook') {
      links.push(hookLink(shear));
    }
    links.push(cordLink(hanging, onHanger));
  }
  links.push(hangerLink(hanging, onHanger));
  const kind = hangerKind(hanging);
  const screw = kind === 'd-ring' || kind === 'strap-ring' ? ringScrewLink(piece, kind, onHanger) : null;
  if (screw) links.push(screw);
  return links;
}

function wallLink({ fixing, worst, shearN }: Held): ChainLink {
  return {
    link: 'wall-fixing',
    name: 'fixing in the wall',
    actionN: shearN,
    resistanceN: worst.resistanceN,
    utilisation: fixing.utilisation,
    basis: worst.basis,
  };
}

function hookLink(actionN: Newtons): ChainLink {
  return {
    link: 'hook',
    name: 'hook',
    actionN,
    needs: `a grooved hook with a keeper, rated ${upToWhole(actionN)} kg or more`,
    basis: [basisOf(HOOK)],
  };
}

/** The link of known strength nearest its limit; the chain is no stronger. */
export function weakestOf(chain: readonly ChainLink[]): ChainLink | null {
  let weakest: ChainLink | null = null;
  for (const each of chain) {
    if (each.utilisation !== undefined && each.utilisation > (weakest?.utilisation ?? -1)) weakest = each;
  }
  return weakest;
}
