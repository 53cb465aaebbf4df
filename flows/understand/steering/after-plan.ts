import type { Fact, Listening } from '../../reading.ts';
import { soundsReplacing } from './replacing.ts';

const MARKS = /\b(?:marks?|holes?|measured?|check(?:ed|ing)?|got|reads?|left|right)\b/;
const BY_LETTER = /\b(?:mark |hole )?a\b(?: (?:is|at|=|:|,|reads?|measures?))* <\d+>/;
const CHECKS =
  /\b(?:check (?:my|the|these) (?:marks?|holes?)|marks? (?:are|is|at|measure|read)|i (?:marked|measured|drilled)|(?:read(?:ing)?|measured) (?:them |it )?back|holes? (?:are|at))\b/;
const NEXT =
  /\b(?:(?:next|another|new|second|other|different|one more) (?:\w+ )?(?:one|piece|job|mirror|picture|painting|canvas|panel|print|photo|frame)|next one|same again|and another|on the other wall|also (?:got|have|a|an))\b/;
const NAMES_ONE =
  /\b(?:a|an|this|now|then)(?: (?:\w+ )*?)(?:mirror|picture|painting|canvas|panel|print|photo)\b/;

/** Marks read back for checking: figures that belong to no question. */
export function readsBackMarks(text: string, { hasPlan }: Listening): boolean {
  if (!hasPlan) return false;
  const figures = text.match(/<\d+>/g)?.length ?? 0;
  if (CHECKS.test(text)) return figures > 0 || /\bcheck\b/.test(text);
  if (BY_LETTER.test(text) && figures > 0) return true;
  return figures > 1 && /\b(?:mark|marks|hole|holes)\b/.test(text) && MARKS.test(text);
}

/** After a plan, words that name another piece. */
export function namesAnother(text: string, facts: readonly Fact[], { hasPlan }: Listening): boolean {
  if (!hasPlan) return false;
  if (NEXT.test(text)) return true;
  if (soundsReplacing(text)) return false;
  const kind = facts.some((fact) => fact.question === 'piece.kind');
  const more = facts.some(
    (fact) =>
      fact.question === 'piece.massKg' ||
      fact.question === 'piece.size' ||
      fact.question === 'wall.baseMaterial',
  );
  return kind && (more || NAMES_ONE.test(text));
}
