import Fraction from 'fraction.js';

export type LengthUnit = 'mm' | 'cm' | 'm' | 'in' | 'ft' | 'yd' | 'km' | 'mile';
export type MassUnit = 'kg' | 'g' | 'lb' | 'oz' | 'st' | 't' | 'N' | 'kN';
export type UnitName = LengthUnit | MassUnit;

/** Millimetres in one of each; inch, foot, yard and mile exact by definition (1959). */
export const MM_IN: Record<LengthUnit, Fraction> = {
  mm: new Fraction(1),
  cm: new Fraction(10),
  m: new Fraction(1000),
  in: new Fraction(254, 10),
  ft: new Fraction(3048, 10),
  yd: new Fraction(9144, 10),
  km: new Fraction(1_000_000),
  mile: new Fraction(1_609_344),
};

/** Kilograms in one of each; pound exact by definition (1959); newtons by standard gravity (1901). */
export const KG_IN: Record<MassUnit, Fraction> = {
  kg: new Fraction(1),
  g: new Fraction(1, 1000),
  lb: new Fraction(45_359_237, 100_000_000),
  oz: new Fraction(45_359_237, 1_600_000_000),
  st: new Fraction(45_359_237 * 14, 100_000_000),
  t: new Fraction(1000),
  N: new Fraction(100_000, 980_665),
  kN: new Fraction(100_000_000, 980_665),
};

const SPELLINGS: Record<UnitName, string> = {
  mm: 'mm mms mil mils mill mills mim milli millis millimetre millimetres millimeter millimeters millimetr milimetre milimetres milimeter milimeters milimetros milímetros',
  cm: 'cm cms centimetre centimetres centimeter centimeters centimetr centemetre centemeter centi centis',
  m: 'm mtr mtrs metre metres meter meters metr metres mter',
  in: 'in ins inch inches inchs inche',
  ft: 'ft fts foot feet foots feets',
  yd: 'yd yds yard yards',
  km: 'km kms kilometre kilometres kilometer kilometers',
  mile: 'mile miles',
  kg: 'kg kgs kilo kilos kilogram kilograms kilogramme kilogrammes kilogramm kilograms kgr killo killos',
  g: 'g gr gm gms gram grams gramme grammes',
  lb: 'lb lbs pound pounds lbm pund',
  oz: 'oz ozs ounce ounces',
  st: 'st stone stones',
  t: 't ton tons tonne tonnes',
  N: 'n newton newtons',
  kN: 'kn kilonewton kilonewtons',
};

const BY_WORD = new Map<string, UnitName>(
  (Object.entries(SPELLINGS) as [UnitName, string][]).flatMap(([unit, words]) =>
    words.split(' ').map((word): [string, UnitName] => [word, unit]),
  ),
);

/** Also words of their own: units only straight after a figure or after "a". */
const NEEDS_A_FIGURE = new Set(
  'in ins m g gr t n st stone stones foot mil mill mills pound yard yards ton gm'.split(' '),
);

/** The unit a word spells, misspellings included, or null. */
export function unitOfWord(word: string, afterFigure: boolean): UnitName | null {
  const unit = BY_WORD.get(word) ?? null;
  return unit !== null && (afterFigure || !NEEDS_A_FIGURE.has(word)) ? unit : null;
}

export function isLengthUnit(unit: UnitName): unit is LengthUnit {
  return unit in MM_IN;
}

export function isMassUnit(unit: UnitName): unit is MassUnit {
  return unit in KG_IN;
}
