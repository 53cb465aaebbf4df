/** Paired rounds: both sides are timed one after the other, so that a noisy machine is noisy for both. */
export const ROUNDS = 9;

export type Ratio = { median: number; low: number; high: number };

/** The median of the paired ratios, with their smallest and largest. */
export function spreadOf(ratios: readonly number[]): Ratio {
  const sorted = [...ratios].sort((a, b) => a - b);
  const at = (index: number): number => sorted[index] ?? Number.NaN;
  return { median: at(Math.floor(sorted.length / 2)), low: at(0), high: at(sorted.length - 1) };
}

/** Times both sides `ROUNDS` times, the order turned about each round, and divides ours by theirs, in milliseconds. */
export async function paired(
  ours: () => Promise<number>,
  theirs: () => Promise<number>,
): Promise<Ratio & { oursMs: number; theirsMs: number }> {
  const ratios: number[] = [];
  const oursAll: number[] = [];
  const theirsAll: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const oursFirst = round % 2 === 0;
    const first = await (oursFirst ? ours() : theirs());
    const second = await (oursFirst ? theirs() : ours());
    const [own, other] = oursFirst ? [first, second] : [second, first];
    ratios.push(own / other);
    oursAll.push(own);
    theirsAll.push(other);
  }
  return { ...spreadOf(ratios), oursMs: spreadOf(oursAll).median, theirsMs: spreadOf(theirsAll).median };
}

/** One row of the table: what, how much, against what, with the spread. */
export type Row = { bench: string; measured: string; ratio: string; aim: string };

export function ratioText({ median, low, high }: Ratio): string {
  return `${median.toFixed(2)} (${low.toFixed(2)} to ${high.toFixed(2)})`;
}

/** A plain table for a terminal. */
export function table(rows: readonly Row[]): string {
  const heads: Row = {
    bench: 'bench',
    measured: 'measured',
    ratio: 'ratio, median of nine (spread)',
    aim: 'aim',
  };
  const keys = ['bench', 'measured', 'ratio', 'aim'] as const;
  const widths = keys.map((key) => Math.max(...[heads, ...rows].map((row) => row[key].length)));
  return [heads, ...rows]
    .map((row) =>
      keys
        .map((key, at) => row[key].padEnd(widths[at] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
}
