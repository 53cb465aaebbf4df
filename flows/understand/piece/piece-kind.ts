import type { PieceKind } from '../../../core/piece/piece.ts';
import type { Listening } from '../../reading.ts';
import { soundsReplacing } from '../steering/replacing.ts';
import { asks, type Found, fact, facts, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';

const KINDS: [PieceKind, RegExp][] = [
  ['mirror', /\b(?:mirrors?|looking glass)\b/],
  ['canvas', /\b(?:canvas(?:es)?)\b/],
  [
    'picture',
    /\b(?:pictures?|paintings?|photos?|photographs?|prints?|posters?|drawings?|portraits?|framed|artworks?|art|watercolours?|watercolors?|lithographs?|certificate|oil painting|landscape|tapestry|sampler|frame)\b/,
  ],
  [
    'panel',
    /\b(?:(?:wooden|timber|carved|acoustic|wall|mdf|metal|glass|decorative|art|relief|sign) panels?|panels?|plaque|sign ?board|headboard panel)\b/,
  ],
];

/** "a mirror not a picture": what is denied is not what it is. */
const DENIED =
  /\b(?:not|isnt|rather than|instead of|never|aint)(?: (?:a|an|the|really|just))* (?:mirror|picture|painting|canvas|panel|photo|print|frame)s?\b/g;
/** Said of the wall or of the hanging, not of the piece. */
const OTHER_USE =
  /\b(?:picture (?:rail|hook|wire|cord|light|window)s?|mirror (?:clip|plate|screw|bracket|tile)s?|(?:frame|timber frame|wood frame|steel frame|metal frame|door frame|window frame) (?:wall|house|is|ends)?|(?:timber|wood|steel|metal|door|window) frame|(?:of|on|to|from|off|below|above|in) the (?:frame|mirror|picture|painting|canvas|panel)|(?:aac|aerated|concrete|precast|tilt up|insulated) panels?|panel lift|panels? wall|frame (?:wall|ends)|kg frame|oak frame|kilo frame)\b/g;

/** In these answers "the frame" and "the picture" only say what is measured. */
const SAY_FRAME: readonly Listening['awaiting'][] = [
  'place.up',
  'place.across',
  'piece.hanging',
  'wall.datum',
  'piece.depthMm',
];

/** What sort of piece it is. */
export function readPieceKind(outline: Outline, listening: Listening): Found {
  const asked = listening.awaiting === 'piece.kind';
  if (SAY_FRAME.includes(listening.awaiting) && !soundsReplacing(outline.words)) return nothing(outline);
  const denied = outline.text.replace(DENIED, ' ');
  const text = asked ? denied : denied.replace(OTHER_USE, ' ');
  const named = KINDS.filter(([, words]) => words.test(text)).map(([kind]) => kind);
  const kinds = named.length > 1 ? settledKinds(named, text) : named;
  const [kind, other] = kinds;
  if (kind === undefined) return nothing(outline);
  const of = (each: PieceKind) => fact('piece.kind', { piece: { kind: each } }, outline.said);
  if (other !== undefined) {
    return asks(outline, {
      question: 'piece.kind',
      text: `Is it a ${kinds.join(' or a ')}?`,
      readings: kinds.map((each) => ({ label: `a ${each}`, fact: of(each) })),
    });
  }
  return facts(outline, of(kind));
}

/** "canvas print", "framed mirror", "picture panel": the more telling word. */
function settledKinds(kinds: PieceKind[], text: string): PieceKind[] {
  if (
    kinds.includes('mirror') &&
    /\b(?:framed|frame|panel|art)\b/.test(text) &&
    !/\b(?:picture|painting|photo)/.test(text)
  )
    return ['mirror'];
  if (kinds.includes('canvas') && !kinds.includes('mirror')) return ['canvas'];
  if (kinds.includes('panel') && kinds.includes('picture') && !/\b(?:picture|painting|photo)/.test(text))
    return ['panel'];
  return kinds;
}
