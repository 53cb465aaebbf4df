import type { Span } from '../words/heard.ts';
import type { Token } from '../words/token.ts';

/** What a figure is about, by the nearest noun. */
type Subject = 'piece' | 'wall' | 'ceiling' | 'hanger' | 'sheet' | 'coat' | 'datum' | 'part' | 'place' | null;

const NOUNS: Record<Exclude<Subject, null>, string> = {
  piece:
    'mirror mirrors miror mirrer mirrow picture pictures pictur pic pics painting paintings print prints frame canvas photo poster panel artwork art piece peice portrait landscape glass tapestry',
  wall: 'wall walls wal alcove recess nook chimney breast room span partition',
  ceiling: 'ceiling ceilings celing ceeling cieling',
  hanger:
    'ring rings dring drings strap straps hook hooks hanger hangers keyhole keyholes slot slots eye eyes cord wire rope string chain line clip clips cleat batten lugs lug loop loops fixing fixings',
  sheet: 'plasterboard plasterbord drywall board sheet sheeting wallboard',
  coat: 'plaster render tile tiles skim rendering plastering',
  datum:
    'mantel mantle mantelpiece mantlepiece mantelshelf shelf sideboard sofa couch dresser bench table headboard console fireplace hearth stove bed desk tv television bath basin sink',
  part: 'stud studs nogging noggings joist joists bead rebate moulding molding backing mount border spacing centres centers',
  place:
    'socket sockets switch switches outlet outlets door doors window windows corner skirting pipe pipes radiator thermostat light',
};
const BY_NOUN = new Map(
  Object.entries(NOUNS).flatMap(([subject, words]) =>
    words.split(' ').map((word): [string, Subject] => [word, subject as Subject]),
  ),
);
/** After these what follows is not what the figure describes. */
const STOPS = new Set(
  'on in onto into with from above below off over under against for at and between to around near behind , . ; ( )'.split(
    ' ',
  ),
);
/** How far back and forward a noun may be; our choice. */
const BACK = 12;
const AHEAD = 4;

function subjectOfWord(word: string): Subject {
  return BY_NOUN.get(word) ?? null;
}

/** The noun right behind the figure ("a 2.9 m wide wall"), or null. */
export function subjectAfter(all: readonly Token[], span: Span): Subject {
  for (let at = span.to; at < Math.min(all.length, span.to + AHEAD); at += 1) {
    const token = all[at];
    if (token === undefined || token.kind === 'number' || STOPS.has(token.text)) return null;
    const subject = subjectOfWord(token.text);
    if (subject !== null) return subject;
  }
  return null;
}

/** The nearest noun before the figure, or null. */
export function subjectBefore(all: readonly Token[], span: Span): Subject {
  for (let at = span.from - 1; at >= Math.max(0, span.from - BACK); at -= 1) {
    const subject = subjectOfWord(all[at]?.text ?? '');
    if (subject !== null) return subject;
  }
  return null;
}

export function subjectOf(all: readonly Token[], span: Span): Subject {
  return subjectAfter(all, span) ?? subjectBefore(all, span);
}

/** True when a comma parts the figure from the nearest noun before it. */
export function isPartedFromNoun(all: readonly Token[], span: Span): boolean {
  for (let at = span.from - 1; at >= Math.max(0, span.from - BACK); at -= 1) {
    if (subjectOfWord(all[at]?.text ?? '') !== null) return false;
    if (all[at]?.text === ',') return true;
  }
  return false;
}
