import { DECADE, DECADES, inSpans, PART_OF_DECADE, REIGN, REIGNS, type YearSaid } from './year-words.ts';

/** Nobody dates a standing house earlier, or later than the next few years, by four figures; our choice. */
const PLAUSIBLE = { asked: 1200, earliest: 1700, latest: 2049 };

const FOUR = '(?:1[2-9]|20)\\d\\d';
const NO_MEASURE =
  '(?! ?(?:mm|cm|m|x|by|kg|in|inch|inches|ft|high|tall|wide|long|across|up|off|from|above)\\b| ?[x×*"\']|[.,]\\d)';
const YEAR = new RegExp(`(?<![\\d.,x×*/])(?<![x×*] )\\b(${FOUR})(?:\\b|(?=ish\\b))${NO_MEASURE}`, 'g');
/** A figure is a year of building when these words stand about it. */
const SAID_OF_BUILDING = new RegExp(
  `\\b(?:built|build|circa|dating|dates|dated|year|constructed|erected|rewired)(?: [a-z]\\w*){0,3},? ?(${FOUR})\\b|\\b(${FOUR}) (?:[a-z]\\w* )?(?:house|home|flat|build|built|building|terrace|semi|bungalow|cottage|apartment|place|unit|townhouse|construction)\\b|\\b(?:house|home|flat|building|place|apartment|unit|cottage|bungalow|terrace|semi) ?,? ?(?:is |was |its |from |of |about |around |circa |built )*(${FOUR})\\b${NO_MEASURE}|\\b(${FOUR}),? (?:uk|usa?|aus|australia|england|scotland|wales|ireland|nz|new zealand|canada)\\b(?! ?(?:wide|long|high))`,
);
/** Words of a building beside "60s", without which it may be kilos. */
const OF_BUILDING =
  /\b(?:house|home|flat|build|built|building|block|place|terrace|semi|bungalow|cottage|apartment|unit|era|from the|property|townhouse|villa|construction|dates?|early|late|rewired)\b/;

/** Where a year stands in the text, and the year. */
type Stands = { at: number; length: number; year: number; inferred: boolean };

/** The year in the words that speak of building. */
function inPhrase(text: string): Stands | null {
  const phrase = SAID_OF_BUILDING.exec(text);
  const digits = phrase?.slice(1).find((each) => each !== undefined);
  if (phrase === null || digits === undefined) return null;
  const year = Number(digits);
  if (year > PLAUSIBLE.latest) return null;
  return { at: phrase.index + phrase[0].indexOf(digits), length: digits.length, year, inferred: false };
}

/** What may stand beside a year that is told between commas: "2010, in australia", "about 1968". */
const BESIDE =
  /\b(?:in|the|its|it|is|was|about|around|circa|from|of|roughly|approx|year|built|or so|i think|early|late|mid|maybe|and|so|a|an)\b/g;

/** What else tells that a lone figure is a year: the building is being asked about, or a part of the message names it. */
export type Beside = { asked: boolean; open: boolean; names: (part: string) => boolean };

/** "australia, 2010, I own it": a part between commas that is only a year, beside another fact of the building. */
function alone(text: string, { open, names }: Beside): Stands | null {
  if (!/\d{4}/.test(text)) return null;
  let at = 0;
  let beside = open;
  let found: Stands | null = null;
  for (const part of text.split(/(?<=[,;\n]|\. )|(?<=\band )/)) {
    const year = onlyYear(part);
    if (year === null) {
      beside ||= names(part);
      const within = names(part) ? lastYear(part) : null;
      if (within !== null) found ??= { at: at + within.at, length: 4, year: within.year, inferred: true };
    } else found ??= { at: at + year.at, length: 4, year: year.year, inferred: true };
    at += part.length;
  }
  return beside ? found : null;
}

function plausible(digits: string): number | null {
  const year = Number(digits);
  return year >= PLAUSIBLE.earliest && year <= PLAUSIBLE.latest ? year : null;
}

function onlyYear(part: string): { at: number; year: number } | null {
  const digits = /\d+/.exec(part);
  if (digits === null || /[^\s,.;:~]/.test(part.replace(digits[0], ' ').replace(BESIDE, ' '))) return null;
  const year = digits[0].length === 4 ? plausible(digits[0]) : null;
  return year === null ? null : { at: digits.index, year };
}

