import type { BaseMaterial } from '../../../core/wall/wall.ts';
import { asks, type Found, fact, facts, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';
import { askWhichMaterial, type Doubt } from './material-doubt.ts';
import { type MaterialWords, materialWords } from './material-words.ts';

/** Said outside the face that is drilled, or taken back in the same breath. */
const NOT_THIS_FACE = [
  /\bbrick veneer (?:on the )?(?:outside|exterior)\b/g,
  /\b(?:brick|block|stone|render|timber|weatherboard|cladding)(?:work)? (?:on the |is )?(?:outside|outer|exterior)\b/g,
  /\b(?:outside|outer|exterior) (?:is |its |leaf |skin )*(?:of )?(?:brick|block|stone|render|timber)(?:work)?\b/g,
  /\b(?:not|isnt|never|rather than|instead of|aint) (?:a |an |the |really |just )*(?:solid |hollow )?(?:brick|block|concrete|stone|plasterboard|drywall|plaster|timber|board|lath)s?(?:work)?\b/g,
];
/** After one of these the words before no longer count, if what follows names a material. */
const REPAIR = /\b(?:nah|no|sorry|actually|wait|i mean|rather|correction|scratch that)\b/g;
const NAMES_MATERIAL =
  /\b(?:brick|block|concrete|stone|plasterboard|drywall|lath|timber|stud|fibro|aerated|cement)\w*/g;

/** The words that are about the face that is drilled, slips of the tongue taken out. */
export function wallText(text: string): string {
  const lastNamed = [...text.matchAll(NAMES_MATERIAL)].at(-1)?.index ?? -1;
  const repair = [...text.matchAll(REPAIR)].findLast((match) => match.index < lastNamed);
  const repaired = repair === undefined ? text : text.slice(repair.index + repair[0].length);
  return NOT_THIS_FACE.reduce((left, form) => left.replace(form, ' '), repaired);
}

/** What the words make of the wall: a material, a doubt, or nothing said of it. */
function materialOf(
  words: MaterialWords,
  text: string,
): { is: BaseMaterial; inferred?: boolean } | Doubt | null {
  const doubt = doubtOf(words, text);
  if (doubt !== null) return doubt;
  const [only, second] = words.bare;
  if (words.board || words.timberStuds || words.steelStuds) {
    if (only === 'lath-and-plaster' || only === 'fibre-cement-on-studs') return { is: only };
    if (words.dabs) return { is: 'plasterboard-on-dabs' };
    if (words.battens && !words.timberStuds && !words.steelStuds) return { doubt: 'battens' };
    if (words.timberStuds && words.steelStuds) return { doubt: 'studs' };
    if (words.timberStuds)
      return { is: 'plasterboard-on-timber-studs', ...(words.board ? {} : { inferred: true }) };
    if (words.steelStuds)
      return { is: 'plasterboard-on-steel-studs', ...(words.board ? {} : { inferred: true }) };
    if (only !== undefined) return { doubt: 'board-over' };
    return words.studs ? { is: 'plasterboard-on-timber-studs', inferred: true } : { doubt: 'board' };
  }
  if (only === undefined) {
    if (words.dabs && /\bdabs?\b|\bdot and dab\b/.test(text)) return { is: 'plasterboard-on-dabs' };
    if (words.studs) return { is: 'plasterboard-on-timber-studs', inferred: true };
    if (words.plaster) return { doubt: 'plaster' };
    return null;
  }
  if (/\bdabs?\b|\bdot and dab\b/.test(text)) return { is: 'plasterboard-on-dabs' };
  if (second !== undefined) return two(words.bare);
  return { is: only, ...(only === 'timber' ? { inferred: true } : {}) };
}

function two(bare: readonly BaseMaterial[]): { is: BaseMaterial } | Doubt {
  if (bare.includes('lath-and-plaster')) return { is: 'lath-and-plaster' };
  if (bare.includes('aerated-concrete') && bare.every((each) => /concrete/.test(each)))
    return { is: 'aerated-concrete' };
  return { doubt: 'several', of: bare };
}

/** Words that leave a block a concrete block. */
const PLAIN_BLOCK = new Set(
  'a an the its it is are was be just some of on in over to and or with but by behind made from mainly mostly plain old new grey gray big heavy standard normal ordinary regular usual painted rendered plastered tiled bare exposed concrete cement cinder breeze dense hollow solid aggregate filled core cored inch thick wide mm wall walls brick bricks double single strong masonry clay house garage outside inside i think maybe probably reckon guess say said like no nah not sorry actually this that thats theres there my our than rather'.split(
    ' ',
  ),
);

/** A word before it that nobody here knows may be what a lighter block is sold as. */
function isStrangeBlock(text: string): boolean {
  return [...text.matchAll(/([a-z]+) block(?:s| ?work)?\b/g)].some(([, word = '']) => !PLAIN_BLOCK.has(word));
}

function doubtOf(words: MaterialWords, text: string): Doubt | null {
  const named = words.board || words.timberStuds || words.steelStuds || words.bare.length > 1;
  if (/\bbrick (?:veneer|clad(?:ding)?|slips?)\b/.test(text) && !named && !words.dabs)
    return { doubt: 'veneer' };
  if (/\bstone (?:veneer|clad(?:ding)?|facing)\b/.test(text)) return { doubt: 'veneer' };
  if (/\b(?:double )?brick (?:house|home|place|building|terrace|bungalow|cottage)\b/.test(text) && !named)
    return { doubt: 'house' };
  if (/\b(?:cement|rendered|render) wall\b/.test(text) && words.bare.length === 0) return { doubt: 'cement' };
  if (/^\W*(?:its |it is |a |the |just |some )*(?:cement|render|rendered|cement render)\W*$/.test(text))
    return { doubt: 'cement' };
  if (
    /^\W*(?:its |it is |a |the |just |some )*(?:light ?weight |light |foam )?blocks?(?: wall)?\W*$/.test(text)
  )
    return { doubt: 'block' };
  if (/\b(?:light ?weight|light|foam) blocks?\b/.test(text) && !words.bare.includes('aerated-concrete'))
    return { doubt: 'block' };
  if (!named && words.bare[0] === 'concrete-block' && isStrangeBlock(text)) return { doubt: 'block' };
  if (/^\W*(?:its |it is |a |the |just |some )*(?:masonry|solid|hard|solid wall|masonry wall)\W*$/.test(text))
    return { doubt: 'masonry' };
  if (
    /^\W*(?:its |it is |a |the |just |some )*(?:hollow|hollow wall|board|boards|sheet|sheets|sheeting|panel board|lining|lined|soft board|insulating board)\W*$/.test(
      text,
    )
  )
    return { doubt: 'sheet' };
  if (
    words.bare.length === 0 &&
    !words.board &&
    /\b(?:sounds?|feels?|seems?|its|is) (?:quite |very |a bit |kind of |like a )?(?:hollow|drum|drummy)\b/.test(
      text,
    )
  )
    return { doubt: 'sheet' };
  return null;
}

/** Said with doubt: taken, and confirmed. */
const HEDGED =
  /\b(?:i think|i guess|i reckon|maybe|probably|possibly|not (?:too |very |really )?sure|might be|could be|looks like|sounds like|i suppose|must be)\b/;

/** The wall's material as a fact or as a question back. `guessed`: a word was corrected by likeness. */
export function readMaterial(outline: Outline, text: string, guessed: boolean): Found {
  const read = materialOf(materialWords(text), text);
  if (read === null) return nothing(outline);
  if ('doubt' in read) return asks(outline, askWhichMaterial(read, outline.said));
  const inferred = read.inferred === true || guessed || HEDGED.test(outline.words);
  return facts(
    outline,
    fact('wall.baseMaterial', { wall: { baseMaterial: read.is } }, outline.said, inferred),
  );
}
