import type { Job } from '../../job.ts';
import { type Millimetres, mm } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import { finishOf } from '../finish.ts';
import type { Fixing } from '../fixing-shape.ts';
import { HOLE_BEYOND } from '../masonry/hole.ts';
import { BATTEN, standOffOf } from '../stand-off.ts';
import { LEAD_HOLE } from '../timber/timber-species.ts';
import type { InHand } from './hand.ts';

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
    ...(asReckoned.plug && asReckoned.fastener !== 'frame-plug'
      ? plugLengthsWrong(job, inHand, asReckoned, asReckoned.plug.lengthMm)
      : tooShort(inHand, asReckoned)),
  ];
}

/** The hammer where the plan says rotary breaks webs; a bit of another kind or size leaves plug or thread loose. */
function drillWrong({ bit, plug }: InHand, asReckoned: Fixing): string[] {
  const wrong: string[] = [];
  if (bit?.action === 'hammer-after-finish' && asReckoned.bit.action !== 'hammer-after-finish')
    wrong.push('No hammer in this wall: rotary only, or the hole breaks out behind and holds nothing.');
  if (isOtherKind(bit?.kind, asReckoned.bit.kind))
    wrong.push(`A ${bit?.kind} bit is not for this wall: it wants a ${asReckoned.bit.kind} bit.`);
  const plugMm = plug?.diameterMm ?? asReckoned.plug?.diameterMm;
  if (bit?.diameterMm !== undefined && plugMm !== undefined) {
    const off = bit.diameterMm - plugMm;
    if (Math.abs(off) >= BIT_OFF.value)
      wrong.push(
        `A hole of ${tenth(bit.diameterMm)} mm is too ${off > 0 ? 'slack' : 'tight'} for a plug of ${tenth(plugMm)} mm: drill ${tenth(plugMm)} mm.`,
      );
  }
  // Where plaster, tile or a hard sheet has a bit of its own, that one is no pilot.
  if (bit?.diameterMm !== undefined && asReckoned.pilot && asReckoned.bit.kind === 'wood') {
    const { diameterMm } = asReckoned.pilot;
    // The same root, at nine tenths instead of seven: past that even hardwood is left no thread.
    const widest = (diameterMm * LEAD_HOLE.value.hardwood) / LEAD_HOLE.value.softwood;
    if (bit.diameterMm > widest)
      wrong.push(
        `A pilot of ${tenth(bit.diameterMm)} mm leaves the thread nothing to bite: drill ${tenth(diameterMm)} mm.`,
      );
  }
  return wrong;
}

/** Masonry and tile bits do for each other's walls in turn, and a metal bit goes through wood. */
function isOtherKind(inHand: Fixing['bit']['kind'] | undefined, wanted: Fixing['bit']['kind']): boolean {
  const forStone = (kind: Fixing['bit']['kind']): boolean => kind === 'masonry' || kind === 'tile';
  if (inHand === undefined || inHand === 'none' || wanted === 'none' || inHand === wanted) return false;
  return forStone(inHand) !== forStone(wanted);
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
function plugLengthsWrong(
  job: Job,
  { bit, plug, screw }: InHand,
  { fastener }: Fixing,
  reckonedMm: Millimetres,
): string[] {
  const finish = finishOf(job.wall).thicknessMm;
  const { hanging } = job.piece;
  const onBatten = hanging.by === 'batten' || fastener === 'batten-screws';
  const outside = onBatten ? BATTEN.value.thicknessMm : standOffOf(hanging).standOffMm;
  const wrong: string[] = [];
  const depth = bit?.depthMm;
  // Where the plug was not said it is the one that was reckoned with.
  const plugged = plug?.lengthMm ?? reckonedMm;
  const { plugMm, screwMm } = HOLE_BEYOND.value;
  if (depth !== undefined && depth < finish + plugged) {
    wrong.push(
      `Part of that plug sits in plaster, which holds nothing. Go deeper, to ${whole(mm(finish + plugged + plugMm))} mm, or use a longer plug.`,
    );
  }
  if (screw?.lengthMm !== undefined && screw.lengthMm < outside + finish + plugged) {
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
