/** Letters of the alphabet, A to Z. */
const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

/** Name of a mark counted from 0 at the left: A, B … Z, AA, AB … */
export function markName(nth: number): string {
  const letter = LETTERS[nth % LETTERS.length] ?? '';
  return nth < LETTERS.length ? letter : markName(Math.floor(nth / LETTERS.length) - 1) + letter;
}
