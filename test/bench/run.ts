import { crowdBench } from './crowd.ts';
import { planBench } from './plan.ts';
import type { Row } from './rounds.ts';
import { table } from './rounds.ts';
import { sizeBench } from './size.ts';
import { turnBench } from './turn.ts';

/** `npm run bench`: one table, each ratio measured in one run on one machine. Names pick benches. */
const BENCHES: Record<string, () => Row[] | Promise<Row[]>> = {
  plan: planBench,
  turn: turnBench,
  crowd: crowdBench,
  size: sizeBench,
};

const named = process.argv.slice(2);
const unknown = named.filter((name) => !(name in BENCHES));
if (unknown.length > 0) {
  console.error(`No bench is called ${unknown.join(', ')}; there are ${Object.keys(BENCHES).join(', ')}.`);
  process.exit(1);
}
const rows: Row[] = [];
for (const [name, bench] of Object.entries(BENCHES)) {
  if (named.length === 0 || named.includes(name)) rows.push(...(await bench()));
}
console.log(table(rows));