/** "australia 2010 own it": the one figure of a part that names the building's place or whose it is. */
function lastYear(part: string): { at: number; year: number } | null {
  const figures = [...part.matchAll(/\d+(?:[.,]\d+)?/g)];
  const [only] = figures;
  if (only === undefined || figures.length > 1 || !new RegExp(YEAR).test(part)) return null;
  const year = plausible(only[0]);
  return year === null ? null : { at: only.index, year };
}

/** The message without a year that was said of the building, so that it is no length. */
export function withoutYear(text: string, beside: Beside): string {
  if (!/\d{4}/.test(text)) return text;
  const stands = inPhrase(text) ?? alone(text, beside);
  return stands === null ? text : `${text.slice(0, stands.at)},${text.slice(stands.at + stands.length)}`;
}

const VAGUE =
  /\b(?:about|around|circa|roughly|approx|ish|maybe|probably|before|early|pre|c\.?|or so|bout|i think|i reckon|after|late)\b|ish\b|~/;

/** Reads a year or a span of years: "2010", "about 1960", "seventies", "1890s house", "late 80s". */
export function yearIn(text: string, beside: Beside): YearSaid | null {
  const { asked } = beside;
  const range = /\b(1[5-9]\d\d|20\d\d)\s*(?:-|to|or|and|\/|through)\s*(1[5-9]\d\d|20\d\d)\b/.exec(text);
  if (range !== null && (asked || OF_BUILDING.test(text)))
    return { year: Math.min(Number(range[1]), Number(range[2])), inferred: true };
  const decade = /(?:\b(early|mid|middle|late)[ -]+(?:the )?)?\b(1[5-9]\d|20\d)0\s*'?s\b/.exec(text);
  if (decade !== null)
    return { year: Number(`${decade[2]}0`) + (PART_OF_DECADE[decade[1] ?? ''] ?? 0), inferred: true };
  const full = inPhrase(text) ?? (asked ? firstYear(text) : alone(text, beside));
  if (full !== null) return { year: full.year, inferred: full.inferred || VAGUE.test(text) };
  if (asked || OF_BUILDING.test(text)) {
    const short = /(?:\b(early|mid|middle|late)[ -]+(?:the )?)?(?:\b|')([2-9])0\s*'?s\b/.exec(text);
    if (short !== null)
      return { year: 1900 + Number(short[2]) * 10 + (PART_OF_DECADE[short[1] ?? ''] ?? 0), inferred: true };
    const [, part = '', word] = DECADE.exec(text) ?? [];
    if (word !== undefined)
      return { year: (DECADES[word] ?? 0) + (PART_OF_DECADE[part] ?? 0), inferred: true };
  }
  const two = asked ? null : TWO_FIGURES.exec(text);
  if (two !== null) return { year: 1900 + Number(two[1]), inferred: true };
  const reign = REIGN.exec(text.replaceAll('-', ' '))?.[1];
  if (reign !== undefined) return { year: REIGNS[reign] ?? 0, inferred: true };
  return asked ? inSpans(text) : null;
}

function firstYear(text: string): Stands | null {
  for (const match of text.matchAll(YEAR)) {
    const year = Number(match[1]);
    if (year >= PLAUSIBLE.asked && year <= PLAUSIBLE.latest)
      return { at: match.index, length: 4, year, inferred: false };
  }
  return null;
}

/** "Built 82", "built in '68": two figures are a year of the last century from thirty up; our choice. */
const TWO_FIGURES =
  /\b(?:built|build|dating from|dates from|circa)(?: (?:in|about|around|round))? '?([3-9]\d)(?:ish)?\b(?! ?(?:mm|cm|m|x|by|kg|in|ft|years?|high|wide)\b|[.,]?\d)/;

/** What is known of an age and not of a year: there is no calendar here, and a century turns twice. */
export function ageAsked(text: string): string | null {
  if (/\bturn of (?:the|last) century\b/.test(text))
    return 'Which century’s turn: about 1900, or about 2000?';
  return /\b(?:\d{1,3}|[a-z]+ty|a hundred|hundred|twenty|few|couple of)(?:[ -]\w+)? ?(?:years?|yrs?|yr) old\b|\bcentury old\b/.test(
    text,
  )
    ? 'An age I can’t turn into a year by myself. About which year, or which decade, was it built?'
    : null;
}
