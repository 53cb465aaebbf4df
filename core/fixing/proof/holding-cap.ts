import type { Job } from '../../job.ts';
import { type Kilograms, type Newtons, newtons } from '../../quantity.ts';
import { type Basis, basisOf, type Sourced, sourced } from '../../sources.ts';
import type { FailureMode } from '../fixing-shape.ts';
import { capForce } from './caps.ts';
import { PULL_TEST, pullTestAllowable, UNEVEN } from './pull-test.ts';

/** What limits a fastener that no public document rates, newtons, and how that is known. */
export type HoldingCap = {
  readonly mode: FailureMode;
  readonly forceN: Newtons;
  readonly basis: readonly Basis[];
  readonly noSource: boolean;
};

const PACKET = { source: 'packet', at: 'as read out', standing: 'common-practice' } as const;

/** The packet's rating, then a pull test on site, before any cap (design, "What holds"). */
export type Proven = { readonly cap: HoldingCap | null; readonly advice: readonly string[] };

/** Reads the packet and the pull test of a job. Where both are given the lower holds. */
export function provenOf({ proof }: Job): Proven {
  const advice: string[] = [];
  let cap: HoldingCap | null = null;
  const rating = proof?.packetRatingN;
  const broken = workingOf(proof);
  if (broken !== null) {
    cap = {
      mode: 'packet-rating',
      forceN: broken.forceN,
      basis: broken.said ? [basisOf(PACKET)] : [basisOf(PACKET), basisOf(ULTIMATE_FACTOR)],
      noSource: false,
    };
    advice.push(
      `Reckoned with the breaking load ${proof?.saidBy ?? 'you'} read from the packet, divided by ${broken.factor}: it must be for this fixing, in this base material. Keep a photo of it.`,
    );
  }
  if (rating !== undefined && Number.isFinite(rating) && rating > 0 && !(cap && cap.forceN < rating)) {
    cap = { mode: 'packet-rating', forceN: newtons(rating), basis: [basisOf(PACKET)], noSource: false };
    advice.push(
      `Reckoned with the rating ${proof?.saidBy ?? 'you'} read from the packet, as a working load: it must be for this fixing, in this base material. Keep a photo of it. A breaking load is no rating.`,
    );
  }
  if (proof?.pullTestN !== undefined) {
    const test = pullTestAllowable(proof.pullTestN);
    if (!test.ok) advice.push(`The pull test does not count: ${test.because}.`);
    else if (cap === null || test.allowableN < cap.forceN) {
      cap = {
        mode: 'pull-test',
        forceN: test.allowableN,
        basis: [basisOf(PULL_TEST), basisOf(UNEVEN)],
        noSource: false,
      };
      advice.push(
        'Reckoned with the pull test: the same fixing, the same wall, the same depth as was tested.',
      );
    }
  }
  return { cap, advice };
}

/** Ultimate to working where the packet gives no factor of its own. */
const ULTIMATE_FACTOR = sourced(
  5,
  'TMS402',
  '8.1.3.1 as NCMA TEK 12-3C gives it: allowable = 20 % of the mean; taken for a packet too, which is our choice',
  'our-choice',
);

/** A breaking load over its factor, which is more than 1; null where none was read out. */
function workingOf(proof: Job['proof']): { forceN: Newtons; factor: number; said: boolean } | null {
  const ultimate = proof?.packetUltimateN;
  if (ultimate === undefined || !(Number.isFinite(ultimate) && ultimate > 0)) return null;
  const printed = proof?.packetFactor ?? 0;
  const said = printed > 1 && Number.isFinite(printed);
  const factor = said ? printed : ULTIMATE_FACTOR.value;
  return { forceN: newtons(ultimate / factor), factor, said };
}

/** The cap of common practice or our choice, said as such. */
export function practiceCap(cap: Sourced<Kilograms>, mode: FailureMode): HoldingCap {
  return { mode, forceN: capForce(cap), basis: [basisOf(cap)], noSource: true };
}
