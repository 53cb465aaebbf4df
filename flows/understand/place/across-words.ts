import type { Listening } from '../../reading.ts';
import { asks, type Found, fact, facts } from '../words/found.ts';
import { type Outline, without } from '../words/outline.ts';

/** "In the middle" is then said of a hook on the back. */
const HANGERS = /\b(?:rings?|hooks?|cords?|wires?|keyholes?|hangers?|straps?|slots?|clips?|sawtooth)\b/;
const CENTRED =
  /\bcentred\b|\b(?:dead|bang|smack|right|slap)(?: bang| smack| dead)?(?: in| on)?(?: the)? (?:centre|middle|central)\b|\bcentral\b|\bin the (?:very |exact )?(?:middle|centre)\b|\bcentre (?:it|of (?:the )?(?:wall|room)|on (?:the )?wall|please|the (?:piece|mirror|picture|frame|thing))\b|\bmiddle of (?:the )?(?:wall|it all)\b|\bhalf ?way (?:across|along)\b|\b(?:equal|same|even) (?:gaps? |space |distance |amount |both |on |either |each )*(?:both|either|each|sides?|ends?)\b|\bsymmetric(?:al|ally)?\b/;
const CENTRE_ALONE =
  /^\W*(?:in |the |on |at |its |to |go |be |dead |just |put it |put |make it |i want it |should be |please |a |right )*(?:centre|middle|mid|central|centred|halfway|half way)(?: (?:please|thanks|mate|of|the|wall|it|obviously|i think|on|that|will do))*\W*$/;
const OVER_SOMETHING =
  /\b(?:centred?|central|middle|centre)(?: \w+){0,2}? (?:over|above|on|to|with|of|between)(?: (?:the|a|my|our|two|both))* (?:sofa|couch|bed|mantel|fireplace|sideboard|table|desk|headboard|radiator|vanity|basin|doors?|windows?|chimney|tv|cabinet|console|alcove|recess)\b/;

/** The words between the commas around a place in the text. */
function clauseAt(text: string, at: number): string {
  const before =
    text
      .slice(0, at)
      .split(/ [,;.] /)
      .at(-1) ?? '';
  const after = text.slice(at).split(/ [,;.] /)[0] ?? '';
  return before + after;
}

/** "Centred", and what is said like it; centred over something else is asked about. */
export function acrossInWords(outline: Outline, listening: Listening): Found | null {
  const { text, said } = outline;
  const asked = listening.awaiting === 'place.across';
  const centre = (inferred: boolean) =>
    fact('place.across', { place: { across: { by: 'centre' } } }, said, inferred);
  if (OVER_SOMETHING.test(text)) {
    if (!asked) return null;
    return asks(outline, {
      question: 'place.across',
      text: 'Is that also the middle of the wall? If not, how far is its middle from the left end of the wall?',
      readings: [
        { label: 'the middle of the wall', fact: centre(false) },
        { label: 'not the middle of the wall' },
      ],
    });
  }
  const match = CENTRED.exec(text) ?? (asked ? CENTRE_ALONE.exec(text) : null);
  const ofHanger = match !== null && !asked && HANGERS.test(clauseAt(text, match.index));
  if (match !== null && !ofHanger && !/<\d+> (?:from|off) (?:the )?(?:left|right)/.test(text))
    return facts(without(outline, match), centre(false));
  if (asked && /\b(?:50 ?\/ ?50|fifty fifty|half ?way|equidistant)\b/.test(outline.words))
    return facts(outline, centre(false));
  if (asked && /\bhalf of (?:the )?wall\b|\bhalf\b/.test(text)) return facts(outline, centre(true));
  return null;
}
