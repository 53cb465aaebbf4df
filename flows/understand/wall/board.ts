import type { Listening } from '../../reading.ts';
import { type Found, fact, nothing, settled } from '../words/found.ts';
import { lengthOf, type Outline, without } from '../words/outline.ts';

const BOARD =
  'plasterboard|drywall|gypsum board|wallboard|board|sheet|gyp|cement sheet|fibre cement|fibro|cement board';
const FORMS = [
  new RegExp(`<(\\d+)> ?(?:thick |of |single |fire |wet area )*(?:${BOARD})\\b`),
  /\b(?:plasterboard|drywall|gypsum board|wallboard|board|sheet|fibro|fibre cement)(?: (?:is|its|of|about|,|\(|thickness|roughly|say))* <(\d+)>(?: thick)?(?! ?(?:x|wide|high|long|kg|centres|oc|on centre|o c))/,
];

/** How thick the sheet is, and how many: "13 mil plasterboard", "double layer". */
export function readBoard(outline: Outline, listening: Listening): Found {
  const asked = listening.awaiting === 'wall.boardMm';
  const layers =
    /\b(?:double|two|2|twin) ?(?:layers?|skins?|sheets?|sheeted|boards?|boarded|thickness)\b/.test(
      outline.text,
    )
      ? 2
      : undefined;
  const more = layers === undefined ? {} : { boardLayers: layers };
  for (const form of FORMS) {
    const match = form.exec(outline.text);
    const length = match === null ? null : lengthOf(outline, match[1], 'wall.boardMm');
    if (match === null || length === null || (!asked && length.readings.length === 0)) continue;
    // The word stays: it also names the wall.
    const figure = { index: match.index + match[0].indexOf('<'), 0: /<\d+>/.exec(match[0])?.[0] ?? '' };
    return settled(
      without(outline, figure),
      'wall.boardMm',
      length,
      (mm) => ({ wall: { boardMm: mm, ...more } }),
      {
        expected: 'the thickness of a sheet',
        example: '13 mm',
      },
    );
  }
  if (layers !== undefined && /\b(?:plasterboard|drywall|board)/.test(outline.text)) {
    const said = fact('wall.boardMm', { wall: { boardLayers: layers } }, outline.said);
    return { ...nothing(outline), facts: [{ ...said, partial: 'how thick one sheet is' }] };
  }
  return nothing(outline);
}
