import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import { TURNS_A_ROUND } from './crowd-round.ts';
import { paired, type Row, ratioText } from './rounds.ts';

/**
 * Turns per second with so many conversations open, against one. Both sides answer the same messages: whole
 * scripts, each in a conversation of its own, eight at a time, and between them a word in conversations that
 * were open before. So the ratio is the cost of the others being open, not of what is said or of its age.
 */
const CROWDS = [100, 10_000];
const WARM_UP_ROUNDS = 2;

export async function crowdBench(): Promise<Row[]> {
  const rows: Row[] = [];
  for (const size of CROWDS) {
    const [one, many] = await Promise.all([side(1), side(size)]);
    for (let round = 0; round < WARM_UP_ROUNDS; round += 1) {
      await one.round();
      await many.round();
    }
    // Time of many over time of one is turns per second of one over turns per second of many.
    const result = await paired(many.round, one.round);
    await Promise.all([one.end(), many.end()]);
    rows.push({
      bench: `crowd, ${size} conversations open`,
      measured: `${Math.round((1000 * TURNS_A_ROUND) / result.oursMs)} turns a second`,
      ratio: ratioText(result),
      aim: '0.90 to 1.10 of one',
    });
  }
  return rows;
}

/** Each side has a thread and so a heap of its own: what the others cost in memory falls on the side that has them. */
async function side(size: number): Promise<{ round: () => Promise<number>; end: () => Promise<unknown> }> {
  const thread = new Worker(new URL('crowd-side.ts', import.meta.url), { workerData: size });
  await once(thread, 'message');
  return {
    round: async () => {
      thread.postMessage('round');
      const [ms] = await once(thread, 'message');
      return ms;
    },
    end: async () => {
      thread.postMessage('end');
      await once(thread, 'exit');
    },
  };
}
