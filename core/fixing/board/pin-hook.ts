import type { Job } from '../../job.ts';
import type { SetOut } from '../../layout/set-out.ts';
import { mm } from '../../quantity.ts';
import { basisOf, sourced } from '../../sources.ts';
import type { Load } from '../acting/actions.ts';
import { envelope, linear, type WorstCheck, worse } from '../acting/worst-check.ts';
import { type Candidate, governingOf, type Unusable } from '../candidate.ts';
import { OUTWARD_SHARE } from '../proof/capped-check.ts';
import { practice } from '../proof/caps.ts';
import { practiceCap } from '../proof/holding-cap.ts';
import { isOverUsual } from '../proof/usual.ts';
import { pickedWhys } from '../told/picked-whys.ts';
import { capSum, utilisationWhy } from '../told/why-it-holds.ts';

/** One hardened pin, and two at a slope: in sound plaster or board. */
const PIN_HOOK = sourced(
  { 1: { usualKg: 2, capKg: 3 }, 2: { usualKg: 3, capKg: 5 }, glassUpToKg: 3 } as const,
  'common-practice',
  'pin hooks in plaster and board: one pin 2 usual, 3 cap; two pins 3 and 5; no mirror, no glass over 3',
  'common-practice',
);
const OVER_PEOPLE: readonly unknown[] = ['bed', 'sofa', 'cot'];

/** A picture hook on hardened pins at each mark: no drill, for light pictures only. */
export function pinHook(
  pins: 1 | 2,
  { job, setOut, load }: { job: Job; setOut: SetOut; load: Load },
): Candidate | Unusable {
  const fastener = 'pin-hook';
  const name = `picture hook on ${pins === 1 ? 'one hardened pin' : 'two hardened pins'}`;
  const no = (because: string): Unusable => ({ ok: false, fastener, name, because, quiet: true });
  const why = notHere(job, load);
  if (why !== null) return no(why);
  const rule = PIN_HOOK.value[pins];
  const cap = practiceCap(practice(rule.capKg, PIN_HOOK.at), 'anchor-cap');
  const outward = cap.forceN * OUTWARD_SHARE.value;
  let worst: WorstCheck | null = null;
  for (const point of load.actions.perMark) {
    const allowed = { shearN: cap.forceN, tensionN: outward as typeof cap.forceN };
    worst = worse(worst, {
      mode: cap.mode,
      resistanceN: cap.forceN,
      utilisation: linear(point, allowed.shearN, allowed.tensionN),
      basis: [...cap.basis, basisOf(OUTWARD_SHARE)],
      noSource: true,
      acting: point,
      allowed,
    });
  }
  if (worst === null) return no('there is no mark for it');
  const held = worst;
  const point = envelope(load.actions.perMark);
  if (isOverUsual(point.shearN, rule.usualKg)) return no(`over the usual ${rule.usualKg} kg for it`);
  const count = setOut.marks.length;
  return {
    ok: true,
    fastener,
    name,
    usualKg: rule.usualKg,
    point,
    worst: held,
    fixing: () => ({
      fastener,
      count,
      bit: { kind: 'none', action: 'none', diameterMm: mm(0), depthMm: mm(0) },
      note: 'Pins at the plate’s slope, a small hammer, through tape; firm, and no star in the plaster, or it holds nothing. The marks are where the hook must bear: its pins go in above that by the hook’s own height, measured on the hook.',
      governing: governingOf(held),
      utilisation: held.utilisation,
    }),
    why: () => [
      {
        of: 'hole',
        formula: 'none: the pins are driven',
        inputs: {},
        result: '0 mm',
        basis: [basisOf(PIN_HOOK)],
        symbols: '0',
        paths: ['fixing.bit.diameterMm', 'fixing.bit.depthMm'],
      },
      ...pickedWhys({ marks: count, count }, [basisOf(PIN_HOOK)]),
      ...utilisationWhy(held, point, capSum(cap)),
    ],
    advice: [],
  };
}

function notHere({ piece, place }: Job, { massKg }: Load): string | null {
  if (piece.hanging.by !== 'rings' && piece.hanging.by !== 'cord')
    return 'nothing on the piece goes over a hook';
  if (piece.kind === 'mirror') return 'never for a mirror';
  const mayBeGlass = piece.kind === 'picture' && piece.glass !== 'none' && piece.glass !== 'acrylic';
  if (mayBeGlass && massKg > PIN_HOOK.value.glassUpToKg) return 'not for that much glass';
  return OVER_PEOPLE.includes(place.below) ? 'not above a bed or a seat' : null;
}
