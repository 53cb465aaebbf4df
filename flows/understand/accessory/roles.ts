/** What a figure beside a fitting measures; `void` measures something else, or from where nobody can tell. */
export type Role =
  | 'left'
  | 'right'
  | 'up'
  | 'high'
  | 'ceiling'
  | 'along'
  | 'wide'
  | 'tall'
  | 'size'
  | 'start'
  | 'end'
  | 'bottom'
  | 'top'
  | 'middle'
  | 'leftUp'
  | 'rightUp'
  | 'range'
  | 'rise'
  | 'bare'
  | 'void';

const END =
  '(?:(?:the|my|our|its|that|a|wall|walls|very|far|room|rooms|start|end|edge|corner|on|of|extreme|hand)(?: |$))*';
const LEFT = '(?:left|lhs|l)(?![a-z])';
const RIGHT = '(?:right|rhs|r)(?![a-z])';
const TAIL = '(?: (?:hand|side|end|corner|edge|wall|of (?:the|this|that) wall|return))*';
const IN = '(?:(?:in|along|over|across|away|out|back|mm|measured|is|just|about) )*';
const FROM = '(?:from|off|of|frm)';
const FLOOR = '(?:floor|ground|deck|carpet|ffl|floorboards|floor level|bottom|base)(?![a-z])';
const CEILING = '(?:ceiling|cornice|coving|top of the wall|top)(?![a-z])';
const IS =
  '(?:(?:is|are|at|=|:|of|to|about|around|roughly|approx|approximately|say|by|,|its|maybe|like|just|-|~|the|it) )*';
const N = '<(\\d+)>';
/** "From the left 600, from the floor 300": labels before figures. */
const THEN = '(?:(?:,|and|mm|then) )*';
const FLOOR_FIRST = `(?:up )?(?:from|off|above) ${END}(?:finished )?${FLOOR}`;
/** A figure after a label is another's when it has a label of its own: "on the left, 600 wide". */
const LATER =
  '(?! (?:wide|tall|high|long|deep|height|in width|above|off|from|along|across|over|x <|to <|- <|up(?! (?:(?:at|by|is|about) )*<))(?= |$|\\d))';
/** What makes a figure the up of something that is not the floor. */
const OTHER =
  '(?:from|off|of|above|over|below|under|beneath|past|inside|beyond|before|left of|right of|clear of|away from|in from|to the left|to the right|short of|back from|out from|lower|higher)';

