import { difference, mm } from '../../../core/quantity.ts';
import type { Listening } from '../../reading.ts';
import { asks, type Found } from '../words/found.ts';
import { lengthLabel } from '../words/heard.ts';
import type { Outline } from '../words/outline.ts';
import { shareIn } from './share.ts';
import { whichLine } from './up-value.ts';

/** "A third of the way down": of a wall whose height is known it is a height, of which line is asked; else a figure is. */
export function shareUp(outline: Outline, listening: Listening): Found | null {
  if (listening.awaiting !== 'place.up') return null;
  const told = shareIn(outline.words);
  if (told === null || !/\b(?:up|down|way|halfway|height|wall)\b/.test(outline.words)) return null;
  const height = /\bbetween\b/.test(outline.words) ? undefined : listening.known.wall?.heightMm;
  if (height === undefined) {
    return asks(outline, {
      question: 'place.up',
      text: `${told.text} of a height I don’t know. How high above the floor is the centre of the frame? For example: centre at 1500.`,
      readings: [],
    });
  }
  const part = mm(height * told.share);
  const up = /\bdown\b/.test(told.rest) ? difference(height, part) : part;
  return asks(outline, whichLine(up, lengthLabel(up, outline.unit), outline.said, 'floor'));
}
