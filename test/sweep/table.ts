import { type Swept, stopsOf } from './swept.ts';

const BANDS = [3, 6, 10, 15, 20, 30, 50] as const;
const bandOf = (massKg: number): string => {
  const upTo = BANDS.find((limit) => massKg <= limit);
  return upTo === undefined ? 'over 50' : `to ${upTo}`;
};

/** Stops that say nothing of whether something holds: the place, the people or the law. */
const isAboutHolding = (id: string): boolean => id === 'C-GT-9';

type Cell = { jobs: number; go: number; care: number; stop: number; unheld: number; by: Map<string, number> };

/** One row a wall and band of mass: verdicts, and which fasteners were chosen how often, per cent. */
export class Table {
  readonly #cells = new Map<string, Cell>();

  add({ job, plan }: Swept): void {
    const key = `${job.wall.baseMaterial.padEnd(30)} ${bandOf(job.piece.massKg ?? 0).padEnd(8)}`;
    const cell = this.#cells.get(key) ?? { jobs: 0, go: 0, care: 0, stop: 0, unheld: 0, by: new Map() };
    this.#cells.set(key, cell);
    cell.jobs += 1;
    cell[plan.verdict] += 1;
    const stops = stopsOf(plan);
    if (stops.length > 0 && stops.every(isAboutHolding)) cell.unheld += 1;
    const fastener = plan.fixing?.fastener;
    if (fastener) cell.by.set(fastener, (cell.by.get(fastener) ?? 0) + 1);
  }

  /** The lines of the table, walls together, light to heavy. */
  lines(): string[] {
    const order = [...BANDS.map((limit) => `to ${limit}`), 'over 50'];
    const rank = (key: string): string =>
      `${key.slice(0, 30)}${order.indexOf(key.slice(31).trim()).toString().padStart(2, '0')}`;
    const head = `${'wall'.padEnd(30)} kg       ${'jobs'.padStart(5)}  go care stop unheld  fastener, % of the planned`;
    const rows = [...this.#cells]
      .sort(([one], [other]) => (rank(one) < rank(other) ? -1 : 1))
      .map(([key, cell]) => `${key} ${`${cell.jobs}`.padStart(5)} ${verdicts(cell)}  ${fasteners(cell)}`);
    return [head, ...rows];
  }
}

const percent = (part: number, whole: number): string => `${Math.round((100 * part) / whole)}`;

const verdicts = ({ jobs, go, care, stop, unheld }: Cell): string =>
  [go, care, stop].map((each) => percent(each, jobs).padStart(4)).join('') +
  percent(unheld, jobs).padStart(7);

function fasteners({ by }: Cell): string {
  const planned = [...by.values()].reduce((sum, each) => sum + each, 0);
  return [...by]
    .sort((one, other) => other[1] - one[1])
    .map(([name, count]) => `${name} ${percent(count, planned)}`)
    .join(', ');
}
