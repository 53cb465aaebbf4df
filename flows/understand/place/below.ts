import type { Below } from '../../../core/job.ts';
import type { Listening } from '../../reading.ts';
import { type Found, fact, facts, nothing } from '../words/found.ts';
import type { Outline } from '../words/outline.ts';

const THINGS: [Below, string][] = [
  ['cot', 'cots?|cribs?|baby bed|bassinet|nursery bed|changing table'],
  ['bed', 'beds?|headboard|bunks?|bunk bed|daybed|mattress|pillows?'],
  [
    'sofa',
    'sofas?|couch(?:es)?|settee|lounge|armchairs?|chairs?|seat(?:s|ing)?|recliner|chesterfield|bench seat|window seat|dining table|sofa bed',
  ],
  ['basin', 'basins?|sinks?|vanity|vanity unit|wash ?basin|wash ?hand basin|bath ?tubs?|baths?|taps?'],
  [
    'walkway',
    'walkway|corridor|hall(?:way)?|passage(?:way)?|people walk(?:ing)?|thoroughfare|door(?:way)?|staircase|stairs|landing|walk past|foot traffic|path',
  ],
];

const FORMS = THINGS.map(([below, words]) => ({
  below,
  word: new RegExp(`^(?:${words})$`),
  anywhere: new RegExp(`\\b(?:${words})\\b`),
}));

const UNUSED =
  /\b(?:never|not|isnt|no longer|aint|hardly|dont|doesnt|unused|disused|blocked|bricked|boarded|capped|sealed|decorative|ornamental|dummy|fake|closed|out of use|not in use|empty|dead)\b/;
const FIRE =
  /\b(?:fire ?places?|hearth|stove|log burner|wood ?burner|heater|gas fire|open fire|fire|chimney|mantel|firebox|burner|grate)\b/;

/** Said unasked: a mantel alone is a datum, and a heater may stand anywhere. */
const A_FIRE = '(?:fire ?places?|hearth|log burner|wood ?burner|gas fire|open fire|stove)';
const OVER_A_FIRE = new RegExp(
  `\\b(?:over|above) (?:(?:the|a|an|my|our|old|big|used|unused|disused|blocked|bricked up|boarded up|living room|lounge) )*${A_FIRE}\\b`,
);
const UNUSED_FIRE = new RegExp(
  `\\b(?:unused|disused|blocked|bricked up|boarded up) ${A_FIRE}\\b|\\b${A_FIRE}(?: (?:is|its|thats|,))* (?:never used|not used|not in use|unused|disused|blocked|bricked up)\\b`,
);

const NEVER_LIT =
  /^(?!.*\b(?:know|sure|idea)\b).*\b(?:never|not|no longer|isnt|dont|doesnt|un|dis)[ -]?(?:been |ever |really )?(?:used?|lit|light|on|working|burnt?)\b/;
const IS_LIT = /^(?!.*\b(?:know|sure|idea)\b).*\b(?:used|in use|lit|light it|burns?|use it)\b/;
/** "Nothing either side" is said of the wall's faces, whatever was asked. */
const OF_THE_FACES =
  /\b(?:either|both|each|other|far|this) (?:sides?|faces?)\b(?!.*\b(?:below|under|underneath|beneath)\b)/;
const NOTHING =
  /\bnothing(?: \w+){0,2} (?:below|under|underneath|beneath|there|directly)\b|\bnothing\b|\bnone\b|\bempty\b|\b(?:just |only )?(?:bare )?(?:floor|skirting|carpet|floorboards|wall)(?: below| under it)?\b|\bclear\b|^\W*(?:no|nope|nah|nil)\W*$/;

/** Furniture that no one sits or sleeps under. */
const HARMLESS =
  /\b(?:sideboard|table|desk|console|cabinet|drawers|dresser|bookcase|piano|tv|television|unit|buffet|credenza|plant|rug|lamp|chest|cupboard|shelf|socket|powerpoint|radiator|dado|fish tank)\b/;

/** What stands below the piece: people and heat matter, a sideboard does not. */
export function readBelow(outline: Outline, listening: Listening): Found {
  const { text, said } = outline;
  const asked = listening.awaiting === 'place.below' && !OF_THE_FACES.test(outline.text);
  const of = (below: Below, inferred = false) => fact('place.below', { place: { below } }, said, inferred);
  if (!asked) {
    const over =
      /\b(?:over|above)(?: (?:the|a|an|my|our|her|his|their|babys?|kids?|childs|childrens|boys|girls|sons?|daughters|nursery|double|single|king|spare|guest|old|new|big|long|leather|corner))* (\w+)\b/.exec(
        text,
      );
    const thing =
      over === null
        ? undefined
        : FORMS.find(({ below, word }) => below !== 'walkway' && word.test(over[1] ?? ''));
    if (thing !== undefined) return facts(outline, of(thing.below));
    const overAMantel = listening.known.wall?.datum?.kind === 'mantel' || /\bmantel\b/.test(text);
    if (overAMantel && UNUSED_FIRE.test(text)) return facts(outline, of('fireplace-unused'));
    // Whether it burns is not told yet: it counts as used, and is confirmed.
    if (OVER_A_FIRE.test(text))
      return facts(outline, of(UNUSED_FIRE.test(text) ? 'fireplace-unused' : 'fireplace', true));
    return /\bnothing (?:below|under(?:neath)?|beneath)\b/.test(text)
      ? facts(outline, of('nothing'))
      : nothing(outline);
  }
  const there = text.replace(/\bno (?:one|body)? ?\w+\b/g, ' ');
  const thing = FORMS.find(({ anywhere }) => anywhere.test(there));
  const cot = thing?.below === 'cot';
  if (FIRE.test(text) && !cot) {
    const used = !UNUSED.test(text);
    return facts(outline, of(used ? 'fireplace' : 'fireplace-unused', used && /\bmantel\b/.test(text)));
  }
  if (thing !== undefined) return facts(outline, of(thing.below));
  // Asked of a mantel, the question is whether the fire under it is used.
  if (listening.known.wall?.datum?.kind === 'mantel') {
    if (NEVER_LIT.test(text)) return facts(outline, of('fireplace-unused'));
    if (IS_LIT.test(text)) return facts(outline, of('fireplace'));
  }
  if (HARMLESS.test(text)) return facts(outline, of('nothing', true));
  return NOTHING.test(text) ? facts(outline, of('nothing')) : nothing(outline);
}
