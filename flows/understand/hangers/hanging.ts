import type { HangingSoFar } from '../../../core/piece/piece.ts';
import type { AskBack, Fact, Listening } from '../../reading.ts';
import { lengthsIn } from '../lengths/length.ts';
import { massesIn } from '../piece/mass.ts';
import { corrected } from '../words/correction.ts';
import { asked as askedBack, fact, type Heard, lengthLabel, outside, refused } from '../words/heard.ts';
import { isNumber, saidBetween, type Token } from '../words/token.ts';
import type { LengthUnit } from '../words/unit.ts';
import {
  ACROSS,
  isAboutTheWall,
  isAfterwards,
  isOffThePiece,
  isPlaced,
  isSaidOfPiece,
  LESS,
} from './hanging-context.ts';
import { as, doubtful } from './hanging-doubt.ts';
import { figuresOf, QUESTION } from './hanging-figures.ts';
import { fromSpan, lowered, merged, missing, otherFigures, shareDown } from './hanging-part.ts';
import { coordinates, pointsOf } from './hanging-points.ts';
import { type Placed, placed } from './hanging-roles.ts';
import { type HangerWords, hangerWords } from './hanging-words.ts';

/** More than the most hangers on one piece are told with; our choice. */
const MOST_FIGURES = 24;

/**
 * Reads how the piece hangs: rings, keyholes, cord, batten or clips, and where they are. Points keep what was
 * said (right-hand ones from the right, the middle from the centre). What is only half said is a partial fact.
 */
export function readHanging(said: readonly Token[], listening: Listening): Heard {
  const all = corrected(said);
  const known = listening.known.piece?.hanging;
  const words = hangerWords(all, known?.by);
  const open =
    listening.awaiting === QUESTION ||
    isAfterwards(listening) ||
    (words.by === null && tellsInAndDown(all, listening));
  if (!open && (words.by === null || isAboutTheWall(all, listening))) return null;
  const by = words.by ?? (open ? known?.by : undefined) ?? null;
  const found = figuresOf(all, listening, by, open);
  const asked = listening.awaiting === QUESTION;
  const figures = asked || isPlaced(found) ? found : found.filter((each) => !ACROSS.has(each.role));
  const pairs = coordinates(all);
  const rest = outside(all, pairs === null ? figures : [...figures, pairs]);
  if (figures.some((each) => each.negative))
    return refused(QUESTION, 'a measure from an edge is more than nothing', rest);
  if (figures.length > MOST_FIGURES)
    return askedBack(QUESTION, 'Too many figures there. Left one first: how far in, how far down?', [], rest);
  const vague = figures.length > 0 && all.some((each, at) => isNumber(all[at - 1]) && LESS.test(each.text));
  if (vague) return askedBack(QUESTION, 'How far in and how far down is each one, left and right?', [], rest);
  const big = figures.find((each) => isOffThePiece(each, listening));
  if (big !== undefined)
    return askedBack(QUESTION, `${big.text} would be off the piece. How far in, and how far down?`, [], rest);
  const absurd = figures.find((each) => each.readings.length === 0);
  if (absurd !== undefined) return refused(QUESTION, `${absurd.text} is no measure on a frame`, rest);
  const told = figures.length > 0 || pairs !== null || shareDown(all, listening) !== null;
  if (words.by === null && !told) return asked ? nothingFor(all, listening, rest) : null;
  if (!asked && !told && !isSaidOfPiece(all, words, listening)) return null;
  // A sawtooth sits so near the top edge that a small figure is millimetres.
  const doubt = words.sawtooth ? [] : doubtful(figures, listening, pairs !== null);
  if (doubt.length > 1) return askUnit(all, figures, doubt, { words, by, listening, rest });
  const scaled =
    doubt.length === 1 && doubt[0] !== undefined
      ? figures.map((each) => as(each, doubt[0] ?? 'mm'))
      : figures;
  return laidOut(all, scaled, { words, by, listening, rest }, doubt.length === 1);
}

