/** Pieces by number from 0, as they are called: "Piece 2", "Pieces 1, 2 and 4". */
export function whichPieces(numbers: readonly number[]): string {
  const names = numbers.map((nth) => String(nth + 1));
  const last = names.at(-1) ?? '';
  return names.length < 2 ? `Piece ${last}` : `Pieces ${names.slice(0, -1).join(', ')} and ${last}`;
}

/**
 * What is said of each piece, said once: the same of all of them stands as it is, and what holds for some only is
 * given the name of those it holds for. `key` tells what counts as the same.
 */
export function saidOnce<T>(
  perPiece: readonly (readonly T[])[],
  key: (each: T) => string,
  named: (each: T, pieces: string, numbers: readonly number[]) => T | T[],
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
    numbers.length === perPiece.length ? each : named(each, whichPieces(numbers), numbers),
  );
}
