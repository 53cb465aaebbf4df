import { saysNotKnown } from '../steering/dont-know.ts';
import { type Marker, markersIn, ROOM } from './face.ts';
import { NAMES } from './words.ts';

/** What a message says of a whole face: nothing on it, or not looked at. Such words put nothing anywhere. */
export type Faces = {
  /** The message with a comma in place of those words. */
  text: string;
  empty: ReadonlySet<'this' | 'far'>;
  unseen: boolean;
  /** The far side was named, and not what is on it: "other side is the bedroom". */
  passedOver: boolean;
};

const AROUND = `(?:on|at|in|to|the|a|of|is|its|it|are|wall|side|there|theres|be|at all|all|else|more|really|whatsoever|obvious|visible|much|that i can see|has|have|got|looks|totally|completely|also|and|which|just|so|but|thats|with|been|came up|outside|outdoors|open air|street|yard|${ROOM}|:|-|,|=)`;
const VOID =
  '(?:nothing(?! (?:but|except|apart|other than|bar|besides|like|to do|wrong))|none|not a thing|not anything|nada|nil|zero|zilch|clear|empty|blank|bare|free|n a|n / a|nope|- *$|no(?= *(?:[,;.]|$)))';
const VOID_FIRST = new RegExp(`\\b${VOID}((?: (?!: |- |= |, and )${AROUND})*)$`);
const VOID_AFTER = new RegExp(
  `^(?: ${AROUND})* ${VOID}(?: (?:there|on it|at all|else|visible|whatsoever|on that|that side))*(?= *(?:[,;.)]|- |-$|$)| (?:and|but|only|just)| *$)`,
);
const NO_ACCESS =
  /^(?: (?:,|;|\.|-|:|and|but|is|its|there|i|we|have|got|it)){0,4} (?:no access|no way in|cant (?:get|see|look|check|reach)|couldnt (?:get|see|look|check)|havent|not (?:looked|checked|seen|been)|unknown|locked|inaccessible)/;
const BREAK = / (?:[,;.]|-|but|and|though|although|because) /g;

const STRUCK = '\uFFFF';
/** Struck, and a heading of what follows: "other side is the hall, a switch at ...". */
const HEADINGS: Partial<Record<Marker['side'], string>> = { far: '\uFFFE', this: '\uFFFD' };
const IS_A_ROOM =
  /^ (?:is|are|its|was|faces|backs|leads|goes|would be|will be|looks|belongs|onto|=|being|must be|should be)\b/;
const UNLOOKED = /\b(?:cant|couldnt|cannot|not able|unable|no access|never|havent|wont)\b/;

/** "Havent looked behind", "no idea what's behind it": the far face, though no side is named. */
const UNLOOKED_BEHIND =
  /\b(?:and |but )?(?:i |we |ive |weve )?(?:havent|hasnt|have not|not|never|didnt|couldnt|cant|cannot|wont|dont know|do not know|dont no|dunno|no idea|no clue|idk|unsure|unknown|who knows)\b(?: (?!\d|<)[^ ,;.]+){0,6}? (?:behind|round the back|at the back|other room|next door)(?: (?:it|that|this|the wall|this wall|there|yet))*/;

/** Strikes out every statement that a face is empty, or has not been looked at. */
export function facesTold(said: string): Faces {
  let text = said;
  const empty = new Set<'this' | 'far'>();
  let unseen = false;
  let passedOver = false;
  const strike = (from: number, to: number, mark = STRUCK): void => {
    text = `${text.slice(0, from)}${mark.repeat(to - from)}${text.slice(to)}`;
  };
  const note = ({ side }: Marker): void => {
    if (side === 'both') empty.add('this').add('far');
    else if (side === 'this') empty.add('this');
    else empty.add('far');
  };
  const markers = markersIn(said).filter(({ side }) => side !== 'elsewhere' && side !== 'same');
  for (const [at, marker] of markers.entries()) {
    const from = markers[at - 1]?.end ?? 0;
    const to = markers[at + 1]?.at ?? said.length;
    const [before, after] = [text.slice(from, marker.at), text.slice(marker.end, to)];
    const clause = clauseAround(said, marker);
    const clauseText = said.slice(clause.from, clause.to);
    const unlooked = saysNotKnown(clauseText) || UNLOOKED.test(clauseText) || NO_ACCESS.test(after);
    const placesNothing = !names(clauseText) && !/<\d+>/.test(clauseText);
    if (marker.side !== 'this' && unlooked && placesNothing) {
      unseen ||= marker.side === 'far' || marker.side === 'room' || marker.side === 'both';
      strike(clause.from, clause.to);
      continue;
    }
    const first = VOID_FIRST.exec(before.trimEnd());
    const next = VOID_AFTER.exec(after);
    // "This side nothing other side": of the first, unless a fitting or a comma stands between.
    const leadsOn =
      next !== null && markers[at + 1] !== undefined && /^ *$/.test(after.slice(next[0].length));
    const isOwn =
      next !== null && !(leadsOn && (/ (?:[,;.]|-|but|and) /.test(next[0]) || told(said, marker)));
    if (next !== null && isOwn && (first === null || / [,;.] *$/.test(before) || at === 0)) {
      note(marker);
      strike(marker.at, marker.end + next[0].length);
    } else if (first !== null) {
      note(marker);
      strike(from + first.index, marker.end);
    } else if (placesNothing && IS_A_ROOM.test(said.slice(marker.end, clause.to))) {
      const leads = names(said.slice(clause.to));
      passedOver ||= marker.side === 'far' && !leads;
      strike(clause.from, clause.to, leads ? (HEADINGS[marker.side] ?? STRUCK) : STRUCK);
    }
  }
  const unlooked = UNLOOKED_BEHIND.exec(text);
  if (unlooked !== null) {
    unseen = true;
    strike(unlooked.index, unlooked.index + unlooked[0].length);
  }
  const behind =
    /\b(?:and |but |with )?(?:nothing|none|clear|no) behind(?: (?:it|the wall|this wall|that|here))?(?= *(?:[,;.]|$)| (?:and|that))|\bbehind(?: it)?(?: is|s)? (?:clear|empty|bare|blank|nothing)\b/.exec(
      text,
    );
  if (behind !== null) {
    empty.add('far');
    strike(behind.index, behind.index + behind[0].length);
  }
  const left = text
    .replace(/\uFFFE+/g, ' , other side : ')
    .replace(/\uFFFD+/g, ' , this side : ')
    .replace(/\uFFFF+/g, ' , ')
    .replace(/\s+/g, ' ')
    .trim();
  return { text: left, empty, unseen, passedOver };
}

/** The clause of a marker speaks of a fitting before it. */
function told(text: string, marker: Marker): boolean {
  const before = text.slice(clauseAround(text, marker).from, marker.at);
  return /<\d+>/.test(before) || names(before);
}

function clauseAround(text: string, { at, end }: Marker): { from: number; to: number } {
  let from = 0;
  let to = text.length;
  for (const each of text.matchAll(BREAK)) {
    if (each.index + each[0].length <= at + 1) from = each.index + each[0].length - 1;
    else if (each.index >= end - 1) {
      to = each.index;
      break;
    }
  }
  return { from, to };
}

const names = (text: string): boolean => text.search(NAMES) >= 0;
