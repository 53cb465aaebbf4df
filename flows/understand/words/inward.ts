import type { QuestionName } from '../../question.ts';
import type { DisplayUnit } from '../../reading.ts';
import type { Measure } from './measure.ts';
import { isWord, type Token } from './token.ts';

/** After these an "in" can only be inches: "8 in down", "30 in wide". */
const AFTER_INCHES = [
  'down',
  'up',
  'x',
  'wide',
  'high',
  'tall',
  'long',
  'deep',
  'thick',
  'apart',
  'above',
  'below',
  'in',
  'inside',
  'of',
  'off',
  'over',
  'under',
  'between',
  'round',
  'across',
  '-',
  '/',
  ')',
] as const;
/** Questions whose answers say how far in something is. */
const INWARD_QUESTIONS: readonly (QuestionName | undefined)[] = [
  'piece.hanging',
  'place.across',
  'wall.accessories',
];

/** From here a figure before "in" is no longer inches on a frame, mm; our choice. */
const MOST_INCHES_IN = 30;
/** From here a bare figure beside it shows that millimetres are spoken; our choice. */
const METRIC_FROM = 25;

/** Words between how far in and how far down, at most; our choice. */
const MOST_BESIDE = 8;

/** True when the "in" after a figure may be the preposition: "110 in from the sides", "90 in and 260 down". */
export function mayBeInward(
  all: readonly Token[],
  said: Measure,
  question: QuestionName | undefined,
): boolean {
  const unit = all[said.to - 1];
  if (said.unit !== 'in' || said.compound || said.tape || !isWord(unit, 'in') || said.to - said.from < 2)
    return false;
  const next = all[said.to];
  if (isWord(next, ...AFTER_INCHES)) return false;
  if (isWord(next, 'on') && isWord(all[said.to + 1], 'center', 'centre', 'centers', 'centres')) return false;
  if (isWord(next, 'from') && isWord(fromWhat(all, said.to + 1), 'top', 'bottom')) return false;
  if (isWord(next, 'width', 'height', 'length', 'depth', 'diameter')) return true;
  const sideways = isWord(next, 'from', 'each', 'both', 'either') || next?.kind === 'number';
  if (INWARD_QUESTIONS.includes(question) || (question === undefined && sideways)) return true;
  const leadsOn = isWord(next, 'and', ',') && all[said.to + 1]?.kind === 'number';
  return (sideways || leadsOn) && !isWord(all[said.from - 1], 'x', 'by') && tellsDrop(all, said);
}

/** "95 in and 240 down": a drop beside it makes it a hanger's, whatever was asked. */
function tellsDrop(all: readonly Token[], said: Measure): boolean {
  return all.some((each, at) => {
    if (!isWord(each, 'down') || Math.abs(at - said.to) > MOST_BESIDE) return false;
    const before = all[at - 1]?.kind === 'unit' ? all[at - 2] : all[at - 1];
    return before?.kind === 'number' || all[at + 1]?.kind === 'number';
  });
}

/** "900 x 1200 in the hall", "30x40 in a nice frame": an article behind it makes it no unit, unless inches are spoken. */
export function isPreposition(all: readonly Token[], said: Measure, spoken: DisplayUnit): boolean {
  if (said.unit !== 'in' || said.compound || said.tape || spoken === 'in') return false;
  if (!isWord(all[said.to - 1], 'in') || all[said.to - 1]?.glued === true) return false;
  return isWord(all[said.to], 'a', 'an', 'the', 'my', 'our', 'his', 'her', 'their', 'this');
}

function fromWhat(all: readonly Token[], at: number): Token | undefined {
  return isWord(all[at], 'the', 'it', 'its') ? all[at + 1] : all[at];
}

/** What a doubtful "in" is by the rest of the message: inches true, inward false, null when it may be either. */
export function speaksInches(
  all: readonly Token[],
  said: readonly Measure[],
  spoken: DisplayUnit,
): boolean | null {
  const doubtful = said.filter((each) => mayBeInward(all, each, 'piece.hanging'));
  const rest = said.filter((each) => !doubtful.includes(each));
  if (doubtful.some((each) => each.value.gte(MOST_INCHES_IN))) return false;
  if (rest.some((each) => each.unit === 'in' || each.unit === 'ft' || (each.unit === null && each.tape)))
    return true;
  if (rest.some((each) => each.unit === 'mm' || each.unit === 'cm' || each.unit === 'm')) return false;
  if (rest.some((each) => each.unit === null && each.value.gte(METRIC_FROM))) return false;
  return spoken === 'in' ? true : spoken === 'mm' ? null : false;
}
