import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import * as flow from '../../flows/step.ts';
import type { CrewFace } from '../../src/crew-face.ts';
import { openCrews } from '../../src/crews.ts';
import { SCRIPT } from './clients.ts';
import { paired, type Row, ratioText } from './rounds.ts';

/** Turns per second with so many conversations open, against one; the same turns, eight at a time. */
const CROWDS = [100, 10_000];
const TURNS_A_ROUND = 800;
const AT_ONCE = 8;

export async function crowdBench(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'wallhand-crowd-'));
  const crews = openCrews(folder, flow);
  try {
    const rows: Row[] = [];
    const one = await crowd(crews.crewOf('one'), 1);
    await one();
    for (const size of CROWDS) {
      const many = await crowd(crews.crewOf(`many-${size}`), size);
      await many();
      // Time of many over time of one is turns per second of one over turns per second of many.
      const result = await paired(many, one);
      rows.push({
        bench: `crowd, ${size} conversations open`,
        measured: `${Math.round((1000 * TURNS_A_ROUND) / result.oursMs)} turns a second`,
        ratio: ratioText(result),
        aim: '0.90 to 1.10 of one',
      });
    }
    return rows;
  } finally {
    crews.close();
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Opens the conversations with a turn each; a round then goes on in conversations spread over all of them. */
async function crowd(crew: CrewFace, size: number): Promise<() => Promise<number>> {
  let sent = 0;
  const next = (conversation: number, n: number): Promise<unknown> => {
    sent += 1;
    return crew.handle({
      door: 'neutral',
      conversation: `c${conversation}`,
      id: `m${sent}`,
      author: { id: 'u1', role: 'apprentice' },
      text: SCRIPT[n % SCRIPT.length] as string,
    });
  };
  for (let n = 0; n < size; n += 50) {
    await Promise.all(
      Array.from({ length: Math.min(50, size - n) }, (_, k) => next(n + k, SCRIPT.length - 1)),
    );
  }
  let at = 0;
  return async () => {
    const started = performance.now();
    for (let n = 0; n < TURNS_A_ROUND; n += AT_ONCE) {
      // A whole script in one conversation before the next one, so that both sides answer the same messages.
      await Promise.all(
        Array.from({ length: AT_ONCE }, (_, k) => next(Math.floor(at / SCRIPT.length) % size, n + k)),
      );
      at += AT_ONCE;
    }
    return performance.now() - started;
  };
}
