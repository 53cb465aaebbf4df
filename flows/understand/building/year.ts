/** A year of building; `inferred` when the words gave a span and its oldest year was taken. */
export type YearSaid = { year: number; inferred: boolean };

const DECADES: Record<string, number> = {
  twenties: 1920,
  thirties: 1930,
  forties: 1940,
  fifties: 1950,
  sixties: 1960,
  seventies: 1970,
  eighties: 1980,
  nineties: 1990,
  noughties: 2000,
};
/** Reigns by which British and Australian houses are dated; the first year is the older, so the careful one. */
const REIGNS: Record<string, number> = {
  georgian: 1714,
  regency: 1811,
  victorian: 1837,
  federation: 1890,
  edwardian: 1901,
  'inter war': 1918,
  interwar: 1918,
  'between the wars': 1918,
  'post war': 1945,
  postwar: 1945,
  'pre war': 1900,
  prewar: 1900,
  'turn of the century': 1895,
  'art deco': 1920,
};

const EARLIEST = 1000;
const LATEST = 2100;

/** Unasked, a figure is a year only beside words of building. */
const SAID_OF_BUILDING =
  /\b(?:built|circa|dating|dates|year)(?: \w+){0,3} (?:1[0-9]|20)\d\d\b|\b(?:1[0-9]|20)\d\d (?:\w+ )?(?:house|home|flat|build|building|terrace|bungalow|cottage|apartment|place)\b|\b(?:house|home|flat|building|place) (?:is |was )?(?:from|of) (?:about |around )?(?:1[0-9]|20)\d\d\b/;

/** The message without a year that was said of the building, so that it is no length. */
export function withoutYear(text: string): string {
  return text.replace(SAID_OF_BUILDING, (words) => words.replace(/\b(?:1[0-9]|20)\d\d\b/, ','));
}

/** Reads a year or a span of years: "2010", "about 1960", "seventies", "1890s house", "late 80s". */
export function yearIn(text: string, asked: boolean): YearSaid | null {
  const range = /\b(1[5-9]\d\d|20\d\d)\s*(?:-|to|or|and|\/|through)\s*(1[5-9]\d\d|20\d\d)\b/.exec(text);
  if (range !== null) return { year: Math.min(Number(range[1]), Number(range[2])), inferred: true };
  const decade = /\b(1[5-9]\d|20\d)0\s*'?s\b/.exec(text);
  if (decade !== null) return { year: Number(`${decade[1]}0`), inferred: true };
  const full =
    /(?<![\d.,x])\b(1[0-9]\d\d|20\d\d)\b(?!\s*(?:mm|cm|m\b|x|by|kg|high|wide|up|off|from|above|,\d|\.\d))/.exec(
      text,
    );
  if (full !== null && (asked || SAID_OF_BUILDING.test(text))) {
    const year = Number(full[1]);
    const vague =
      /\b(?:about|around|circa|roughly|approx|ish|maybe|probably|before|early|pre|c\.?|or so|bout|i think|i reckon)\b|ish\b|~/.test(
        text,
      );
    if (year >= EARLIEST && year <= LATEST) return { year, inferred: vague };
  }
  const short = /(?:\b|')([2-9])0\s*'?s\b/.exec(text);
  if (short !== null) return { year: 1900 + Number(short[1]) * 10, inferred: true };
  for (const [word, year] of Object.entries(DECADES))
    if (new RegExp(`\\b${word}\\b`).test(text)) return { year, inferred: true };
  for (const [word, year] of Object.entries(REIGNS)) {
    if (new RegExp(`\\b${word}\\b`).test(text.replaceAll('-', ' '))) return { year, inferred: true };
  }
  return asked ? inSpans(text) : null;
}

const CENTURY = /\b(1[5-9]|2[01])(?:th|st)\s*(?:century|c\b)/;

function inSpans(text: string): YearSaid | null {
  const century = CENTURY.exec(text);
  if (century !== null) return { year: (Number(century[1]) - 1) * 100, inferred: true };
  const short = /^\W*(?:about |around |circa |in |'|early |late |mid )*'?([4-9]\d)\W*$/.exec(text);
  return short === null ? null : { year: 1900 + Number(short[1]), inferred: true };
}
