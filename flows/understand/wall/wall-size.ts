import type { JobSoFar } from '../../../core/job.ts';
import type { Millimetres } from '../../../core/quantity.ts';
import type { QuestionName } from '../../question.ts';
import type { Listening } from '../../reading.ts';
import { type Found, nothing, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';
import { aloneOfWall } from './alone-of-wall.ts';

type Form = { question: QuestionName; words: RegExp; value: (mm: Millimetres) => JobSoFar; expected: string };

const width = (widthMm: Millimetres): JobSoFar => ({ wall: { widthMm } });
const height = (heightMm: Millimetres): JobSoFar => ({ wall: { heightMm } });
const thickness = (thicknessMm: Millimetres): JobSoFar => ({ wall: { thicknessMm } });

const NOT_WIDTH =
  '(?! ?(?:thick|high|tall|deep|from|above|off|below|down|up|in|x|centres|oc|on centre|plaster|render|board|of plaster|to the ceiling))';
const IS =
  '(?: (?:is|has|have|was|now|be|its|about|around|approx|roughly|only|measures?|at|=|:|l|w|width|length|of|comes|to|actually|should|read|,|the|total|overall|exactly|say|just|bout))*';
const SPACE = '(?:walls?|alcove|recess|chimney breast|space|gap)';

/** "the wall is 2960", "a 2.9 m wall", "wall 3.6 m across", "ceiling is 2420 high", "2 foot thick". */
const FORMS: Form[] = [
  {
    question: 'wall.heightMm',
    words:
      /\b(?:ceilings?|floor to ceiling|ceiling height|wall height|room height|height of the (?:wall|room|ceiling))(?: (?:is|are|at|its|about|around|roughly|height|of|=|:|,|a))* <(\d+)>(?: (?:high|tall|up|off the floor|from the floor))?/,
    value: height,
    expected: 'the height of a wall',
  },
  {
    question: 'wall.heightMm',
    words: /<(\d+)>(?: (?:high|tall|foot|ft))? ceilings?\b/,
    value: height,
    expected: 'the height of a wall',
  },
  {
    question: 'wall.heightMm',
    words: /\b(?:wall|walls|room)(?: (?:is|are|its|about|,))* <(\d+)> (?:high|tall)\b/,
    value: height,
    expected: 'the height of a wall',
  },
  {
    question: 'wall.heightMm',
    words: /<(\d+)> (?:high|tall) (?:wall|room)\b/,
    value: height,
    expected: 'the height of a wall',
  },
  {
    question: 'wall.thicknessMm',
    words:
      /\b(?:wall|walls|stone|rubble|brick|bricks|block|concrete|brickwork|masonry)(?: (?:is|are|its|about|around|roughly|,|wall))* <(\d+)> thick\b/,
    value: thickness,
    expected: 'the thickness of a wall',
  },
  {
    question: 'wall.thicknessMm',
    words:
      /\bwall(?: (?:is|are|its|,|and|x|by|<\d+>|wide|long|across|high|tall|deep|about|around))* <(\d+)> thick\b(?! (?:plaster|render|tile|board|skim))/,
    value: thickness,
    expected: 'the thickness of a wall',
  },
  {
    question: 'wall.thicknessMm',
    words: /(?<!\b(?:x|by) )<(\d+)> thick (?:wall|stone|brick|block|concrete|masonry|rubble)\b/,
    value: thickness,
    expected: 'the thickness of a wall',
  },
  {
    question: 'wall.thicknessMm',
    words: /(?<!\b(?:x|by) )<(\d+)> (?:solid |double )?(?:brick|block|stone|concrete) wall\b/,
    value: thickness,
    expected: 'the thickness of a wall',
  },
  {
    question: 'wall.widthMm',
    words: new RegExp(
      `\\b${SPACE}${IS} <(\\d+)>(?: (?:wide|long|across|in width|in length|end to end|overall))+`,
    ),
    value: width,
    expected: 'the width of a wall',
  },
  {
    question: 'wall.widthMm',
    words: new RegExp(
      `\\b${SPACE} (?:is|was|now|=|:|has|have|measures|l|should|width|length)${IS} <(\\d+)>${NOT_WIDTH}`,
    ),
    value: width,
    expected: 'the width of a wall',
  },
  {
    question: 'wall.widthMm',
    words: new RegExp(
      `(?<!\\b(?:x|by) )<(\\d+)>(?: (?:wide|long|across))? (?:\\w+ )?${SPACE}\\b(?! ?(?:<|mount))`,
    ),
    value: width,
    expected: 'the width of a wall',
  },
  {
    question: 'wall.widthMm',
    words: new RegExp(`\\b(?:width|length) of (?:the )?${SPACE}${IS} <(\\d+)>`),
    value: width,
    expected: 'the width of a wall',
  },
  {
    question: 'wall.widthMm',
    words: new RegExp(`\\b${SPACE}(?: \\w+){0,3} (?:is )?<(\\d+)> (?:wide|long|across)\\b`),
    value: width,
    expected: 'the width of a wall',
  },
  {
    question: 'wall.widthMm',
    words: new RegExp(`\\b${SPACE} <(\\d+)>${NOT_WIDTH}`),
    value: width,
    expected: 'the width of a wall',
  },
];

const EXAMPLES: Partial<Record<QuestionName, string>> = {
  'wall.widthMm': '2700, or 2.7 m',
  'wall.heightMm': '2400',
  'wall.thicknessMm': '110',
};

/** What is said of the wall's own width, height and thickness. */
export function readWallSize(outline: Outline, listening: Listening): Found {
  let found = aloneOfWall(outline, listening) ?? nothing(outline);
  for (const { question, words, value, expected } of FORMS) {
    if ([...found.facts, ...found.asks].some((each) => each.question === question)) continue;
    const match = words.exec(found.rest.text);
    const length = match === null ? null : lengthOf(found.rest, match[1], question);
    if (match === null || length === null || (length.readings.length === 0 && !length.negative)) continue;
    const one = settled(without(found.rest, figureOf(match)), question, length, value, {
      expected,
      example: EXAMPLES[question] ?? '2400',
    });
    found = {
      facts: [...found.facts, ...one.facts],
      asks: [...found.asks, ...one.asks],
      refused: [...found.refused, ...one.refused],
      rest: one.rest,
    };
  }
  return found;
}

/** The words of the wall stay for the readers after: "brick wall" names a material. */
function figureOf(match: RegExpExecArray): { index: number; 0: string } {
  const figure = new RegExp(`<${match[1]}>(?: (?:wide|long|across|high|tall|thick))*`).exec(match[0]);
  return { index: match.index + (figure?.index ?? 0), 0: figure?.[0] ?? match[0] };
}
