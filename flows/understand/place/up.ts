import type { Up } from '../../../core/job.ts';
import { mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import type { Found as LengthFound } from '../lengths/length.ts';
import { asks, type Found, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';
import { datumOf } from './datum.ts';
import { loneCentre } from './lone-centre.ts';
import { shareUp } from './share-up.ts';
import {
  ABOVE_THAT,
  ANCHORED,
  DATUM_FIRST,
  FROM_CEILING,
  FROM_CEILING_LATER,
  LONE,
  TO_LINE,
} from './up-forms.ts';
import { shifted } from './up-shift.ts';
import { byOf, FLOOR_FROM, upValue, whichLine } from './up-value.ts';
import { upInWords } from './up-words.ts';

const EXPECTED = { expected: 'a height on a wall', example: 'bottom 150 above the mantel' };

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
  const centred = loneCentre(outline, listening);
  const found = centred === null ? null : heightIn(centred.rest, listening, true);
  if (centred === null || found === null || found.facts.length + found.asks.length === 0)
    return heightIn(outline, listening, false);
  return { ...found, facts: [centred.fact, ...found.facts] };
}

function heightIn(outline: Outline, listening: Listening, centred: boolean): Found {
  return (
    shifted(outline, listening) ??
    shareUp(outline, listening) ??
    fromCeiling(outline) ??
    anchored(outline) ??
    aboveThat(outline, listening) ??
    lone(outline, listening, centred) ??
    upInWords(outline, listening)
  );
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
    return settled(rest, 'place.up', length, (far) => upValue('below-ceiling', far, 'ceiling'), EXPECTED);
  }
  return asks(rest, {
    question: 'place.up',
    text: `Measured down from the ceiling I need the top of the frame. How far below the ceiling is the top?`,
    readings: [],
  });
}

const NAMES_DATUM =
  /\b(?:mantel|sofa|couch|sideboard|bench|table|desk|console|cabinet|dresser|headboard|vanity|shelf|fireplace|furniture|settee)\b/;

/** "the mantel is 1100 high, want it 140 above that". */
function aboveThat(outline: Outline, listening: Listening): Found | null {
  const match = ABOVE_THAT.exec(outline.text);
  const length = match === null ? null : lengthOf(outline, match[2], 'place.up');
  if (match === null || length === null) return null;
  const known = listening.known.wall?.datum?.kind;
  if (!NAMES_DATUM.test(outline.words) && (known === undefined || known === 'floor' || known === 'ceiling'))
    return null;
  const datum = NAMES_DATUM.exec(outline.words)?.[0] ?? null;
  const by = byOf(match[1], 'bottom-above');
  return settled(without(outline, match), 'place.up', length, (far) => upValue(by, far, datum), EXPECTED);
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
      (far) => upValue(by, far, datum),
      EXPECTED,
    );
  }
  const turned = DATUM_FIRST.exec(outline.text);
  const length = turned === null ? null : lengthOf(outline, turned[2], 'place.up');
  const datum = turned?.[1] ?? '';
  if (turned === null || length === null || ['floor', 'ceiling', null].includes(datumOf(datum))) return null;
  if (length.readings.length !== 1 || length.valueMm > NEAR_FURNITURE) return null;
  return settled(without(outline, turned), 'place.up', length, (far) => upValue('bottom-above', far, datum), {
    ...EXPECTED,
    inferred: true,
  });
}

/** More than this above furniture is a width rather than a gap; our choice. */
const NEAR_FURNITURE = mm(600);

function lone(outline: Outline, listening: Listening, centred: boolean): Found | null {
  const turned = centred || listening.awaiting === 'place.up' ? TO_LINE.exec(outline.text) : null;
  const match = turned ?? LONE.exec(outline.text);
  const [ref, n] = turned === null ? [match?.[1], match?.[2]] : [turned[2], turned[1]];
  const length = match === null ? null : lengthOf(outline, n, 'place.up');
  if (match === null || length === null) return null;
  const asked = listening.awaiting === 'place.up';
  const across = /\b(?:from|off) (?:the )?(?:left|right)\b|\bx =/.test(outline.text);
  if (!asked && (across || /\b(?:ring|rings|hook|hooks|cord|keyholes|down|slots?)\b/.test(outline.text)))
    return null;
  if (!asked && ref === 'top' && !/\bat\b/.test(match[0])) return null;
  const floorSaid = /\b(?:floor|ffl)\b/.test(match[0]);
  const free = listening.known.wall?.datum === undefined;
  const by = byOf(ref, 'centre-at');
  return settled(
    without(outline, match),
    'place.up',
    narrowed(length, by, floorSaid || free),
    (far) => upValue(by, far, floorSaid || (free && far >= FLOOR_FROM) ? 'floor' : null),
    EXPECTED,
  );
}
