import type { Listening } from '../../reading.ts';
import { massesIn } from '../piece/mass.ts';
import { correctsMass } from '../piece/mass-again.ts';
import { isPlace, partOfWall } from '../wall/wall-lengths.ts';
import { corrected } from '../words/correction.ts';
import { fact, type Heard, outside, refused } from '../words/heard.ts';
import type { Token } from '../words/token.ts';
import { dimensionOf } from './dimension.ts';
import { type Found, lengthsIn } from './length.ts';
import { decide } from './length-decide.ts';
import type { LengthQuestion } from './length-value.ts';
import { subjectOf } from './subject.ts';

/**
 * Reads the length that answers `question`. When it was not asked for, only a length whose own words say so
 * counts ("wall is 2.7 m", "2.4 m ceiling", "30 deep"). Asked for the wall's width, "3.2m wide 2.4m high"
 * gives two facts.
 */
export function readLengthFor(question: LengthQuestion, said: readonly Token[], listening: Listening): Heard {
  const all = withoutTolerance(corrected(said));
  if (correctsMass(said, all, listening)) return null;
  const lengths = lengthsIn(all, { unit: listening.unit, question });
  if (listening.awaiting !== question) {
    const told = lengths.filter((each) => tells(question, all, each));
    return told.length === 0 ? null : decide(question, all, told, listening);
  }
  if (lengths.length === 0) return massInstead(question, all);
  if (question === 'wall.widthMm') {
    const both = widthAndHeight(all, lengths, listening);
    if (both !== null) return both;
  }
  const named = lengths.filter((each) => tells(question, all, each));
  const others = lengths.filter((each) => !isPlace(all, each) && isFree(question, all, each));
  const some =
    named.length > 0 ? named : others.length > 0 ? others : question === 'wall.datum' ? lengths : [];
  return some.length === 0 ? null : decide(question, all, some, listening);
}

/** True when the words around a length say that it is about the question. */
function tells(question: LengthQuestion, all: readonly Token[], found: Found): boolean {
  const dimension = dimensionOf(all, found);
  const subject = subjectOf(all, found);
  if (question === 'wall.widthMm') return partOfWall(all, found) === 'width';
  if (question === 'wall.heightMm') return partOfWall(all, found) === 'height';
  if (question === 'wall.thicknessMm') return partOfWall(all, found) === 'thickness';
  if (question === 'piece.depthMm') return dimension === 'deep' && (subject === 'piece' || subject === null);
  if (question === 'wall.boardMm') return subject === 'sheet' && (dimension === null || dimension === 'deep');
  if (question === 'wall.datum')
    return (
      subject === 'datum' &&
      /^(off|above|up|high|from)$/.test(all[found.to]?.text ?? '') &&
      isToFloor(all, found)
    );
  return false;
}

function isToFloor(all: readonly Token[], found: Found): boolean {
  if (all[found.to]?.text === 'high') return true;
  return all.slice(found.to, found.to + 4).some((each) => /^(floor|ground|carpet)$/.test(each.text));
}

/** In answer to the question a figure counts unless its own words are about something else. */
function isFree(question: LengthQuestion, all: readonly Token[], found: Found): boolean {
  const dimension = dimensionOf(all, found);
  if (question === 'wall.widthMm') return dimension !== 'high' && dimension !== 'deep';
  if (question === 'wall.heightMm') return dimension !== 'wide' && dimension !== 'deep';
  return dimension !== 'wide' && dimension !== 'high';
}

/** "14 foot, give or take an inch": what follows the tolerance words is no second length. */
function withoutTolerance(all: readonly Token[]): Token[] {
  const at = all.findIndex(
    (each, index) =>
      each.text === '±' ||
      (each.text === 'give' && all[index + 1]?.text === 'or') ||
      (each.text === 'plus' && all[index + 1]?.text === 'or'),
  );
  return at > 0 ? all.slice(0, at) : [...all];
}

function massInstead(question: LengthQuestion, all: readonly Token[]): Heard {
  const mass = massesIn(all).some((each) => each.unit !== null);
  return mass ? refused(question, 'that is a mass, and a length is wanted', [...all]) : null;
}

function widthAndHeight(all: readonly Token[], lengths: readonly Found[], listening: Listening): Heard {
  const heights = lengthsIn(all, { unit: listening.unit, question: 'wall.heightMm' });
  const joined = lengths.findIndex((each) => all[each.to]?.text === 'x');
  const high = lengths.findIndex((each) => dimensionOf(all, each) === 'high');
  const at = joined >= 0 ? joined + 1 : high;
  const [width, height] = [
    joined >= 0 ? lengths[joined] : lengths.find((_, each) => each !== high),
    heights[at],
  ];
  if (at < 0 || height === undefined || width === undefined || isPlace(all, height)) return null;
  if (height.readings.length !== 1 || height.negative) return null;
  const first = decide('wall.widthMm', all, [width], listening);
  if (first?.kind !== 'facts') return first;
  const second = fact(
    'wall.heightMm',
    { wall: { heightMm: height.valueMm } },
    height.text,
    height.inferred || joined >= 0,
  );
  return { kind: 'facts', facts: [...first.facts, second], rest: outside(all, [width, height]) };
}
