import { sweep } from './swept.ts';
import { Table } from './table.ts';

/** `npm run sweep [count] [seed]`: plans many invented jobs and prints the verdicts for a tradesperson to look at. */
const [count = 100_000, seed = 1] = process.argv.slice(2).map(Number);
const table = new Table();
const took: number[] = [];
for (const swept of sweep(count, seed)) {
  table.add(swept);
  took.push(swept.tookMs);
}
took.sort((one, other) => one - other);
const at = (share: number): string => (took[Math.floor(share * (took.length - 1))] ?? 0).toFixed(3);
console.log(table.lines().join('\n'));
console.log(
  `\n${count} jobs of seed ${seed}. A plan took ${at(0.5)} ms in the middle, ${at(0.99)} at 99 %, ${at(0.999)} at 99.9 %, ${at(1)} at most.`,
);
