import type { Job } from '../../job.ts';
import { type Newtons, newtons } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import type { Why } from '../../why.ts';

/** A person leaning or grabbing: what a light fitting is tried with, no requirement on a picture. */
const GRAB = sourced(
  newtons(250),
  'our-choice',
  '250 N down, as partitions are tried with a light fitting (BS 5234-2, from memory); not required of pictures',
  'our-choice',
);
const WITHIN_REACH: readonly unknown[] = ['bed', 'sofa', 'walkway'];

/** What a grab at one hanger makes of the fixing, said where somebody passes or sits below; never a stop by itself. */
export function grabbedBy(
  { place }: Job,
  shearN: Newtons,
  utilisation: number,
): { advice: string[]; why: Why[] } {
  if (!WITHIN_REACH.includes(place.below) || !(shearN > 0)) return { advice: [], why: [] };
  const used = Math.round(((utilisation * (shearN + GRAB.value)) / shearN) * 100);
  return {
    advice: [
      used > 100
        ? `It is in reach: somebody who pulls at it with ${GRAB.value} N, about 25 kg, takes one fixing to ${used} % of what it may bear for good. It hangs there; it is no handle.`
        : `A grab of ${GRAB.value} N, about 25 kg, takes one fixing to ${used} % of what it may bear.`,
    ],
    why: [
      {
        of: 'a grab',
        formula: 'the load on one fixing + 250 N, our choice',
        inputs: { shearN: Math.round(shearN * 100) / 100, grabN: GRAB.value },
        result: `${Math.round(shearN + GRAB.value)} N`,
        basis: [basisOf(GRAB)],
        symbols: 'shearN + grabN',
        paths: [],
      },
    ],
  };
}
