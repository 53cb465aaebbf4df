import { mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { asks, type Found, fact, nothing, refused } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';
import { FLOOR_FROM, upValue, whichLine } from './up-value.ts';

/** Middle at eye level by gallery practice: 57 in, and 1500 mm where millimetres are spoken. */
const EYE_LEVEL = { metric: mm(1500), inches: mm(1447.8) };

const EYE_WORDS = /\beye (?:level|height|line)\b|\bhead height\b|\bgallery (?:height|style)\b/;
const UP_TO_YOU =
  /\b(?:up to you|you (?:choose|decide|pick|tell me|say)|whatever|dont (?:mind|care)|(?:usual|standard|normal|average|regular) height|wherever|where (?:its|it is) best)\b/;

/** In line with something whose height has not been said. */
const IN_LINE =
  /\b(?:level|in ?line|lined? up|lining up|flush|same (?:height|level)|aligned?|even|match(?:es|ing)?|same) (?:with|to|as|up with)\b|\b(?:as high as|match(?:ing)? the)\b|\b(?:at|to) (?:the )?(?:door|window|architrave) (?:head|height|top|frame)\b/;

/** "Eye level", "up to you", or a bare figure: a height is offered or asked, never recorded. */
export function upInWords(outline: Outline, listening: Listening): Found {
  const said = outline.said;
  if (EYE_WORDS.test(outline.text) || (listening.awaiting === 'place.up' && UP_TO_YOU.test(outline.text))) {
    const inches = outline.unit === 'in';
    const height = inches ? EYE_LEVEL.inches : EYE_LEVEL.metric;
    const label = `centre at ${inches ? '57 in' : '1500 mm'} above the floor`;
    return asks(outline, {
      question: 'place.up',
      text: `Eye level differs: galleries put the centre at about ${inches ? '57 to 60 in' : '1450 to 1550 mm'}. Shall I take the ${label}, or another height?`,
      readings: [{ label, fact: fact('place.up', upValue('centre-at', height, 'floor'), said) }],
    });
  }
  if (listening.awaiting !== 'place.up') return nothing(outline);
  if (IN_LINE.test(outline.text) && !/<\d+>/.test(outline.text)) {
    return asks(outline, {
      question: 'place.up',
      text: 'How high is that above the floor, and is it the top, the centre or the bottom of the frame that lines up with it? For example: top at 2040.',
      readings: [],
    });
  }
  const match = /^[^<]*<(\d+)>[^<]*$/.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[1], 'place.up');
  if (match === null || length === null) return nothing(outline);
  const [first] = length.readings;
  if (length.negative || first === undefined) {
    return refused(outline, {
      question: 'place.up',
      because: `${length.text} can't be a height on a wall`,
      example: 'bottom 150 above the mantel',
    });
  }
  if (length.readings.length > 1) {
    return asks(outline, {
      question: 'place.up',
      text: `${length.text}: in which unit, and is that the bottom, the centre or the top of the frame?`,
      readings: [],
    });
  }
  const floor = first.valueMm >= FLOOR_FROM && listening.known.wall?.datum === undefined;
  return asks(without(outline, match), whichLine(first.valueMm, length.text, said, floor ? 'floor' : null));
}
