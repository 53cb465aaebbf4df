/**
 * Branded numbers. A product changes the unit, so it is written once, in a named formula that ends
 * in one of these makers. This is the only file of `core` and `flows` that casts a number.
 */
declare const unit: unique symbol;

export type Quantity<U extends string> = number & { readonly [unit]: U };

export type Millimetres = Quantity<'mm'>;
export type SquareMillimetres = Quantity<'mm2'>;
export type CubicMillimetres = Quantity<'mm3'>;
export type Kilograms = Quantity<'kg'>;
export type KilogramsPerCubicMetre = Quantity<'kg/m3'>;
export type Newtons = Quantity<'N'>;
export type NewtonMillimetres = Quantity<'Nmm'>;
export type Megapascals = Quantity<'MPa'>;
export type Degrees = Quantity<'deg'>;

const maker =
  <Q extends number>() =>
  (value: number): Q =>
    value as Q;

export const mm = maker<Millimetres>();
export const mm2 = maker<SquareMillimetres>();
export const mm3 = maker<CubicMillimetres>();
export const kg = maker<Kilograms>();
export const kgPerM3 = maker<KilogramsPerCubicMetre>();
export const newtons = maker<Newtons>();
export const newtonMm = maker<NewtonMillimetres>();
export const mpa = maker<Megapascals>();
export const degrees = maker<Degrees>();

/** The sum of quantities of one unit. `NoInfer` keeps millimetres and newtons apart. */
export function sum<Q extends Quantity<string>>(first: Q, ...rest: NoInfer<Q>[]): Q {
  return rest.reduce<number>((total, each) => total + each, first) as Q;
}

/** `from` less `less`, in their unit. */
export function difference<Q extends Quantity<string>>(from: Q, less: NoInfer<Q>): Q {
  return (from - less) as Q;
}

/** A quantity times a bare number, in its unit. */
export function times<Q extends Quantity<string>>(quantity: Q, factor: number): Q {
  return (quantity * factor) as Q;
}

/** The smallest of quantities of one unit. */
export function least<Q extends Quantity<string>>(first: Q, ...rest: NoInfer<Q>[]): Q {
  return Math.min(first, ...rest) as Q;
}

/** The largest of quantities of one unit. */
export function most<Q extends Quantity<string>>(first: Q, ...rest: NoInfer<Q>[]): Q {
  return Math.max(first, ...rest) as Q;
}

/** Rounds to a tenth of the unit: once, at the end, on the way out. */
export function toTenth<Q extends Quantity<string>>(value: Q): Q {
  return (Math.round(value * 10) / 10) as Q;
}

/** Finer than any tape or scale reads, coarser than what a sum of decimals is off by in a computer. */
const PARTS = 1e6;

/** A figure taken to a millionth of its unit, so that what stands on a line by arithmetic stands on it here. */
export function settled<Q extends Quantity<string>>(value: Q): Q {
  return (Math.round(value * PARTS) / PARTS) as Q;
}

/** Exact by definition (international yard and pound, 1959). */
export const MM_PER_INCH = 25.4;
/** Exact by definition (international yard and pound, 1959). */
export const KG_PER_POUND = 0.45359237;
/** Standard gravity, exact by definition (3rd CGPM, 1901), m/s2. */
export const STANDARD_GRAVITY = 9.80665;

/** Weight of a mass: W = m g. Kilograms in, newtons out. */
export function weightOf(mass: Kilograms): Newtons {
  return newtons(mass * STANDARD_GRAVITY);
}
