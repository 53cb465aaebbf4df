/** Which face of the wall words are about. A room is the far one only where it is set against this one. */
type Side = 'this' | 'far' | 'both' | 'same' | 'room' | 'elsewhere';
export type Marker = { side: Side; at: number; end: number };

export const ROOM =
  '(?:hall(?:way)?|kitchen|bathroom|bath ?room|en ?suite|bedroom|lounge|living ?room|dining ?room|study|office|landing|laundry|utility(?: room)?|garage|stair(?:s|case|well)|corridor|passage(?:way)?|pantry|closet|cupboard|wardrobe|nursery|playroom|loft|porch|garden|conservatory|sitting ?room|front room|back room|spare ?room|box room|kids ?room|family room|store ?room|flat|apartment|unit|shop|neighbou?rs?(?: (?:house|flat|place))?)';

/** "Other side's" has lost its apostrophe here. */
const SIDE = '(?:sides?|faces?|rooms?)';
/** "The other side of the door" is no face of the wall. */
const OF_THE_WALL =
  '(?! of (?!(?:(?:the|a|my|our|that|this) )?(?:wall|it\\b|this\\b|that\\b)))(?: of (?:(?:the|this|that|my|our) )?(?:wall|it|this|that))?';
const FORMS: [Side, RegExp][] = [
  [
    'both',
    new RegExp(
      `\\b(?:(?:on|at|in|from) )?(?:either|both|each|any|neither)(?: of the| of)? ${SIDE}\\b${OF_THE_WALL}|\\bback and front\\b|\\bfront and back\\b|\\bback to back\\b`,
      'g',
    ),
  ],
  [
    'elsewhere',
    /\b(?:on|in|at) (?:the |an? )?(?:opposite|other|adjacent|next|side|end|far|facing) wall\b|\b(?:other|far|opposite) side of the (?:room|house|hall|landing|building)\b|\bbehind (?:it|here)(?! (?:is|has|theres|there|its|are|=|:|-))\b/g,
  ],
  [
    'far',
    new RegExp(
      `\\b(?:(?:on|at|in|from|to|round|over|around) )*(?:the |its |that )?(?:other|far|back|opposite|reverse|rear|hidden|outer|outside|neighbou?rs|next|wrong) ${SIDE}\\b${OF_THE_WALL}|\\b(?:on )?(?:theirs|(?:their|his|her|the neighbou?rs) ${SIDE})\\b|\\b(?:back|rear|far|reverse|behind)(?= :)|\\bnext door(?:s| side)?\\b|\\b(?:on |at |round |around |out )?the (?:back|rear|reverse)(?: of (?:it|the wall|this wall|that wall))?(?= (?:at|is|has|theres|there|its|,|;|\\.|:|-|<)|$)|\\b(?:round|around|out) (?:the )?back\\b|\\bbehind (?:the wall|this wall|that wall|there)\\b|\\bbehind(?: (?:it|here|this))?(?= (?:is|has|theres|there|its|are|=|:|-))|\\bthrough the wall\\b|\\bon the other(?! (?:hand|end|wall|one|sides?|faces?|rooms?))\\b|\\b(?:at|of|about) the other(?= *(?:[,;.]|$))|^\\s*(?:the )?(?:other|far)(?: one)?\\s*$|\\bfar (?=[,;.:]|$)|\\b(?:on |from )?the neighbou?rs\\b|\\b(?:when|if|while|once) (?:im|i am|youre|you are|ure|standing|i stand|you stand|i go|you go|were|we are) (?:standing )?(?:in|into) (?:the )?${ROOM}\\b|\\b(?:as|when|while) (?:i|you|u|we) (?:face|look at|see|stand at|view)(?: (?:it|that|the wall))?(?: from)? (?:over )?there\\b|\\b(?:seen|viewed|looking|measured)(?: at it)? from (?:over )?there\\b`,
      'g',
    ),
  ],
  ['same', /\b(?:on )?(?:the )?same (?:side|face)\b/g],
  [
    'this',
    new RegExp(
      `\\b(?:(?:on|at|in|from|to) )*(?:this|near|my|our|front|the near|the front) ${SIDE}\\b${OF_THE_WALL}|\\bon (?:mine|ours)\\b|\\b(?:front|near|here|mine|ours)(?= :)|^\\s*this(?: one)?\\s*$|\\b(?:over |on |in )?here\\b|\\bin front(?! of)\\b|\\bon this(?: one)?(?= *(?:[,;.:]|$))`,
      'g',
    ),
  ],
  [
    'room',
    new RegExp(
      `\\b(?:(?:on|in|from|at) (?:the |my |our )?${ROOM}(?: (?:sides?|faces?))?|(?:the |my |our )?${ROOM} (?:sides?|faces?)|(?:the )?${ROOM} (?=has|(?:light )?switch|socket|wall light|thermostat|radiator))\\b`,
      'g',
    ),
  ],
];

/** Measured on the far face, but seen from this one: left and right change places. */
export const SEEN_FROM_HERE =
  /\b(?:(?:as )?(?:seen|viewed|looking|measured|measuring|going)(?: at it)?|(?:as|when) (?:i|you|we) (?:face|look at|see)(?: it)?(?: wall)?|still|all) (?:from|on|in) (?:here|this (?:side|face|room)|our side|my side)\b|\bas (?:i|you) (?:face|look at|see) it (?:from )?here\b|\bfrom here\b|\bmy (?:left|right) here\b/g;

/** Every word that names a face, in order; the longer where two overlap. */
export function markersIn(said: string): Marker[] {
  const text = said.replace(SEEN_FROM_HERE, (words) => ' '.repeat(words.length));
  const found: Marker[] = [];
  for (const [side, form] of FORMS)
    for (const match of text.matchAll(form)) {
      const [at, end] = [match.index, match.index + match[0].length];
      if (!found.some((each) => at < each.end && each.at < end)) found.push({ side, at, end });
    }
  return found.sort((one, other) => one.at - other.at);
}

/** "Other side is the hall", "... the kitchen side": with this one said too, a room named is the far side's. */
export function roomsAreFar(text: string): boolean {
  return /\b(?:other|far|back|opposite) side(?: of (?:it|the wall|this wall))? (?:is|its|being|would be|faces|:)(?= |$)|\bthis (?:side|face)\b/.test(
    text,
  );
}
