import type { Listening } from '../../reading.ts';
import { type Found, nothing, refused } from '../words/found.ts';
import { type Outline, without } from '../words/outline.ts';

/** Walls that are not worked out, with what can be said of each (trade.md 1.16). */
const UNLISTED: [RegExp, string][] = [
  [
    /\b(?:hollow )?clay (?:tile|pot)s?(?: (?:block|partition|wall)s?)?\b|\b(?:structural|hollow|clay) terra ?cotta(?: (?:tile|block)s?)?\b|\bterra ?cotta (?:block|tile|lumber|partition|wall|pot)s?\b|\bpot (?:partition|wall)s?\b|\bhollow (?:pot|tile)s?(?: (?:partition|wall)s?)?\b/,
    'a wall of hollow clay tile is not worked out here: no hammer, a toggle for a light piece only, and a heavy one is for someone who can design the fixing',
  ],
  [
    /\b(?:gypsum|plaster) ?blocks?(?:work)?\b|\bsolid (?:gypsum|plaster) (?:partition|wall|panel)s?\b|\bgypsum (?:partition|panel)s?\b/,
    'a wall of gypsum block is not worked out here: no hammer, a long plug for a light piece only, and a heavy one is for someone who can design a fixing through the wall',
  ],
  [
    /\b(?:metal|steel|wire|expanded(?: metal)?|mesh|rib|chicken wire)(?: mesh)? (?:lath(?:s|ing)?|mesh (?:and|with) plaster)\b|\blath(?:s|ing)? (?:is |are |of |made of |in )*(?:metal|steel|wire|expanded)\b|\b(?:gypsum|rock|plaster ?board) lath(?:s|ing)?\b/,
    'plaster on metal or gypsum lath is not worked out here: no hammer, and only the studs behind it hold',
  ],
  [
    /\bfibrous plaster\b|\bhorse ?hair plaster\b|\bhorse ?hair (?:sheets?|panels?|wall)\b/,
    'fibrous plaster sheet is not worked out here: it is brittle and holds nothing by itself; a picture rail or the studs behind it, as for lath and plaster',
  ],
  [
    /\b(?:cellular|honey ?comb|cardboard|straw|egg ?crate|strawboard|compressed straw)(?: ?-? ?(?:core|cored))? (?:panel|partition|board|wall)s?\b|\bstraw ?board\b/,
    'a panel with a core of paper or straw is not worked out here: only a batten to the studs at its sides holds, and its age asks for a look at asbestos first',
  ],
  [
    /\b(?:insulated|foam ?-? ?backed|thermal|laminated) plaster ?board\b|\binsulated (?:board|drywall|lining)\b|\bfoam ?-? ?backed (?:board|drywall)\b|\bplasterboard (?:with|on) (?:foam|insulation|polystyrene)\b/,
    'board with insulation behind it is not worked out here: it needs a long fixing into the masonry, made for that',
  ],
  [
    /\bsandwich panels?\b|\bsips?(?: panels?| wall)?\b(?! of)|\bstructural insulated panels?\b|\b(?:insulated concrete forms?|icf)\b|\bsteel ?-? ?faced panels?\b|\bcool ?room panels?\b/,
    "a sandwich panel or foam-form wall is not worked out here: it takes only the system's own fixings",
  ],
  [
    /\bcob\b(?! ?webs?)|\bstraw ?-? ?bales?\b|\bmud ?-? ?bricks?\b|\badobe\b|\brammed earth\b|\bearth(?:en)? walls?\b|\bpise\b|\bwattle(?: and daub)?\b|\bhemp ?crete\b|\bclay lump\b|\bclunch\b/,
    'an earth, cob or straw wall is not worked out here: it crumbles, and only timber built into it holds',
  ],
  [
    /\bglass (?:blocks?|bricks?|wall|partition)\b|\bcurtain wall(?:ing)?\b/,
    'a wall of glass is not worked out here, and it is not drilled: another wall, or stand the piece on the floor',
  ],
];

/** A rough word that says another wall was meant by it: "brick, not cob". */
const DENIED = /\b(?:not|isnt|no|never|rather than|instead of|aint) (?:a |an |the |really |just )*$/;

/** What the wall is made of, where that is none of the walls the core knows: refused, with what can be said. */
export function readUnlisted(outline: Outline, { awaiting, known }: Listening): Found {
  const wanted =
    awaiting === 'wall.baseMaterial' ||
    known.wall?.baseMaterial === undefined ||
    /\bwall\b/.test(outline.text);
  for (const [form, because] of UNLISTED) {
    const match = form.exec(outline.text);
    if (match === null || DENIED.test(outline.text.slice(0, match.index))) continue;
    const rest = without(outline, match);
    return wanted
      ? refused(rest, {
          question: 'wall.baseMaterial',
          because,
          example: 'a brick wall beside it, if the piece can go there',
        })
      : nothing(rest);
  }
  return nothing(outline);
}
