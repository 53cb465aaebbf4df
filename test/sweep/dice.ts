/** Numbers that look random and are the same in every run: a linear congruential generator (ANSI C constants, 31 bits). */
export type Dice = {
  readonly below: (limit: number) => number;
  readonly between: (least: number, most: number) => number;
  readonly oneOf: <T>(...values: readonly T[]) => T;
  readonly chance: (share: number) => boolean;
};

export function diceFrom(seed: number): Dice {
  let state = seed >>> 0;
  const roll = (): number => {
    state = (Math.imul(state, 1103515245) + 12345) >>> 0;
    // The low bits of such a generator repeat soon, so only the upper ones are used.
    return (state >>> 8) / 2 ** 24;
  };
  return {
    below: (limit) => Math.floor(roll() * limit),
    between: (least, most) => Math.round((least + roll() * (most - least)) * 10) / 10,
    oneOf: (...values) => values[Math.floor(roll() * values.length)] as (typeof values)[number],
    chance: (share) => roll() < share,
  };
}
