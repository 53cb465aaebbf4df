import type { Assumption } from '../../plan-shape.ts';
import type { Millimetres } from '../../quantity.ts';
import type { Why } from '../../why.ts';
import { envelope, type PointLoad, type WorstCheck, worse } from '../acting/worst-check.ts';
import type { Candidate, Unusable } from '../candidate.ts';
import type { Fastener } from '../fastener.ts';
import type { Fixing } from '../fixing-shape.ts';
import type { Shank } from '../masonry/walk-row.ts';
import { strengthWhys } from '../told/why-it-holds.ts';
import { cappedCheck } from './capped-check.ts';
import type { HoldingCap } from './holding-cap.ts';
import { isOverUsual } from './usual.ts';

/** Up to what is usual for a fastening, the rest up to its cap, or both. */
export type Reach = 'usual' | 'to-the-cap' | 'whole';

/** A fastening that no document rates: what it is, and what it is held to. */
export type Capped = {
  readonly fastener: Fastener;
  readonly name: string;
  readonly shank: Shank;
  readonly usualKg: number;
  readonly cap: HoldingCap;
  /** From what holds it out to the load. */
  readonly armMm: Millimetres;
  readonly points: readonly PointLoad[];
  readonly reach: Reach;
  readonly fixing: (worst: WorstCheck) => Fixing;
  readonly why: () => Why[];
  readonly advice: readonly string[];
  readonly taken: readonly Assumption[];
};

/** Weighs a capped fastening at every place it is put; on its second turn in a walk it says nothing twice. */
export function cappedCandidate(what: Capped): Candidate | Unusable {
  const { fastener, name, shank, usualKg, cap, armMm, points, reach } = what;
  let worst: WorstCheck | null = null;
  for (const each of points) worst = worse(worst, cappedCheck(each, cap, shank, armMm));
  if (worst === null) return { ok: false, fastener, name, because: 'there is no mark for it' };
  const held = worst;
  const point = envelope(points);
  const stretched = cap.noSource && isOverUsual(point.shearN, usualKg) && held.utilisation <= 1;
  if (reach !== 'whole' && stretched !== (reach === 'to-the-cap')) {
    return {
      ok: false,
      fastener,
      name,
      because: `over the usual ${usualKg} kg for it, though within its cap: what bears more comes first`,
      ...(reach === 'to-the-cap' && { quiet: true as const }),
    };
  }
  return {
    ok: true,
    fastener,
    name,
    usualKg,
    point,
    worst: held,
    fixing: () => what.fixing(held),
    why: () => [...what.why(), ...strengthWhys(held, point, shank, armMm, cap)],
    taken: what.taken,
    advice: what.advice,
  };
}
