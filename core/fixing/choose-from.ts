import type { Alternative, Rejected } from '../plan-shape.ts';
import { STANDARD_GRAVITY } from '../quantity.ts';
import type { Basis } from '../sources.ts';
import { type Candidate, governingOf, type Unusable } from './candidate.ts';

/** How many further fastenings are named beside the chosen one. */
const ALTERNATIVES = 3;

export type Picked = {
  readonly chosen: Candidate | null;
  readonly alternatives: Alternative[];
  readonly rejected: Rejected[];
  /** What the alternatives stand on. */
  readonly basis: readonly Basis[];
};

/** Takes the first of a walk whose utilisation is at most 1; names the next ones, and says why each before it fell. */
export function pick(walk: readonly (Candidate | Unusable)[]): Picked {
  const rejected: Rejected[] = [];
  const alternatives: Alternative[] = [];
  const basis: Basis[] = [];
  let chosen: Candidate | null = null;
  let last = '';
  for (const each of walk) {
    if (!each.ok) {
      if (each.quiet) continue;
      // A row that differs from the one before only in its gauge fails for the same reason: said once.
      const reason = `${each.fastener} ${each.because}`;
      if (chosen === null && reason !== last) {
        rejected.push({ fastener: each.fastener, because: `${each.name}: ${each.because}.` });
      }
      last = reason;
    } else if (!(each.worst.utilisation <= 1)) {
      if (chosen === null)
        rejected.push({ fastener: each.fastener, because: `${each.name}: ${tooMuch(each)}.` });
    } else if (chosen === null) {
      chosen = each;
    } else if (alternatives.length < ALTERNATIVES) {
      basis.push(...each.worst.basis);
      alternatives.push({
        fastener: each.fastener,
        utilisation: each.worst.utilisation,
        text: `${each.name}: ${percent(each.worst.utilisation)} of what it may bear`,
        governing: governingOf(each.worst),
      });
    }
  }
  return { chosen, alternatives, rejected, basis };
}

const percent = (utilisation: number): string => `${Math.round(utilisation * 100)} %`;
const kilograms = (force: number): string => `${Math.round((force / STANDARD_GRAVITY) * 10) / 10} kg`;

const BECAUSE: Record<Candidate['worst']['mode'], string> = {
  'screw-bending': 'the screw bends through the finish',
  'screw-shear': 'the screw shears',
  'screw-tension': 'the screw is pulled apart',
  'plug-cap': 'over the cap of common practice',
  'anchor-cap': 'over the cap of common practice',
  'packet-rating': 'over the packet’s rating',
  'pull-test': 'over what the pull test allows',
  'timber-lateral': 'the screw tips in the timber',
  'timber-withdrawal': 'the screw draws from the timber',
  'concrete-cone': 'a cone of concrete breaks out',
  masonry: 'the masonry breaks out',
};

function tooMuch({ worst, point, needs }: Candidate): string {
  if (!Number.isFinite(point.shearN)) return 'the weight of the piece is not known';
  const needed = needs?.() ?? null;
  const pull = point.tensionN > 1 ? ` with ${Math.round(point.tensionN)} N of pull outward` : '';
  return `${BECAUSE[worst.mode]}: ${kilograms(point.shearN)}${pull} on each, where it may bear ${kilograms(worst.resistanceN)}${pull === '' ? '' : ' with no pull'}${needed ? `; ${needed}` : ''}`;
}