/** "95 in and 240 down" is about hangers, unless a place along the wall or a fitting is asked for. */
function tellsInAndDown(all: readonly Token[], listening: Listening): boolean {
  if (listening.awaiting?.startsWith('place.') || listening.awaiting === 'wall.accessories') return false;
  const figures = placed(all, lengthsIn(all, { unit: listening.unit, question: QUESTION }), null);
  return figures.some((each) => each.role === 'in') && figures.some((each) => each.role === 'down');
}

type About = { words: HangerWords; by: HangerWords['by']; listening: Listening; rest: Token[] };

function askUnit(
  all: readonly Token[],
  figures: readonly Placed[],
  units: readonly LengthUnit[],
  about: About,
): Heard {
  const readings = units.flatMap((unit): AskBack['readings'] => {
    const scaled = figures.map((each) => as(each, unit));
    const heard = laidOut(all, scaled, about, true);
    const label = scaled.map((each) => lengthLabel(each.valueMm, unit)).join(' and ');
    const [only] = heard?.kind === 'facts' ? heard.facts : [];
    return only === undefined ? [{ label }] : [{ label, fact: only }];
  });
  const text = figures.map((each) => each.text).join(' and ');
  return askedBack(QUESTION, `${text}: in which unit?`, readings, about.rest);
}

function laidOut(all: readonly Token[], figures: readonly Placed[], about: About, worked: boolean): Heard {
  const { words, by, listening, rest } = about;
  const share = shareDown(all, listening);
  const single = by === 'cord' ? false : words.count === 1;
  const middle = by === 'cord' ? false : words.middle && !figures.some((each) => each.role === 'in');
  const many = words.count !== null && words.count > 2;
  const pairs = coordinates(all);
  const known = listening.known.piece?.hanging;
  const spread = many ? figures : fromSpan(figures, listening.known.piece?.widthMm);
  const laid =
    pairs !== null
      ? { points: pairs.points, inferred: false }
      : by === 'batten'
        ? null
        : pointsOf(spread, {
            single,
            middle,
            many,
            same: words.same,
            downMm: typeof share === 'number' ? share : null,
          });
  if (laid !== null && 'ask' in laid) return askedBack(QUESTION, laid.ask, [], rest);
  const way = by ?? 'rings';
  const points = laid?.points ?? lowered(known, figures);
  if (words.by === null && known?.by === undefined && points === undefined) {
    return askedBack(QUESTION, 'How far in from each side, and how far down from the top?', [], rest);
  }
  const now: HangingSoFar = {
    ...(words.by === null && known?.by !== undefined ? {} : { by: way }),
    ...(words.sawtooth ? { hanger: 'sawtooth' as const } : {}),
    ...(known?.hanger === 'sawtooth' && words.by === 'rings' && !words.sawtooth
      ? { hanger: 'ring' as const }
      : {}),
    ...(points === undefined ? {} : { points }),
    ...otherFigures(figures, way, words.hooks),
  };
  const hanging = merged(known, now);
  const inferred =
    worked ||
    words.by === null ||
    laid?.inferred === true ||
    share !== null ||
    spread.some((each) => each.inferred);
  const made = fact(QUESTION, { piece: { hanging } }, saidBetween(all, 0, all.length), inferred);
  const still = missing(hanging);
  const facts: Fact[] = [still === null ? made : { ...made, partial: still }];
  return { kind: 'facts', facts, rest };
}

function nothingFor(all: readonly Token[], listening: Listening, rest: Token[]): Heard {
  const lengths = lengthsIn(all, { unit: listening.unit, question: QUESTION });
  if (lengths.some((each) => each.negative))
    return refused(QUESTION, 'a measure from an edge is more than nothing', rest);
  if (lengths.length > 0)
    return askedBack(QUESTION, 'How far in from each side, and how far down from the top?', [], rest);
  const mass = massesIn(all).some((each) => each.unit !== null);
  return mass ? refused(QUESTION, 'that is a mass, and where the hangers are is wanted', rest) : null;
}
