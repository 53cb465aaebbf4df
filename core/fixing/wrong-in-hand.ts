import type { Job } from '../job.ts';
import type { Fixing } from '../plan-shape.ts';
import { type Millimetres, mm } from '../quantity.ts';
import { sourced } from '../sources.ts';
import { finishOf } from './finish.ts';
import type { InHand } from './hand.ts';
import { HOLE_BEYOND } from './hole.ts';
import { BATTEN, standOffOf } from './stand-off.ts';

/** A worn or mislabelled bit is this much off its plug before the plug is loose or won't go in. */
const BIT_OFF = sourced(
  0.4,
  'common-practice',
  'pairings: 6.35 is too slack for a 6 mm plug, 9.53 too tight for 10',
  'common-practice',
  'mm',
);

/** What is wrong with a fixing that would be strong enough: its bit, its head, its lengths; a sentence each. */
export function wrongWith(job: Job, inHand: InHand, asReckoned: Fixing): string[] {
  return [
    ...drillWrong(inHand, asReckoned),
    ...headWrong(job, inHand, asReckoned),
    ...(asReckoned.plug ? plugLengthsWrong(job, inHand) : tooShort(inHand, asReckoned)),
  ];
}

/** The hammer where the plan says rotary breaks webs; a bit of another size than the plug leaves it loose or out. */
function drillWrong({ bit, plug }: InHand, asReckoned: Fixing): string[] {
  const wrong: string[] = [];
  if (bit?.action === 'hammer-after-finish' && asReckoned.bit.action !== 'hammer-after-finish')
    wrong.push('No hammer in this wall: rotary only, or the hole breaks out behind and holds nothing.');
  if (bit?.diameterMm !== undefined && plug?.diameterMm !== undefined) {
    const off = bit.diameterMm - plug.diameterMm;
    if (Math.abs(off) >= BIT_OFF.value)
      wrong.push(
        `A ${tenth(bit.diameterMm)} mm hole is too ${off > 0 ? 'slack' : 'tight'} for a ${tenth(plug.diameterMm)} mm plug: drill ${tenth(plug.diameterMm)} mm.`,
      );
  }
  return wrong;
}

/** A ring slides off a countersunk head; nothing with a hexagon or a washer goes into a keyhole. */
function headWrong({ piece }: Job, { screw }: InHand, asReckoned: Fixing): string[] {
  const { by } = piece.hanging;
  const head = screw?.head;
  // The screws of a board or an added batten hold no hanger.
  if (head === asReckoned.screw?.head) return [];
  if (by === 'rings' && head === 'countersunk')
    return ['A ring slides up and off a countersunk head: take a pan head, well wider than the ring.'];
  return by === 'keyholes' && (head === 'hex' || head === 'washer' || head === 'countersunk')
    ? [
        'That head does not hang in a keyhole: take a round or pan head that passes the round and not the slot.',
      ]
    : [];
}

/** Lengths that do not add up in masonry: C-WL-2, a hole too shallow, a screw too short or one that bottoms. */
function plugLengthsWrong(job: Job, { bit, plug, screw }: InHand): string[] {
  const finish = finishOf(job.wall).thicknessMm;
  const { hanging } = job.piece;
  const outside = hanging.by === 'batten' ? BATTEN.value.thicknessMm : standOffOf(hanging).standOffMm;
  const wrong: string[] = [];
  const depth = bit?.depthMm;
  const plugged = plug?.lengthMm;
  const { plugMm, screwMm } = HOLE_BEYOND.value;
  if (depth !== undefined && plugged !== undefined && depth < finish + plugged) {
    wrong.push(
      `Part of that plug sits in plaster, which holds nothing. Go deeper, to ${whole(mm(finish + plugged + plugMm))} mm, or use a longer plug.`,
    );
  }
  if (screw?.lengthMm !== undefined && plugged !== undefined && screw.lengthMm < outside + finish + plugged) {
    wrong.push(
      `The screw is too short to fill the plug: ${whole(mm(outside + finish + plugged))} mm or longer.`,
    );
  }
  if (screw?.lengthMm !== undefined && depth !== undefined && screw.lengthMm - outside > depth) {
    wrong.push(
      `The screw bottoms in a hole of ${whole(depth)} mm and spins the plug: drill to ${whole(mm(screw.lengthMm - outside + screwMm))} mm.`,
    );
  }
  return wrong;
}

/** A screw shorter than was reckoned with has less of it in what holds it, or no thread behind the sheet. */
function tooShort({ screw }: InHand, asReckoned: Fixing): string[] {
  const wanted = asReckoned.screw?.lengthMm;
  const short =
    screw?.lengthMm !== undefined && wanted !== undefined && whole(screw.lengthMm) < whole(wanted);
  return short ? [`The screw is too short: ${whole(wanted)} mm or longer.`] : [];
}

const whole = (value: Millimetres): number => Math.round(value);
const tenth = (value: number): number => Math.round(value * 10) / 10;
