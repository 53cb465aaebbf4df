import { type Found, nothing, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

const FORMS = [
  /<(\d+)> deep\b(?! (?:plug|hole|reveal|recess|void|cavity))/,
  /\bdepth(?: (?:is|of|about|=|:|,|the|frame|piece))* <(\d+)>/,
  /\b(?:sticks|stands|comes|projects|juts)(?: (?:out|off|about|by|from the wall|the wall))* <(\d+)>/,
  /\b(?:frame|picture|mirror|canvas|panel|painting|it)(?:s| is| its|,)? <(\d+)> thick\b/,
  /<(\d+)> thick (?:frame|picture|mirror|canvas|panel|painting)\b/,
];

/** How far the piece stands out from the wall. */
export function readDepth(outline: Outline): Found {
  if (/\b(?:hole|plug|drill)\b/.test(outline.text)) return nothing(outline);
  for (const form of FORMS) {
    const match = form.exec(outline.text);
    const length = match === null ? null : lengthOf(outline, match[1], 'piece.depthMm');
    if (match === null || length === null || length.readings.length === 0) continue;
    return settled(without(outline, match), 'piece.depthMm', length, (depthMm) => ({ piece: { depthMm } }), {
      expected: 'the depth of a piece',
      example: '30 mm',
    });
  }
  return nothing(outline);
}
