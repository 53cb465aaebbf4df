import type { JobSoFar, Up } from '../../core/job.ts';
import { type Millimetres, mm } from '../../core/quantity.ts';
import type { AskBack, Listening } from '../reading.ts';
import { ANY_DATUM, datumOf } from './datum.ts';
import { asks, type Found, fact, nothing, settled } from './found.ts';
import type { Found as LengthFound } from './length.ts';
import { lengthOf, type Outline, without } from './outline.ts';

const OF =
  '(?: (?:edge|side|line|of|it|its|the|frame|mirror|picture|painting|piece|canvas|panel|glass|thing|one))*';
const REF = `(bottom|base|underside|lower edge|centre|middle|cl|centreline|top|upper edge)${OF}`;
const JOIN =
  '(?: (?:at|is|to|be|goes|go|sits|sit|=|:|,|about|around|roughly|should|set|will|wants|needs|up|exactly|say|just|hung|hangs))*';
const ABOVE =
  '(?:above|over|off|up from|up off|on top of|from|higher than|clear of|up above|off of|clear off|up)';
const BELOW = '(?:down from|below|under|down off|beneath|off|from|down|short of)';
const THE = '(?: (?:the|a|an|my|our|her|his|finished|top|of|back|that|edge|level|stair|edges|old))*';

const DATUM = `(${ANY_DATUM})`;
const ANCHORED = new RegExp(
  `(?:\\b${REF}${JOIN} )?<(\\d+)>(?: high)?(?: up| down)? (${ABOVE})${THE} ${DATUM}\\b`,
);
const FROM_CEILING = new RegExp(
  `(?:\\b${REF}${JOIN} )?<(\\d+)>(?: down)? ${BELOW}${THE} (ceiling|cornice|coving)\\b`,
);
const FROM_CEILING_LATER =
  /\b(?:down|drop(?:ped)?|hang(?:s|ing)?) (?:it )?<(\d+)>(?: down)? (?:from|off|below)(?: the)? (ceiling|cornice|coving)\b/;
const DATUM_FIRST = new RegExp(
  `\\b(?:above|over|from|off)${THE} ${DATUM}(?: (?:by|at|about|,|its|is))* <(\\d+)>(?! ?x)`,
);
const LONE = new RegExp(
  `\\b${REF}${JOIN} <(\\d+)>(?: (?:high|up|from|above|off|the|floor|finished|ffl|mm))*(?! ?(?:from|in|off|x)\\b)`,
);

const EXPECTED = { expected: 'a height on a wall', example: 'bottom 150 above the mantel' };

function byOf(ref: string | undefined, fallback: Up['by']): Up['by'] {
  if (ref === undefined) return fallback;
  if (/^(?:bottom|base|underside|lower)/.test(ref)) return 'bottom-above';
  return /^(?:top|upper)/.test(ref) ? 'top-at' : 'centre-at';
}

function valueOf(by: Up['by'], length: Millimetres, datum: string | null): JobSoFar {
  const kind = datum === null ? null : datumOf(datum);
  const floor = kind === 'floor' ? { kind, aboveFloorMm: mm(0) } : null;
  return {
    place: { up: { by, mm: length } },
    ...(kind === null ? {} : { wall: { datum: floor ?? { kind } } }),
  };
}

/** The centre or the top of a piece is nowhere else above a floor; our choice. */
const FROM_FLOOR = { least: mm(300), most: mm(4000) };

/** "middle at 1.45 from the floor" can only be metres. */
function narrowed(length: LengthFound, by: Up['by'], floor: boolean): LengthFound {
  if (!floor || by === 'bottom-above' || length.readings.length < 2) return length;
  const readings = length.readings.filter(
    ({ valueMm }) => valueMm >= FROM_FLOOR.least && valueMm <= FROM_FLOOR.most,
  );
  return readings.length === 0 ? length : { ...length, readings, inferred: true };
}

/** How high it goes: which line of the piece, how far, from what. */
export function readUp(outline: Outline, listening: Listening): Found {
  return fromCeiling(outline) ?? anchored(outline) ?? lone(outline, listening) ?? inWords(outline, listening);
}

function fromCeiling(outline: Outline): Found | null {
  const match = FROM_CEILING.exec(outline.text);
  const later = match === null ? FROM_CEILING_LATER.exec(outline.text) : null;
  const hit = match ?? later;
  const length = hit === null ? null : lengthOf(outline, match ? match[2] : later?.[1], 'place.up');
  if (hit === null || length === null) return null;
  const ref = byOf(match?.[1], 'top-at');
  const rest = without(outline, hit);
  if (ref === 'top-at') {
    // The ceiling is the datum only when nothing else is: a floor height may be known too.
    return settled(rest, 'place.up', length, (far) => valueOf('below-ceiling', far, 'ceiling'), EXPECTED);
  }
  return asks(rest, {
    question: 'place.up',
    text: `Measured down from the ceiling I need the top of the frame. How far below the ceiling is the top?`,
    readings: [],
  });
}

