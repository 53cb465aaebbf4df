import type { Across, JobSoFar } from '../../../core/job.ts';
import { difference, type Millimetres } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { asks, type Found, fact, facts, nothing, refused, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';
import {
  AT_X,
  BETWEEN,
  CENTRE_AT,
  FULL,
  NO_REF,
  NO_REF_TURNED,
  OTHER_THING,
  REF_ONLY,
  TO_EDGE,
} from './across-forms.ts';
import { acrossInWords } from './across-words.ts';
import { heightBeside } from './height-beside.ts';
import { shareAlong } from './share-along.ts';

const EXPECTED = {
  expected: 'a place along the wall',
  example: 'centred, or left edge 450 from the left end',
};

/** Where along the wall it goes, measured from one of its ends. */
export function readAcross(outline: Outline, listening: Listening): Found {
  const height = heightBeside(outline, listening);
  const left = height?.rest ?? outline;
  const found =
    shareAlong(left, listening) ??
    measured(left, listening) ??
    acrossInWords(left, listening) ??
    nothing(left);
  if (height === null) return found;
  return {
    ...found,
    facts: [...height.facts, ...found.facts],
    asks: [...height.asks, ...found.asks],
    refused: [...height.refused, ...found.refused],
  };
}

function measured(outline: Outline, listening: Listening): Found | null {
  const { text } = outline;
  const asked = listening.awaiting === 'place.across';
  if (asked && OTHER_THING.test(text)) {
    return asks(outline, {
      question: 'place.across',
      text: 'I measure from the ends of the wall. How far is the left edge of the piece from the left end of the wall?',
      readings: [],
    });
  }
  const between = asked ? BETWEEN.exec(text) : null;
  if (between !== null) return betweenOf(outline, between);
  const full = FULL.exec(text);
  if (full !== null && !/\b(?:ring|rings|hook|socket|switch|stud)\b/.test(full[0])) {
    return placed(outline, full, full[1], full[2], full[3], listening);
  }
  const atX = AT_X.exec(text);
  if (atX !== null) return placed(outline, atX, atX[1], atX[2], 'left', listening);
  if (!asked) return null;
  const edged = TO_EDGE.exec(text);
  if (edged !== null) return placed(outline, edged, edged[3] ?? edged[2], edged[1], edged[2], listening);
  const starts = /\b(?:starts?|starting|begins?)\b/.test(text) ? NO_REF.exec(text) : null;
  if (starts?.[2] === 'left') return placed(outline, starts, 'left', starts[1], 'left', listening);
  const bare = NO_REF.exec(text);
  const turned = bare === null ? NO_REF_TURNED.exec(text) : null;
  if (bare !== null) return whichEdge(outline, bare, bare[1], bare[2], listening);
  if (turned !== null) return whichEdge(outline, turned, turned[2], turned[1], listening);
  const edge = REF_ONLY.exec(text);
  if (edge !== null) return placed(outline, edge, edge[1], edge[2], edge[1], listening);
  const centre = CENTRE_AT.exec(text);
  if (centre !== null) return placed(outline, centre, 'centre', centre[1], 'left', listening);
  if (/\bcentred\b|\bcentre it\b/.test(text)) return null;
  // How wide something is says nothing of where it goes.
  const only = /\b(?:wide|long)\b/.test(text) ? null : /^[^<]*<(\d+)>[^<]*$/.exec(text);
  return only === null ? null : whichEdge(outline, only, only[1], 'left', listening);
}

function betweenOf(outline: Outline, match: RegExpExecArray): Found | null {
  const from = lengthOf(outline, match[1] ?? match[3], 'place.across');
  const to = lengthOf(outline, match[2] ?? match[4], 'place.across');
  if (from?.readings.length !== 1 || to?.readings.length !== 1 || from.negative || to.negative) return null;
  const across: Across = { by: 'between', fromMm: from.valueMm, toMm: to.valueMm };
  return facts(without(outline, match), fact('place.across', { place: { across } }, outline.said));
}

function placed(
  outline: Outline,
  match: RegExpExecArray,
  ref: string | undefined,
  n: string | undefined,
  end: string | undefined,
  listening: Listening,
): Found | null {
  const length = lengthOf(outline, n, 'place.across');
  if (length === null) return null;
  const rest = without(outline, match);
  const width = listening.known.wall?.widthMm;
  const wrongEnd =
    (ref === 'left' && end === 'right') ||
    (ref !== 'right' && ref !== 'left' && end === 'right') ||
    (ref === 'right' && end === 'left');
  if (wrongEnd && width === undefined) {
    const near = ref === 'right' ? 'right' : 'left';
    return refused(rest, {
      question: 'place.across',
      because: `I need that from the ${near} end, since the wall's width is not known yet`,
      example: `${ref === 'left' || ref === 'right' ? `${ref} edge` : 'centre'} 450 from the ${near} end`,
    });
  }
  return settled(
    rest,
    'place.across',
    length,
    (far) => acrossValue(ref, wrongEnd && width !== undefined ? difference(width, far) : far),
    EXPECTED,
  );
}

function acrossValue(ref: string | undefined, far: Millimetres): JobSoFar {
  const by = ref === 'left' ? 'left-edge' : ref === 'right' ? 'right-edge' : 'centre-at';
  return { place: { across: { by, mm: far } } };
}

function whichEdge(
  outline: Outline,
  match: RegExpExecArray,
  n: string | undefined,
  end: string | undefined,
  listening: Listening,
): Found | null {
  const length = lengthOf(outline, n, 'place.across');
  const rest = without(outline, match);
  if (length === null) return null;
  if (length.readings.length !== 1 || length.negative) {
    return settled(rest, 'place.across', length, (far) => acrossValue('left', far), EXPECTED);
  }
  const width = listening.known.wall?.widthMm;
  const edge = end === 'right' ? 'right' : 'left';
  const centre =
    edge === 'right' ? (width === undefined ? null : difference(width, length.valueMm)) : length.valueMm;
  const said = outline.said;
  return asks(rest, {
    question: 'place.across',
    text: `${length.text} from the ${edge} end: is that the ${edge} edge of the piece, or its centre?`,
    readings: [
      {
        label: `${edge} edge at ${length.text} from the ${edge}`,
        fact: fact('place.across', acrossValue(edge, length.valueMm), said),
      },
      {
        label: `centre at ${length.text} from the ${edge}`,
        ...(centre === null ? {} : { fact: fact('place.across', acrossValue('centre', centre), said) }),
      },
    ],
  });
}
