export const DECADES: Record<string, number> = {
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
export const DECADE = new RegExp(
  `\\b(?:(early|mid|middle|late)[ -]+(?:in )?(?:the )?)?(${Object.keys(DECADES).join('|')})\\b`,
);
/** Where in a decade its parts begin: the oldest year of what was said is the careful one. */
export const PART_OF_DECADE: Readonly<Record<string, number>> = { early: 0, mid: 4, middle: 4, late: 5 };
/** Reigns by which British and Australian houses are dated; the first year is the older, so the careful one. */
export const REIGNS: Record<string, number> = {
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
  'art deco': 1920,
};
/** An "Edwardian mirror" dates the mirror. */
export const REIGN = new RegExp(
  `\\b(${Object.keys(REIGNS).join('|')})\\b(?! (?:style |era |gilt |gilded |framed |antique |oak |mahogany |wall |over ?mantel )*(?:mirror|frame|picture|painting|portrait|print|panel|canvas|piece))`,
);
/** A year of building; `inferred` when the words gave a span and its oldest year was taken. */
export type YearSaid = { year: number; inferred: boolean };

const CENTURY = /\b(1[5-9]|2[01])(?:th|st)\s*(?:century|c\b)/;

/** A century, or two figures alone in answer; the oldest year, confirmed. */
export function inSpans(text: string): YearSaid | null {
  const century = CENTURY.exec(text);
  if (century !== null) return { year: (Number(century[1]) - 1) * 100, inferred: true };
  const short =
    /^\W*(?:(?:about|around|circa|in|early|late|mid|middle|it|its|was|built|dates?|from|i think|maybe|year|house) )*'?([3-9]\d)(?: ?-?ish|(?: or so| i think| maybe))?\W*$/.exec(
      text,
    );
  return short === null ? null : { year: 1900 + Number(short[1]), inferred: true };
}
