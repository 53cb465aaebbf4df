import type { JobSoFar } from '../../../core/job.ts';
import { difference, type Millimetres, mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { type Found, fact, facts, nothing } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

type Studs = Exclude<NonNullable<NonNullable<JobSoFar['wall']>['studs']>, 'unknown'>;

const CENTRES =
  '(?:on centres?|on centre|centres?|oc|o ?/? ?c|crs|ctrs?|c ?/ ?c|apart|spacing|spaced|between (?:the )?studs|centre to centre|to centre)';
const SPACING = [
  new RegExp(`<(\\d+)> ?${CENTRES}\\b`),
  /\b(?:studs?|joists?|uprights?|centres|spacing|spaced)(?: (?:are|is|at|every|spaced|spacing|about|of|each|=|:|,))* <(\d+)>(?! ?(?:from|in from|wide|off|x|thick|away|deep|to))/,
  /\bevery <(\d+)>/,
];
const FIRST = [
  /\bfirst(?: (?:one|stud|is|at|its|it|about|the|centre|in))* <(\d+)>(?: (?:in )?from (?:the )?(?:left|l)(?: (?:end|hand|corner|side|wall))*)?/,
  /\b(?:starts?|starting|beginning)(?: (?:at|from|about))* <(\d+)>(?: (?:in )?from (?:the )?left(?: (?:end|corner))?)?/,
  /\bone(?: (?:is|at))* <(\d+)>(?: in)? from (?:the )?left(?: (?:end|corner))?/,
];
const WIDTH = [/\bstuds?(?: (?:are|is|,|about))* <(\d+)> wide\b/, /<(\d+)> wide studs?\b/];

/** Studs stand no closer and no further apart than this; our choice. "16 on centre" is then inches. */
const isSpacing = (value: Millimetres): boolean => value >= LEAST_SPACING && value <= MOST_SPACING;
const LEAST_SPACING = mm(280);
const MOST_SPACING = mm(1250);

/** A lone figure with one of these is no answer to where the studs are. */
const OF_ANOTHER =
  /\b(?:plaster|render|tiles?|skim|board|plasterboard|thick|wide|high|tall|deep|long|wall|ceiling)\b/;

/** Two studs found by measuring: the spacing is what lies between. */
const TWO_FOUND =
  /\b(?:one|stud|studs|first|them|found)(?: (?:is|at|a|them|one|stud|about|,))* <(\d+)>(?: (?:in|from|the|left|end|corner|and|then|,))* (?:(?:the |then )?(?:next|another|second|other)(?: (?:one|stud|is|at|about))* )?<(\d+)>(?: (?:from|the|left|end|corner))*$/;

/** Where the studs are: spacing, the first from the left end, their width. */
export function readStuds(outline: Outline, listening: Listening): Found {
  const asked = listening.awaiting === 'wall.studs';
  const cue = /\b(?:stud|studs|on centres?|oc|o c|joists?|uprights?)\b/.test(outline.text);
  if (!asked && !cue) return nothing(outline);
  const studs: Studs = {};
  let rest = outline;
  const take = (forms: readonly RegExp[], set: (length: Millimetres) => void, spacing = false) => {
    for (const form of forms) {
      const match = form.exec(rest.text);
      const length = match === null ? null : lengthOf(rest, match[1], 'wall.studs');
      const likely = length?.readings.filter(({ valueMm }) => !spacing || isSpacing(valueMm)) ?? [];
      const [only] = likely;
      if (match === null || only === undefined || likely.length > 1 || length?.negative) continue;
      set(only.valueMm);
      const figure = { index: match.index + match[0].indexOf('<'), 0: /<\d+>.*$/.exec(match[0])?.[0] ?? '' };
      rest = without(rest, figure);
      return;
    }
  };
  const pair = TWO_FOUND.exec(rest.text);
  const [one, next] = [lengthOf(rest, pair?.[1], 'wall.studs'), lengthOf(rest, pair?.[2], 'wall.studs')];
  if (
    pair !== null &&
    one?.readings.length === 1 &&
    next?.readings.length === 1 &&
    next.valueMm > one.valueMm
  ) {
    studs.firstMm = one.valueMm;
    studs.spacingMm = difference(next.valueMm, one.valueMm);
    rest = without(rest, pair);
  }
  take(FIRST, (length) => (studs.firstMm = length));
  take(WIDTH, (length) => (studs.widthMm = length));
  take(SPACING, (length) => (studs.spacingMm = length), true);
  if (asked && studs.spacingMm === undefined && !OF_ANOTHER.test(rest.text))
    take([/^[^<]*<(\d+)>[^<]*$/], (length) => (studs.spacingMm = length), true);
  if (Object.keys(studs).length === 0) return nothing(outline);
  const read = fact('wall.studs', { wall: { studs } }, outline.said);
  const partial =
    asked && studs.firstMm === undefined ? { partial: 'where the first stud is from the left end' } : {};
  return facts(rest, { ...read, ...partial });
}
