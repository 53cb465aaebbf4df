/** Which face of the wall words are about. */
export const FAR =
  /\b(?:other|far|back|opposite|reverse) (?:side|face|room)\b|\bnext (?:room|door)\b|\bbehind (?:it|the wall|this wall)\b|\bnothing behind\b|\bround the back\b|\bon the other\b|\b(?:when|if) im in the \w+|\bas i face it there\b/;
export const NEAR = /\b(?:this|near|my|our) (?:side|face)\b|\bhere\b/;
export const BOTH =
  /\b(?:either|both|each|any)(?: of the)? (?:sides?|faces?|walls?|ends?|rooms?)\b|\bneither (?:side|face)\b/;

const EMPTY = /\b(?:noth\w*|none|clear|empty|blank|bare|no)\b/;
const NAMES_ONE = /<\d+>/;

/**
 * Each clause with the face it is about said in it. "The other side is clear" puts nothing anywhere, and is
 * left out; "the other side is the hall, a switch at ..." is a heading for what follows it.
 */
export function facedClauses(text: string, names: RegExp): string {
  let heading = false;
  return text
    .split(/( [,;.] | but )/)
    .map((clause) => {
      if (/^ (?:[,;.]|but) $/.test(clause)) return clause;
      const named = clause.search(names) >= 0;
      if (NEAR.test(clause)) heading = false;
      const far = FAR.test(clause);
      if (far && !named && !NAMES_ONE.test(clause)) {
        heading = !EMPTY.test(clause);
        return ' ';
      }
      return heading && named && !far ? ` other side ${clause}` : clause;
    })
    .join('');
}
