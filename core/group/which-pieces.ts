/** Pieces by number from 0, as they are called: "Piece 2", "Pieces 1, 2 and 4". */
export function whichPieces(numbers: readonly number[]): string {
  const names = numbers.map((nth) => String(nth + 1));
  const last = names.at(-1) ?? '';
  return names.length < 2 ? `Piece ${last}` : `Pieces ${names.slice(0, -1).join(', ')} and ${last}`;
}

/** Words that hold for some pieces only begin with which; null stands for all of them. */
export const forPieces = (pieces: string | null, text: string): string =>
  pieces === null ? text : `${pieces}: ${text}`;

/**
 * What is said of each piece, said once, with the name of the pieces it holds for, or null for all of them, and their
 * numbers from 0. `key` tells what counts as the same.
 */
export function saidOnce<T>(
  perPiece: readonly (readonly T[])[],
  key: (each: T) => string,
  named: (each: T, pieces: string | null, numbers: readonly number[]) => T | T[],
): T[] {
  const found = new Map<string, { each: T; numbers: number[] }>();
  for (const [nth, said] of perPiece.entries()) {
    for (const each of said) {
      const known = found.get(key(each));
      if (known === undefined) found.set(key(each), { each, numbers: [nth] });
      else if (known.numbers.at(-1) !== nth) known.numbers.push(nth);
    }
  }
  return [...found.values()].flatMap(({ each, numbers }) =>
    named(each, numbers.length === perPiece.length ? null : whichPieces(numbers), numbers),
  );
}