function anchored(outline: Outline): Found | null {
  const match = ANCHORED.exec(outline.text);
  if (match !== null) {
    const [, ref, n, , datum = ''] = match;
    const length = lengthOf(outline, n, 'place.up');
    const kind = datumOf(datum);
    if (length === null || kind === null || kind === 'ceiling') return null;
    const rest = without(outline, match);
    if (ref === undefined && kind === 'floor' && length.readings.length === 1) {
      return asks(rest, whichLine(length.valueMm, length.text, outline.said, datum));
    }
    const by = byOf(ref, 'bottom-above');
    return settled(
      rest,
      'place.up',
      narrowed(length, by, kind === 'floor'),
      (far) => valueOf(by, far, datum),
      EXPECTED,
    );
  }
  const turned = DATUM_FIRST.exec(outline.text);
  const length = turned === null ? null : lengthOf(outline, turned[2], 'place.up');
  const datum = turned?.[1] ?? '';
  if (turned === null || length === null || ['floor', 'ceiling', null].includes(datumOf(datum))) return null;
  if (length.readings.length !== 1 || length.valueMm > NEAR_FURNITURE) return null;
  return settled(without(outline, turned), 'place.up', length, (far) => valueOf('bottom-above', far, datum), {
    ...EXPECTED,
    inferred: true,
  });
}

/** More than this above furniture is a width rather than a gap; our choice. */
const NEAR_FURNITURE = mm(600);
/** A bare height at least this large can only be from the floor; our choice. */
const FLOOR_FROM = mm(800);

function lone(outline: Outline, listening: Listening): Found | null {
  const match = LONE.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[2], 'place.up');
  if (match === null || length === null) return null;
  const asked = listening.awaiting === 'place.up';
  const across = /\b(?:from|off) (?:the )?(?:left|right)\b|\bx =/.test(outline.text);
  if (!asked && (across || /\b(?:ring|rings|hook|hooks|cord|keyholes|down|slots?)\b/.test(outline.text)))
    return null;
  if (!asked && match[1] === 'top' && !/\bat\b/.test(match[0])) return null;
  const floorSaid = /\b(?:floor|ffl)\b/.test(match[0]);
  const free = listening.known.wall?.datum === undefined;
  const by = byOf(match[1], 'centre-at');
  return settled(
    without(outline, match),
    'place.up',
    narrowed(length, by, floorSaid || free),
    (far) => valueOf(by, far, floorSaid || (free && far >= FLOOR_FROM) ? 'floor' : null),
    EXPECTED,
  );
}

function whichLine(length: Millimetres, text: string, said: string, datum: string | null): AskBack {
  const reading = (label: string, by: Up['by']) => ({
    label: `${label} ${text}`,
    fact: fact('place.up', valueOf(by, length, datum), said),
  });
  return {
    question: 'place.up',
    text: `${text}: is that the bottom of the frame, its centre, or its top?`,
    readings: [
      reading('bottom at', 'bottom-above'),
      reading('centre at', 'centre-at'),
      reading('top at', 'top-at'),
    ],
  };
}

/** Middle at eye level by gallery practice: 57 in, and 1500 mm where millimetres are spoken. */
const EYE_LEVEL = { metric: mm(1500), inches: mm(1447.8) };

function inWords(outline: Outline, listening: Listening): Found {
  const said = outline.said;
  if (/\beye (?:level|height|line)\b|\bhead height\b|\bgallery (?:height|style)\b/.test(outline.text)) {
    const inches = outline.unit === 'in';
    const height = inches ? EYE_LEVEL.inches : EYE_LEVEL.metric;
    const label = `centre at ${inches ? '57 in' : '1500 mm'} above the floor`;
    return asks(outline, {
      question: 'place.up',
      text: `Eye level differs: galleries put the centre at about ${inches ? '57 to 60 in' : '1450 to 1550 mm'}. Shall I take the ${label}, or another height?`,
      readings: [{ label, fact: fact('place.up', valueOf('centre-at', height, 'floor'), said) }],
    });
  }
  if (listening.awaiting !== 'place.up') return nothing(outline);
  const match = /^[^<]*<(\d+)>[^<]*$/.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[1], 'place.up');
  if (match === null || length === null) return nothing(outline);
  const [first] = length.readings;
  if (length.negative || first === undefined || length.readings.length > 1) {
    return settled(
      without(outline, match),
      'place.up',
      length,
      (far) => valueOf('centre-at', far, null),
      EXPECTED,
    );
  }
  const floor = first.valueMm >= FLOOR_FROM && listening.known.wall?.datum === undefined;
  return asks(without(outline, match), whichLine(first.valueMm, length.text, said, floor ? 'floor' : null));
}