/** In the order in which they are tried at each place; n is the first group, m the second. */
export const ROLE_FORMS: readonly [Role, RegExp][] = (
  [
    [
      'void',
      `${N} (?:volts?|v|amps?|watts?|kw|ways?|pins?|gangs?|mm dia|diameter|dia|bore|thick|deep|projecting|proud|out(?! (?:of|from))|years?|degrees)(?= |$)`,
    ],
    [
      'void',
      `${N} ${IN}(?:from|off|of|to) (?:the )?(?:left|right)(?: (?:hand|side|edge|end|corner))* of (?!(?:(?:the|this|that|my|a) )?wall)[a-z]+`,
    ],
    ['left', `${N} ${IN}${FROM} ${END}${LEFT}${TAIL}`],
    ['right', `${N} ${IN}${FROM} ${END}${RIGHT}${TAIL}`],
    [
      'left',
      `${N} ${IN}(?:from|off) (?:the |my )?(?:wall|corner|end|edge|side|return) (?:on|to) (?:the|my|our) left${TAIL}`,
    ],
    [
      'right',
      `${N} ${IN}(?:from|off) (?:the |my )?(?:wall|corner|end|edge|side|return) (?:on|to) (?:the|my|our) right${TAIL}`,
    ],
    ['leftUp', `(?:from|off) ${END}${LEFT}${TAIL} ${IS}${N} ${THEN}${FLOOR_FIRST} ${IS}${N}${LATER}`],
    ['rightUp', `(?:from|off) ${END}${RIGHT}${TAIL} ${IS}${N} ${THEN}${FLOOR_FIRST} ${IS}${N}${LATER}`],
    ['void', `${N} (?:up|high) ${N}(?! (?:left|right|l|r)(?= |$))${LATER}`],
    [
      'rise',
      `(?:from |between )?${N} (?:to|-|and) ${N} (?:up|high|(?:off|above|from) (?:the )?floor)(?= |$)`,
    ],
    [
      'range',
      `(?:from |between |starts? at |begins? at )?${N} (?:to|-|through|thru|until|till|up to) ${N}(?! (?:wide|tall))`,
    ],
    ['range', `between ${N} and ${N}`],
    [
      'range',
      `(?:starts?|begins?|starting|beginning|left (?:edge|side|jamb)) ${IS}${N} (?:and |, |then |to |its |it )*(?:ends?|finishes|stops|ending|right (?:edge|side|jamb)) ${IS}${N}`,
    ],
    [
      'rise',
      `(?:sill|cill|bottom|bottom edge) ${IS}${N} (?:and |, |then |to |its |it |the )*(?:head|lintel|top|top edge) ${IS}${N}`,
    ],
    ['size', `${N} x ${N}`],
    [
      'up',
      `${N} (?:(?:up|high|height|is|about|measured) )*(?:from|off|above|over|of|frm) (?:of )?${END}(?:finished )?${FLOOR}(?: level)?`,
    ],
    ['up', `${N} (?:affl?|ffl)(?![a-z])`],
    ['ceiling', `${N} (?:(?:down|is) )*(?:from|below|off|under|beneath) (?:the )?${CEILING}`],
    [
      'void',
      `${N} (?:(?:up|down|high|in|along|across|over|out|just) )*${OTHER} (?!(?:(?:the|my|our|its|that|a|far|very) )*(?:left|right|l|r|lhs|rhs)(?: |$))[a-z]+`,
    ],
    [
      'void',
      `${N} (?:(?:up|down|in) )*(?:below|under|beneath|lower|higher|down|to the left|to the right|above)(?= |$)`,
    ],
    ['wide', `${N} (?:mm )?(?:wide|in width|width|long|in length|across it)(?= |$)`],
    ['tall', `${N} (?:tall|in height)(?= |$)`],
    ['high', `${N} (?:high|height)(?= |$)`],
    ['up', `${N} (?:up off|up)(?= |$)`],
    ['along', `${N} (?:along|across|over|horizontal(?:ly)?|sideways|in)(?= |$)`],
    ['left', `${N} to (?:the )?left (?:hand )?(?:end|wall|corner)`],
    ['right', `${N} to (?:the )?right (?:hand )?(?:end|wall|corner)`],
    ['along', `${N} ${LEFT}(?! (?:of|hand))`],
    ['right', `${N} ${RIGHT}(?! (?:of|next|by|under|above|at|beside|where|behind|there|on|in|up|down))`],
    ['bottom', `(?:sill|cill|bottom(?: edge| of it)?|underside) ${IS}${N}${LATER}`],
    ['top', `(?:head|lintel|top(?: edge| of it)?) ${IS}${N}${LATER}`],
    [
      'start',
      `(?:starts?|begins?|starting|beginning|left (?:edge|jamb|reveal)) ${IS}${N}(?: ${IN}from (?:the )?left${TAIL}|${LATER})`,
    ],
    [
      'end',
      `(?:ends|ending|finishes|stops|end at|right (?:edge|jamb|reveal)) ${IS}${N}(?: ${IN}from (?:the )?left${TAIL}|${LATER})`,
    ],
    ['wide', `(?:width|w|wide)(?: (?:is|=|:|of|about))* ${N}${LATER}`],
    [
      'up',
      `(?:up|height|y|high|h|at a height of|vertical(?:ly)?|(?:from|off|above|up from) ${END}(?:finished )?${FLOOR}|floor to (?:the )?(?:centre|middle|center|it|plate)) ${IS}${N}${LATER}`,
    ],
    ['left', `(?:in )?(?:from |off |of |on |at )?${END}${LEFT}${TAIL} ${IS}${N}${LATER}`],
    ['right', `(?:in )?(?:from |off |of |on |at )${END}${RIGHT}${TAIL} ${IS}${N}${LATER}`],
    ['right', `${RIGHT}(?: (?:hand|side|end|=|:))+ ${N}${LATER}`],
    ['along', `(?:x|across|along|horizontal(?:ly)?|over|in)(?: (?:=|:|is|at|by))* ${N}${LATER}`],
    [
      'middle',
      `(?:centre|middle|centred|mid ?point|central)(?: (?:of|on)(?: (?:it|the [a-z]+))?)? ${IS}${N}${LATER}`,
    ],
    ['bare', N],
  ] as [Role, string][]
).map(([role, form]) => [role, new RegExp(`(?:${form})`, 'y')]);
