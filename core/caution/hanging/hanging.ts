import { FLAT_CORD, ONE_HOOK, WEAK_HANGER } from '../../piece/hook-limits.ts';
import type { Degrees } from '../../quantity.ts';
import { sourced } from '../../sources.ts';
import type { Facts } from '../facts.ts';
import { from, type Rule } from '../rule.ts';

const STATICS = sourced(0, 'statics', 'T = W / (2 sin a)', 'derived');
const SOFT_FRAME = sourced(0, 'common-practice', 'fibreboard frames', 'common-practice');
const HALF_TURN = 180;

/** How many times the weight a cord on one hook pulls: 1 / (2 sin a), a from the horizontal. */
export function cordFactor(legAngle: Degrees): number {
  return 1 / (2 * Math.sin((legAngle * Math.PI) / HALF_TURN));
}

function onOneHook({ job }: Facts): boolean {
  const hanging = job.piece?.hanging;
  if (!hanging) return false;
  if (hanging.by === 'cord') return !hanging.hooksApartMm;
  return hanging.by === 'rings' && hanging.points?.length === 1;
}

const tooMuchForOne = ({ massKg, job }: Facts): boolean =>
  (massKg ?? 0) > ONE_HOOK.value.upTo || (job.piece?.widthMm ?? 0) > ONE_HOOK.value.upToWidth;

const flatAngle = ({ setOut }: Facts): Degrees | null =>
  setOut?.cord && setOut.cord.legAngle < FLAT_CORD.value ? setOut.cord.legAngle : null;

const softFrame = ({ job }: Facts): boolean =>
  job.piece?.build?.frame?.material === 'mdf' && job.piece.hanging?.by !== 'batten';

const CLIPS = sourced(
  0,
  'common-practice',
  'trade 5.1: frameless clips, lower rail; clips alone must not carry',
  'common-practice',
);
const lowerRail = ({ job }: Facts): boolean | 'unknown' | null => {
  const hanging = job.piece?.hanging;
  return hanging?.by === 'clips' ? (hanging.lowerRail ?? 'unknown') : null;
};

const onSawtooth = ({ job, massKg }: Facts): boolean => {
  const hanging = job.piece?.hanging;
  const isSawtooth = hanging !== undefined && 'hanger' in hanging && hanging.hanger === 'sawtooth';
  return isSawtooth && (massKg ?? 0) > WEAK_HANGER.value.upTo;
};

/** How it hangs. */
export const hangingRules: readonly Rule[] = [
  {
    id: 'C-HG-1',
    severity: 'warn',
    applies: (facts) => facts.whole && onOneHook(facts) && tooMuchForOne(facts),
    text: (facts) =>
      `One hook and ${(facts.massKg ?? 0) > ONE_HOOK.value.upTo ? 'heavy' : 'wide'}: use two hooks. It hangs straighter, and if one lets go the other may hold it.`,
    basis: from(ONE_HOOK),
  },
  {
    id: 'C-HG-2',
    severity: 'warn',
    applies: (facts) => facts.whole && flatAngle(facts) !== null,
    text: (facts) =>
      `A flat cord: at ${Math.round(flatAngle(facts) ?? 0)} degrees it pulls ${cordFactor(flatAngle(facts) ?? FLAT_CORD.value).toFixed(1)} times the weight. Lengthen it or hang from the rings.`,
    basis: from(STATICS, FLAT_CORD),
  },
  {
    id: 'C-HG-3',
    severity: 'stop',
    applies: onSawtooth,
    text: `Not for this weight: a sawtooth hanger is for ${WEAK_HANGER.value.upTo} kg at the most. Put two rings or strap hangers on the frame.`,
    clears: 'Two rings or strap hangers screwed into solid frame.',
    basis: from(WEAK_HANGER),
  },
  {
    id: 'C-HG-3',
    severity: 'stop',
    applies: (facts) => lowerRail(facts) === false,
    text: 'Clips alone must not carry glass: they only hold it against the wall. A rail under its whole lower edge carries it.',
    clears: 'A lower rail under the glass, screwed along its length; then measure the screws of the rail.',
    basis: from(CLIPS),
  },
  {
    id: 'C-HG-3',
    severity: 'warn',
    applies: (facts) => facts.whole && lowerRail(facts) === 'unknown',
    text: 'This is reckoned with a rail under the glass that carries all of it: clips alone must not. No rail, no hanging.',
    basis: from(CLIPS),
  },
  {
    id: 'C-HG-4',
    severity: 'warn',
    applies: (facts) => facts.whole && softFrame(facts),
    text: 'Rings in a fibreboard frame pull out: the frame has to be as strong as the wall. Bolt through, or move the rings to solid timber.',
    basis: from(SOFT_FRAME),
  },
];
