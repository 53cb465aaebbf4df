import type { Hanging } from '../../../core/piece/piece.ts';
import { isNumber, isWord, type Token } from '../words/token.ts';

export type HangerWords = {
  by: Hanging['by'] | null;
  /** How many hangers, when said. */
  count: number | null;
  /** How many hooks, nails or screws on the wall a cord goes over, when said. */
  hooks: number | null;
  middle: boolean;
  /** A toothed or zigzag bracket over one nail. */
  sawtooth: boolean;
  /** One side is said to be like the other. */
  same: boolean;
};

/** The words for each way of hanging, the surest first: a cord runs between rings, so cord comes before rings. */
const WAYS: readonly (readonly [Hanging['by'], ReadonlySet<string>])[] = [
  ['cord', words('cord cords wire wires string rope chain twine braid')],
  ['keyholes', words('keyhole keyholes keyslot keyslots keyhol keyholds slots')],
  ['batten', words('batten battens baton cleat cleats')],
  ['clips', words('clip clips')],
  [
    'rings',
    words(
      'ring rings dring drings strap straps hook hooks hanger hangers eye eyes eyelet eyelets lug lugs loop loops triangle triangles',
    ),
  ],
];
const RINGS = words(
  'ring rings dring drings strap straps hanger hangers eye eyes eyelet eyelets lug lugs loop loops slot slots keyhole keyholes hook hooks clip clips bracket brackets sawtooth sawtooths zigzag d',
);
const HOOKS = words('hook hooks nail nails screw screws pin pins');
const NOT = words('no not without isnt arent neither');

function words(list: string): ReadonlySet<string> {
  return new Set(list.split(' '));
}

/** What the words say of how a piece hangs, figures apart. */
export function hangerWords(all: readonly Token[], known: Hanging['by'] | undefined): HangerWords {
  const found =
    WAYS.find(([, spelt]) => all.some((each, at) => spelt.has(each.text) && !denied(all, at)))?.[0] ?? null;
  // Once a cord is known, a hook is the one on the wall and a ring is the cord's.
  const by = found === 'rings' && known === 'cord' ? 'cord' : found;
  const zBar = all.some(
    (each, at) => isWord(each, 'bar', 'rail') && isWord(all[at - 1], 'z', 'hanging', 'split'),
  );
  const sawtooth = isSawtooth(all);
  const count = counted(all, RINGS) ?? (sawtooth ? 1 : null);
  const eachSide = count === 1 && all.some((each) => isWord(each, 'each', 'either', 'both', 'every'));
  return {
    by: by ?? (zBar ? 'batten' : null) ?? (isKeyHole(all) ? 'keyholes' : null) ?? (sawtooth ? 'rings' : null),
    count: eachSide ? null : count,
    hooks: by === 'cord' ? counted(all, HOOKS) : null,
    middle:
      (sawtooth && count === 1) ||
      all.some((each) =>
        isWord(each, 'middle', 'centre', 'center', 'central', 'centred', 'centered', 'mid', 'midle'),
      ),
    sawtooth,
    same: isSame(all),
  };
}

/** "same on the right", "the other one likewise". */
function isSame(all: readonly Token[]): boolean {
  return all.some((each) => isWord(each, 'same', 'ditto', 'likewise', 'identical', 'mirrored', 'matching'));
}

function isSawtooth(all: readonly Token[]): boolean {
  return all.some(
    (each, at) =>
      isWord(each, 'sawtooth', 'sawtooths', 'zigzag', 'toothed', 'serrated') ||
      (isWord(each, 'saw', 'zig') && isWord(all[at + 1], 'tooth', 'toothed', 'zag')),
  );
}

function isKeyHole(all: readonly Token[]): boolean {
  return all.some((each, at) => each.text === 'key' && isWord(all[at + 1], 'hole', 'holes', 'slot', 'slots'));
}

function denied(all: readonly Token[], at: number): boolean {
  return (
    NOT.has(all[at - 1]?.text ?? '') ||
    (isWord(all[at - 1], 'a', 'any', 'on', 'the') && NOT.has(all[at - 2]?.text ?? '')) ||
    (isWord(all[at - 1], 'any') &&
      all.slice(0, at).some((each) => /^(?:doesnt|dont|hasnt|havent|isnt|arent|not)$/.test(each.text)))
  );
}

/** "two rings", "a single hook", "2 big D-rings": the first count before one of `nouns`. */
function counted(all: readonly Token[], nouns: ReadonlySet<string>): number | null {
  for (const [at, token] of all.entries()) {
    if (token.kind !== 'word' || !nouns.has(token.text)) continue;
    for (const before of [all[at - 1], all[at - 2], all[at - 3]]) {
      if (before === undefined || before.kind === 'unit' || before.kind === 'mark') break;
      if (isNumber(before)) {
        if (before.value.d === 1n && before.value.lte(MOST_HANGERS) && before.value.gt(0))
          return before.value.valueOf();
        break;
      }
      if (isWord(before, 'single', 'a', 'an', 'just', 'lone')) return isPlural(token.text) ? null : 1;
      if (isWord(before, 'pair', 'couple')) return 2;
    }
  }
  return null;
}

function isPlural(word: string): boolean {
  return word.endsWith('s');
}

/** More on one piece than anyone fits; our choice. */
const MOST_HANGERS = 8;
