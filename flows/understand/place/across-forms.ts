/** How a place along the wall is said, of which line of the piece and from which end. "<0>" is a figure. */
const OF = '(?: (?:edge|side|line|of|it|its|the|frame|mirror|picture|painting|piece|canvas|panel|hand|one))*';
const REF = `(left|right|centre|middle|cl|centreline)${OF}`;
const JOIN =
  '(?: (?:at|is|to|be|goes|go|sits|=|:|,|about|around|roughly|should|set|offset|x|starts|exactly|comes))*';
const END =
  '(?:in )?(?:from|off|of|to)(?: (?:the|my|our|wall|walls))* (left|right)(?: (?:hand|corner|end|wall|side|edge|of|the))*';
export const FULL = new RegExp(`\\b${REF}${JOIN} <(\\d+)>(?: (?:over|along|across|in|away))* ${END}`);
export const NO_REF = new RegExp(`<(\\d+)>(?: (?:over|along|across|in|away))* ${END}`);
export const TO_EDGE = new RegExp(
  `<(\\d+)>(?: (?:over|along|across|in|away))* ${END} to (?:the |its )*(?:(left|right|centre|middle)|edge|side)\\b(?: (?:edge|side|of|the|frame|it))*`,
);
export const NO_REF_TURNED =
  /\bfrom (?:the )?(left|right)(?: (?:hand|corner|end|wall|side|edge|,|its|is|about))* <(\d+)>/;
export const AT_X = new RegExp(`\\b${REF}${JOIN} x ?=? ?<(\\d+)>`);
export const REF_ONLY = new RegExp(`\\b(left|right) (?:edge|side)${OF}${JOIN} <(\\d+)>`);
export const CENTRE_AT = new RegExp(`\\b(?:centre|middle|cl|centreline)${OF}${JOIN} <(\\d+)>`);
export const BETWEEN = /\bbetween <(\d+)> (?:and|to|-) <(\d+)>|\bfrom <(\d+)> to <(\d+)>/;
export const OTHER_THING =
  /<\d+>(?: \w+){0,2} (?:from|off|of|to|past) (?:the )?(?:door|window|frame|architrave|opening|switch|socket|chimney|fireplace|tv|radiator|stairs|picture|mirror|shelf|cupboard)\b/;
