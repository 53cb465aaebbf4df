import { join } from 'node:path';
import { setImmediate as nextPass } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { openCrew } from '../../../src/crew.ts';
import { openNodeStore } from '../../../src/ledger/node-store.ts';
import { tempFolder } from '../ledger/temp-folder.ts';
import { message } from './message.ts';
import { tinyFlow } from './tiny-flow.ts';

const LONG = 'hm '.repeat(600);
const IDS = ['m1', 'm2', 'm3', 'm4', 'm5', 'm6', 'm7', 'm8', 'm9'];

test('when the disk fills up, turns of that pass are refused whole, and all go through once there is room', async () => {
  const store = openNodeStore(join(tempFolder(), 'crew.sqlite'), () => crew.forget());
  const crew = openCrew({ store, flow: tinyFlow });
  store.flush();
  const send = async (id: string): Promise<string> => {
    const handled = crew.handle(message('hall', id, LONG));
    await store.durable();
    return handled.ok ? handled.body : handled.why;
  };
  const turns = () => store.all<{ n: number }>('SELECT n FROM turn ORDER BY n').map((row) => row.n);

  // SQLite's own page limit stands in for the disk's: the error, and what it does to a transaction, are the same.
  const [size] = store.all<{ page_count: number }>('PRAGMA page_count');
  store.all(`PRAGMA max_page_count = ${(size?.page_count ?? 0) + 2}`);
  expect(await send('m1')).toContain('"turn":1');
  const settled = await Promise.allSettled(IDS.slice(1).map(send));
  expect(settled.map((one) => one.status)).toEqual(IDS.slice(1).map(() => 'rejected'));
  expect(turns()).toEqual([1]);

  await nextPass();
  store.all('PRAGMA max_page_count = 1000000');
  const later = await Promise.all(IDS.map(send));
  expect(later.map((reply) => (JSON.parse(reply) as { turn: number }).turn)).toEqual(
    IDS.map((_, at) => at + 1),
  );
  expect(turns()).toEqual(IDS.map((_, at) => at + 1));
  store.close();
});
