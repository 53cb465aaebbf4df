import { ANY_DATUM } from './datum.ts';

/** How a height is said, of which line of the piece and from what. "<0>" is a figure. */
const OF =
  '(?: (?:edge|side|line|of|it|its|the|frame|mirror|picture|painting|piece|canvas|panel|glass|thing|one))*';
const REF = `(bottom|base|underside|lower edge|centre|middle|cl|centreline|top|upper edge)${OF}`;
const JOIN =
  '(?: (?:at|is|to|be|goes|go|sits|sit|=|:|,|about|around|roughly|should|set|will|wants|needs|up|on|exactly|say|just|hung|hangs))*';
const ABOVE =
  '(?:above|over|off|up from|up off|on top of|from|higher than|clear of|up above|off of|clear off|up)';
const BELOW = '(?:down from|below|under|down off|beneath|off|from|down|short of)';
const THE = '(?: (?:the|a|an|my|our|her|his|finished|top|of|back|that|edge|level|stair|edges|old))*';

const DATUM = `(${ANY_DATUM})`;
export const ANCHORED = new RegExp(
  `(?:\\b${REF}${JOIN} )?(?<!x )<(\\d+)>(?: up| down)? (${ABOVE})${THE} ${DATUM}\\b`,
);
export const FROM_CEILING = new RegExp(
  `(?:\\b${REF}${JOIN} )?<(\\d+)>(?: down)? ${BELOW}${THE} (ceiling|cornice|coving|soffit)\\b`,
);
export const FROM_CEILING_LATER =
  /\b(?:down|drop(?:ped)?|hang(?:s|ing)?) (?:it )?<(\d+)>(?: down)? (?:from|off|below)(?: the)? (ceiling|cornice|coving|soffit)\b/;
export const DATUM_FIRST = new RegExp(
  `\\b(?:above|over|from|off)${THE} ${DATUM}(?: (?:by|at|about|,|its|is))* <(\\d+)>(?! ?x)`,
);
export const TO_LINE =
  /<(\d+)> (?:up |high )?(?:to|at|for|is|on) (?:the |its )?(bottom|centre|middle|cl|centreline|top)\b(?! of (?:the )?(?:mantel|sofa|couch|door|window|wall))/;
export const LONE = new RegExp(
  `\\b${REF}${JOIN} <(\\d+)>(?: (?:high|up|from|above|off|the|floor|finished|ffl|mm))*(?! ?(?:from|in|off|x|below|under|beneath|down)\\b)`,
);

export const ABOVE_THAT = new RegExp(
  `(?:\\b${REF}${JOIN} )?<(\\d+)>(?: up)? (?:above|over|off|up from) (?:that|it|there|this)\\b`,
);
