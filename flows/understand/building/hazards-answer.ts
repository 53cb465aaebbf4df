import { saysNotKnown } from '../steering/dont-know.ts';
import { isNoneOfThese, isPlainNo } from '../steering/yes-no.ts';
import { asks, type Found, fact, facts, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { GATES } from './hazard-gates.ts';
import { merged, NO_HAZARDS, picked } from './hazards.ts';

const LABELS: Record<string, string> = {
  bathroom: 'a bathroom',
  shower: 'a shower or bath surround',
  textured: 'a textured coating',
  poor: 'crumbling, damp or cracked',
  heritage: 'a listed building',
  separating: 'a shared or fire wall',
  lit: 'it needs mains',
};

const ALL_FINE =
  /^\W*(?:its |it is |theyre |everythings? |all |the wall is |wall is |wall )*(?:all )?(?:fine|good|sound|clear|ok|okay|normal)(?: (?:as far as i know|i think|mate|wall|condition|here|there))*\W*$/;

/** The one question for all gates: none of them, those picked out, or asked which. */
export function answersHazards(outline: Outline, yes: boolean): Found {
  const { words, said } = outline;
  const held = picked(words);
  if (held !== null && held.denied.length > 0 && !/\b(?:none|nothing)\b/.test(words)) {
    // "Not a bathroom" leaves the rest of the list open.
    return facts(outline, ...held.denied.map((gate) => fact(gate.question, gate.not, said)));
  }
  if (held !== null && held.denied.length === 0)
    return facts(outline, fact('hazards', held.value, said, !held.only));
  if (yes && !/^\W*(?:all )?(?:fine|good|ok|okay|all good|alright|all right)\W*$/.test(words)) {
    return asks(outline, {
      question: 'hazards',
      text: 'Which of them?',
      readings: GATES.flatMap((gate) => {
        const label = LABELS[gate.name];
        return label === undefined
          ? []
          : [{ label, fact: fact('hazards', merged([NO_HAZARDS, gate.holds]), said) }];
      }),
    });
  }
  if (!yes && saysNotKnown(words)) return nothing(outline);
  const none =
    yes ||
    isNoneOfThese(words) ||
    isPlainNo(words) ||
    ALL_FINE.test(words) ||
    /\bnone of (?:these|those|them|that|the (?:above|others?|rest))\b|\bnothing like that\b|\bno to all\b/.test(
      words,
    );
  return none ? facts(outline, fact('hazards', NO_HAZARDS, said)) : nothing(outline);
}
