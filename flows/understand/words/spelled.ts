import type { Raw } from './raw.ts';

const UNITS = 'zero one two three four five six seven eight nine'.split(' ');
const TEENS = 'ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen'.split(' ');
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety'.split(' ');
const MISSPELT = new Map(
  Object.entries({
    fourty: 'forty',
    fivty: 'fifty',
    fity: 'fifty',
    ninty: 'ninety',
    nintey: 'ninety',
    eigthy: 'eighty',
    eighy: 'eighty',
    twelv: 'twelve',
    tweleve: 'twelve',
    twelwe: 'twelve',
    fiveteen: 'fifteen',
    fivteen: 'fifteen',
    eightteen: 'eighteen',
    fourten: 'fourteen',
    forteen: 'fourteen',
    thirten: 'thirteen',
    nineten: 'nineteen',
    ninteen: 'nineteen',
    twenny: 'twenty',
    tweny: 'twenty',
    twentie: 'twenty',
    thrity: 'thirty',
    thirdy: 'thirty',
    hunderd: 'hundred',
    hundered: 'hundred',
    hundert: 'hundred',
    hundread: 'hundred',
    hundreds: 'hundred',
    thousend: 'thousand',
    tousand: 'thousand',
  }),
);

function plain(raw: Raw | undefined): string {
  if (raw?.kind !== 'letters') return '';
  return MISSPELT.get(raw.text) ?? raw.text;
}

function indexOrNull(list: readonly string[], word: string, from: number, step: number): number | null {
  const at = list.indexOf(word);
  return at < 0 ? null : from + at * step;
}

const unitAt = (raw: Raw | undefined) => indexOrNull(UNITS, plain(raw), 0, 1);
const teenAt = (raw: Raw | undefined) => indexOrNull(TEENS, plain(raw), 10, 1);
const tenAt = (raw: Raw | undefined) => indexOrNull(TENS, plain(raw), 20, 10);

type Said = { value: number; next: number };

/** One to ninety-nine, hyphens allowed. */
function underHundred(raws: readonly Raw[], at: number): Said | null {
  const ten = tenAt(raws[at]);
  if (ten !== null) {
    const hyphen = raws[at + 1]?.text === '-' ? 1 : 0;
    const unit = unitAt(raws[at + 1 + hyphen]);
    return unit === null || unit === 0
      ? { value: ten, next: at + 1 }
      : { value: ten + unit, next: at + 2 + hyphen };
  }
  const value = teenAt(raws[at]) ?? unitAt(raws[at]);
  return value === null ? null : { value, next: at + 1 };
}

function tail(raws: readonly Raw[], at: number): Said {
  const and = plain(raws[at]) === 'and' ? 1 : 0;
  const rest = underHundred(raws, at + and);
  // "hundred and half" is left to the fractions; "nine hundred twelve hundred" is two figures.
  return rest === null || plain(raws[rest.next]) === 'hundred' ? { value: 0, next: at } : rest;
}

/** "thirty four hundred", "twelve hundred and fifty", "two forty" (240), "two oh five"; null when no number. */
export function spelled(raws: readonly Raw[], at: number): Said | null {
  const lone = plain(raws[at]);
  if (lone === 'hundred' || lone === 'thousand') return scaled(raws, { value: 1, next: at });
  const first = underHundred(raws, at);
  if (first === null) return null;
  const scale = plain(raws[first.next]);
  if (scale === 'hundred' || scale === 'thousand') return scaled(raws, first);
  const second = raws[first.next];
  if (first.value > 0 && (plain(second) === 'oh' || plain(second) === 'o')) {
    const unit = unitAt(raws[first.next + 1]);
    if (unit !== null) return { value: first.value * 100 + unit, next: first.next + 2 };
  }
  const spoken = tenAt(second) ?? teenAt(second);
  const rest = spoken === null || first.value === 0 ? null : underHundred(raws, first.next);
  if (rest === null || plain(raws[rest.next]) === 'hundred') return first;
  return { value: first.value * 100 + rest.value, next: rest.next };
}

/** What "hundred" and "thousand" make of the figure before them. */
export function scaled(raws: readonly Raw[], base: Said): Said {
  let { value, next } = base;
  if (plain(raws[next]) === 'thousand') {
    value *= 1000;
    next += 1;
    const hundreds = underHundred(raws, next);
    if (hundreds !== null && plain(raws[hundreds.next]) === 'hundred') {
      value += hundreds.value * 100;
      next = hundreds.next + 1;
    }
  } else {
    value *= 100;
    next += 1;
  }
  const rest = tail(raws, next);
  return { value: value + rest.value, next: rest.next };
}

/** A single digit as a word, for "three point four". */
export function spelledDigit(raw: Raw | undefined): number | null {
  return unitAt(raw);
}
