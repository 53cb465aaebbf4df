import type { BaseMaterial } from '../../../core/wall/wall.ts';

/** What the words name, before they are combined: several may be said of one wall. */
export type MaterialWords = {
  board: boolean;
  dabs: boolean;
  battens: boolean;
  timberStuds: boolean;
  steelStuds: boolean;
  studs: boolean;
  /** Materials that stand on their own. */
  bare: BaseMaterial[];
  plaster: boolean;
};

const BARE: [BaseMaterial, RegExp][] = [
  ['lath-and-plaster', /\blaths?\b|\bwood(?:en)? (?:slats|strips)\b/],
  [
    'fibre-cement-on-studs',
    /\bfibre cement\b|\bfc sheet(?:s|ing)?\b|\bfibro\b|\bcement (?:sheet|board)(?:s|ing)?\b|\basbestos (?:cement )?(?:sheet|board)(?:s|ing)?\b|\bfibre sheet\b/,
  ],
  [
    'aerated-concrete',
    /\baerated\b|\baac\b|\baircrete\b|\bautoclaved\b|\bthermal (?:block|light ?block)(?:s|work)?\b|\baerated panel\b/,
  ],
  [
    'concrete-block',
    /\b(?:concrete|cement|cinder|breeze) bricks?\b|\bconcrete masonry\b|\b(?:(?:concrete|cement|cinder|breeze|dense|hollow|solid|aggregate) )*block(?:s| ?work)?\b|\bcmus?\b/,
  ],
  ['clay-brick', /\bbricks?(?:work)?\b|\bclay (?:units?|blocks?)\b|\bdouble wythe\b|\bface brick\b/],
  [
    'concrete',
    /\bconcrete\b|\btilt ?-? ?up\b|\bpre ?-? ?cast\b|\bpoured (?:wall|in place)\b|\bin ?situ\b|\bcast wall\b|\bconcrete panel\b/,
  ],
  [
    'natural-stone',
    /\b(?:sand|blue|lime|field|brown|iron|flag)stone\b|\bgranite\b|\brubble\b|\bashlar\b|\bflint\b|\bnatural stone\b|\bstone ?work\b|\bstone\b/,
  ],
  [
    'timber',
    /\b(?:timber|wood|wooden|pine|cedar|log|oak|hardwood|softwood|vj|lining|match) ?(?:boards?|boarding|planks?|planking|walls?|panell?ing|lining|cladding|logs?|cabin|v ?j)\b|\btongue and groove\b|\bshiplap\b|\bbead ?board\b|\bmatch ?board(?:ing)?\b|\bpanell?ing\b|\bsolid (?:timber|wood)\b|^\W*(?:its |it is |just |a |is |wall |made |from |of )*(?:timber|wood|wooden)\W*$/,
  ],
];

const BOARD =
  /\bplasterboard(?:s|ed|ing)?\b|\bdrywall(?:s|ed)?\b|\bdry ?-? ?lin(?:ed|ing)\b|\bgypsum (?:board|wallboard)s?\b|\bwallboard\b|\bgyp board\b/;
const DABS =
  /\bdot and dab\b|\bdabs?\b|\bdabbed\b|\bblobs?\b|\bstuck (?:on|to)\b|\bglued?\b|\bstick on\b|\bdirect(?:ly)? bond(?:ed)?\b|\bdry ?-? ?lined (?:onto|on|over|to) (?:block|brick|masonry)\w*\b/;
const BATTENS = /\bbattens?\b|\bbattened\b|\bfurring\b|\bstrapp(?:ed|ing)\b|\bfurred\b|\btop ?-? ?hats?\b/;
const STEEL_STUDS =
  /\b(?:steel|metal|tin|light ?-? ?gauge|galvanised|galv|c) ?-? ?(?:stud|frame|framing|partition)(?:s|d|ed|work|ing)?\b|\b(?:stud|frame|framing)s? (?:are |is |in |of |made of )?(?:steel|metal)\b/;
const TIMBER_STUDS =
  /\b(?:timber|wood|wooden|pine|softwood|<\d+> ?x ?<\d+>|<\d+>) ?(?:wood |timber )?(?:stud|frame|framing|upright)(?:s|d|ed|work|ing|wall)?\b|\b(?:studs?|frames?|framing) (?:are |is |in |of |made of )?(?:timber|wood|wooden)\b|\bstick frame\b|\bon (?:timber|wood)\b/;
const STUDS =
  /\bstud ?-? ?(?:walls?|work|partition)\b|\b(?:on|over|with|to|and|has|got|theres) (?:the )?studs\b|\bstuds (?:every|at|and|behind|under)\b|^\W*(?:its |just |on |some )*studs?\W*$|\bframed? wall\b|\bpartition(?: wall)?\b|\bstuds? .*\b(?:plasterboard|drywall|board)\b|\b(?:plasterboard|drywall|board)\b.*\bstuds?\b/;

/** The same words wherever they stand, made once. */
const EVERY = new Map(BARE.map(([, words]) => [words, new RegExp(words, 'g')]));
const everyOf = (words: RegExp): RegExp => EVERY.get(words) ?? words;

/** Reads the words that name a wall. `text` is an outline: figures are "<0>". */
export function materialWords(text: string): MaterialWords {
  const timberStuds = TIMBER_STUDS.test(text);
  const board = BOARD.test(text);
  const framed = timberStuds || STEEL_STUDS.test(text);
  const bare: BaseMaterial[] = [];
  let left = text;
  for (const [material, words] of BARE) {
    if (material === 'timber' && (framed || board)) continue;
    if (!words.test(left)) continue;
    bare.push(material);
    // "cinder block" is a block and no concrete, "solid concrete block" no concrete either.
    left = left.replace(everyOf(words), ' ').replace(/\b(?:concrete|cement)\s+$/, ' ');
  }
  return {
    board,
    dabs: DABS.test(text),
    battens: BATTENS.test(text),
    timberStuds,
    steelStuds: STEEL_STUDS.test(text),
    studs: STUDS.test(text),
    bare,
    plaster: /\bplaster(?:ed)?\b|\bhard plaster\b|\bwhite set\b|\bset plaster\b|\bskim(?:med)?\b/.test(text),
  };
}
