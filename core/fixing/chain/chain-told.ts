import { HANGER_CAPS } from '../../piece/hanger-caps.ts';
import type { ChainLink } from '../../plan-shape.ts';
import { weightOf } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Why } from '../../why.ts';
import { weakestOf } from './chain.ts';
import { kilogramsOf } from './in-kilograms.ts';

/** From here on a link is not merely worth changing: a line with a knot in it is at its breaking strength. */
const TWICE_OVER = sourced(2, 'our-choice', 'a link at twice what it may bear stops the job', 'our-choice');

type Told = { findings: { id: string; text: string; stops?: string }[]; advice: string[]; why: Why[] };

/** What the links give cause to say: the weakest by name, what an unknown one must be, and what is over its limit. */
export function chainTold(chain: readonly ChainLink[]): Told {
  return {
    findings: chain.flatMap(findingOf),
    advice: [...weakestAdvice(chain), ...chain.flatMap(unknownAdvice)],
    why: chain.filter(({ link }) => link !== 'wall-fixing').map(whyOf),
  };
}

function findingOf(link: ChainLink): Told['findings'] {
  const { utilisation = 0, name, actionN, resistanceN, needs } = link;
  if (link.link === 'wall-fixing' || !(utilisation > 1) || resistanceN === undefined) return [];
  const text = `The ${name} carries ${kilogramsOf(actionN)} and is for ${kilogramsOf(resistanceN)}.${needs ? ` It wants ${needs}.` : ''}`;
  if (utilisation >= TWICE_OVER.value) {
    return [{ id: 'C-HG-3', text: `Not for this weight. ${text}`, stops: needs ?? 'A stronger hanger.' }];
  }
  return [{ id: link.link === 'cord' ? 'C-HG-2' : 'C-HG-4', text }];
}

/** Said only where it is not the wall fixing, whose share the plan gives anyway. */
function weakestAdvice(chain: readonly ChainLink[]): string[] {
  const weakest = weakestOf(chain);
  if (!weakest || weakest.link === 'wall-fixing' || weakest.utilisation === undefined) return [];
  if (weakest.utilisation > 1) return [];
  return [
    `The weakest link is the ${weakest.name}, at ${Math.round(weakest.utilisation * 100)} % of what it may bear.`,
  ];
}

const LIGHT_RING = weightOf(HANGER_CAPS['d-ring'].each.value);

/** A ring nobody described is spoken of only where the commonest would not do. */
function unknownAdvice({ link, name, actionN, utilisation, needs }: ChainLink): string[] {
  if (needs === undefined || (utilisation !== undefined && utilisation > 1)) return [];
  if (link === 'hanger' && name === 'ring' && actionN <= LIGHT_RING) return [];
  if (!Number.isFinite(actionN)) return [];
  const whose = link === 'hanger' || link === 'hook' ? `Each ${name}` : `The ${name}`;
  return [`${whose} carries ${kilogramsOf(actionN)}: it wants ${needs}.`];
}

const FORMULA: Record<ChainLink['link'], string> = {
  'wall-fixing': 'as the utilisation of the fixing',
  hook: 'the load on the mark',
  hanger: 'the load on one hanger, along the cord where there is one, over its cap of common practice',
  'hanger-screw': 'NDS yield modes of the screw through a thin plate into the frame x 0.9',
  cord: 'W / (2 sin th) over a quarter of the breaking strength',
  batten: 'W s / 4 over k_mod f_m,k t h^2 / 6 / (1.3 x 1.35)',
};

function whyOf({ link, name, actionN, resistanceN, utilisation, needs, basis }: ChainLink): Why {
  const tenth = (value: number): number => Math.round(value * 10) / 10;
  return {
    of: `strength of the ${name}`,
    formula: FORMULA[link],
    inputs: {
      actionN: tenth(actionN),
      ...(resistanceN !== undefined && { mayBearN: tenth(resistanceN) }),
    },
    result:
      utilisation === undefined
        ? `not known: it needs ${needs}`
        : `${Math.round(utilisation * 100) / 100} of what it may bear`,
    basis,
  };
}
