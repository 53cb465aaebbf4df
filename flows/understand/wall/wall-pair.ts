import type { JobSoFar } from '../../../core/job.ts';
import { type Millimetres, mm } from '../../../core/quantity.ts';
import type { Found as LengthFound } from '../lengths/length.ts';
import { type Found, nothing, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

const width = (widthMm: Millimetres): JobSoFar => ({ wall: { widthMm } });
const height = (heightMm: Millimetres): JobSoFar => ({ wall: { heightMm } });
const OPTIONS = { expected: 'the width of a wall', example: '2700' };

/** No room is lower; a pair of figures under this, with no word for the height, is a piece's. Our choice. */
const LEAST_HEIGHT = mm(1800);

const ACROSS = '<(\\d+)> ?(?:wide|long|across|w)?';
const HIGH = '<(\\d+)> ?(?:high|tall|h)?(?! (?:tiles?|mirror|picture|canvas|panel|frame|print|painting)\\b)';
const PAIR = new RegExp(`${ACROSS}(?: (?:x|by|and|,|with))* ${HIGH}`);

/** In answer to the wall's width: "3.2m wide 2.4m high", "its 4m by 2.4m". */
export function readWallPair(outline: Outline): Found {
  const match = PAIR.exec(outline.text);
  const marked =
    match !== null && /\b(?:x|by|high|tall|h)\b/.test(match[0]) && !/\bthick\b|\bfrom\b/.test(outline.text);
  return match !== null && marked ? pairOf(outline, match) : nothing(outline);
}

const WALL = '(?:walls?|alcove|recess|chimney breast|partition)';
const IS = '(?: (?:is|its|it|was|about|around|roughly|approx|measures?|size|=|:|at|of|just))*';
const AFTER_WALL = new RegExp(
  `\\b${WALL}${IS} (?:${ACROSS} (?:x|by) ${HIGH}|<(\\d+)> (?:wide|long|across)(?: (?:and|,|by|x))* <(\\d+)> (?:high|tall)\\b)`,
);
const BEFORE_WALL = new RegExp(
  `(?:^|\\b(?:a|the|on|onto|my|our) |[,;.] )${ACROSS} (?:x|by) ${HIGH}(?: \\w+)? ${WALL}\\b`,
);

/** In any message: "wall 3.4 x 2.4", "on a 3.4m by 2.4m wall". The wall's word stays for the readers after. */
export function readNamedWallPair(outline: Outline): Found {
  const match = AFTER_WALL.exec(outline.text) ?? BEFORE_WALL.exec(outline.text);
  if (match === null) return nothing(outline);
  const figures = /<\d+>.*<\d+>/.exec(match[0]);
  return figures === null
    ? nothing(outline)
    : pairOf(outline, match, { index: match.index + figures.index, 0: figures[0] });
}

function pairOf(
  outline: Outline,
  match: RegExpExecArray,
  taken: { index: number; 0: string } = match,
): Found {
  const across = lengthOf(outline, match[1] ?? match[3], 'wall.widthMm');
  const up = lengthOf(outline, match[2] ?? match[4], 'wall.heightMm');
  if (across === null || up === null || !isOne(across) || !isOne(up)) return nothing(outline);
  const named = /\b(?:high|tall|h)\b/.test(match[0]);
  if (!named && up.valueMm < LEAST_HEIGHT) return nothing(outline);
  const one = settled(outline, 'wall.widthMm', across, width, OPTIONS);
  const two = settled(without(outline, taken), 'wall.heightMm', up, height, OPTIONS);
  return { ...two, facts: [...one.facts, ...two.facts] };
}

const isOne = (length: LengthFound): boolean => length.readings.length === 1 && !length.negative;
