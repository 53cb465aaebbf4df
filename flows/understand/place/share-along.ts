import { difference, mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { asks, type Found, fact } from '../words/found.ts';
import { lengthLabel } from '../words/heard.ts';
import type { Outline } from '../words/outline.ts';
import { acrossInWords } from './across-words.ts';
import { shareIn } from './share.ts';

const HALF = 1 / 2;

/**
 * "A third along": a part of the wall is no figure until the width is known, and then it is still asked whether the
 * edge or the centre lies there. Half of the wall is its centre, which others read.
 */
export function shareAlong(outline: Outline, listening: Listening): Found | null {
  const { words, said } = outline;
  if (listening.awaiting !== 'place.across') return null;
  const between = betweenThings(outline);
  if (between !== null) return between;
  const told = shareIn(words);
  if (told === null) return null;
  if (told.share === HALF) return acrossInWords(outline, listening);
  const right = /\bfrom (?:the )?right\b|\bright (?:hand )?(?:end|side|corner)\b/.test(words);
  const edge = right ? 'right' : 'left';
  const width = listening.known.wall?.widthMm;
  if (width === undefined) {
    return asks(outline, {
      question: 'place.across',
      text: `${told.text} of a wall whose width I don’t know yet. How far is the ${edge} edge of the piece from the ${edge} end, or its centre? For example: centre 900 from the ${edge}.`,
      readings: [],
    });
  }
  const far = mm(width * told.share);
  const label = lengthLabel(far, outline.unit);
  const centre = right ? difference(width, far) : far;
  return asks(outline, {
    question: 'place.across',
    text: `${told.text} of the wall is ${label} from the ${edge} end: is that the ${edge} edge of the piece, or its centre?`,
    readings: [
      {
        label: `${edge} edge at ${label} from the ${edge}`,
        fact: fact('place.across', { place: { across: { by: `${edge}-edge`, mm: far } } }, said, true),
      },
      {
        label: `centre at ${label} from the ${edge}`,
        fact: fact('place.across', { place: { across: { by: 'centre-at', mm: centre } } }, said, true),
      },
    ],
  });
}

/** "Half way between the window and the corner": where they are has not been said. */
function betweenThings(outline: Outline): Found | null {
  if (!/\bbetween\b/.test(outline.words) || /<\d+>.*<\d+>/.test(outline.text)) return null;
  if (/\bbetween (?:the )?(?:two )?(?:walls|ends|corners|sides|edges)\b/.test(outline.words)) return null;
  return asks(outline, {
    question: 'place.across',
    text: 'I measure from the ends of the wall. How far from its left end does that space begin, and how far does it end? For example: between 400 and 1600.',
    readings: [],
  });
}
