import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parentPort, workerData } from 'node:worker_threads';
import * as flow from '../../flows/step.ts';
import { openCrews } from '../../src/crews.ts';
import { crowd } from './crowd-round.ts';

/** One side of the crowd bench, on a thread: says so when its conversations are open, then a round at each word. */
const folder = mkdtempSync(join(tmpdir(), 'wallhand-crowd-'));
const crews = openCrews(folder, flow);
const round = await crowd(crews.crewOf('crew'), workerData);
parentPort?.on('message', async (word) => {
  if (word === 'round') return parentPort?.postMessage(await round());
  crews.close();
  rmSync(folder, { recursive: true, force: true });
  parentPort?.close();
});
parentPort?.postMessage('open');
