import type { BaseMaterial } from '../../../core/wall/wall.ts';
import type { Fact, Listening } from '../../reading.ts';
import { soundsReplacing } from '../steering/replacing.ts';
import { type Found, fact, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { coresAnswer, coresIn } from './cores.ts';
import { readMaterial, wallText } from './material.ts';

/** Answers to these name materials that are not the wall's. */
const ABOUT_SOMETHING_ELSE: readonly Listening['awaiting'][] = [
  'wall.finish',
  'wall.cores',
  'place.below',
  'piece.glass',
  'wall.accessories',
  'wall.datum',
  'place.up',
  'wall.boardMm',
  'wall.studs',
  'wall.condition',
  'hazards',
  'wall.coating',
  'wall.asbestos',
];
const MASONRY: readonly (BaseMaterial | undefined)[] = [
  'clay-brick',
  'concrete-block',
  'aerated-concrete',
  'natural-stone',
  'concrete',
];

/** Unasked, "plaster" or "sheet" alone is no reason to ask what the wall is. */
const SAID_OF_A_WALL = /\b(?:walls?|plasterboard|drywall|brick|block|concrete|on plaster)\b/;

/** The wall's material, and the holes in its units where they are said with it. */
export function readWall(outline: Outline, listening: Listening): Found {
  const text = wallText(outline.text);
  const read = materialWanted(outline, listening)
    ? readMaterial(outline, text, outline.guessed)
    : nothing(outline);
  const askable = listening.awaiting === 'wall.baseMaterial' || SAID_OF_A_WALL.test(outline.words);
  const found = askable ? read : { ...read, asks: [] };
  const base = found.facts[0]?.value.wall?.baseMaterial;
  const cores =
    listening.awaiting === 'wall.cores' ? coresAnswer(outline.text) : coresOf(text, base, listening);
  const more: Fact[] = cores === null ? [] : [fact('wall.cores', { wall: { cores } }, outline.said)];
  return { ...found, facts: [...found.facts, ...more] };
}

function materialWanted(outline: Outline, listening: Listening): boolean {
  const { awaiting, known } = listening;
  if (awaiting === 'wall.baseMaterial') return true;
  const replacing = soundsReplacing(outline.words) || /\bwall\b/.test(outline.words);
  if (ABOUT_SOMETHING_ELSE.includes(awaiting))
    return (
      soundsReplacing(outline.words) &&
      /\bwall\b|\bits (?:brick|block|plasterboard|drywall|concrete|stone)\b/.test(outline.words)
    );
  const isKnown = known.wall?.baseMaterial !== undefined && known.wall.baseMaterial !== 'unknown';
  return !isKnown || replacing;
}

function coresOf(text: string, base: BaseMaterial | undefined, { known }: Listening) {
  const of = base ?? (/\b(?:bricks?|blocks?|units?)\b/.test(text) ? known.wall?.baseMaterial : undefined);
  if (!MASONRY.includes(of) || of === 'concrete' || of === 'natural-stone') return null;
  const masonryText = text.replace(/\bsolid (?=timber|wood|plaster|wall)/g, ' ');
  return coresIn(masonryText, of);
}
