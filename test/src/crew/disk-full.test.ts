import { join } from 'node:path';
import { setImmediate as nextPass } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { openCrew } from '../../../src/crew.ts';
import { openNodeStore } from '../../../src/ledger/node-store.ts';
import { tempFolder } from '../ledger/temp-folder.ts';
import { started } from '../started.ts';
import { message } from './message.ts';
import { freePort } from './running-server.ts';
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

const post = (url: string, id: string) =>
  fetch(`${url}/v1/messages`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ id, conversation: 'hall', author: { id: 'u7' }, text: LONG }),
  });

test.skipIf(process.platform === 'win32')(
  'a server whose disk fills up answers 500, says in its log why, stands by what it answered, and takes the rest later',
  async () => {
    const env = { WALLHAND_DATA: tempFolder(), PORT: String(await freePort()) };
    const url = `http://127.0.0.1:${env.PORT}`;
    const full = started('src/server.ts', env, [], 200 * 1024);
    await full.wrote(/chat page/);
    const answered = new Map<string, string>();
    let refused = '';
    for (let at = 1; refused === '' && at < 200; at += 1) {
      const response = await post(url, `m${at}`);
      if (response.status === 200) answered.set(`m${at}`, await response.text());
      else {
        expect([response.status, (await response.json()).type]).toEqual([500, '/problems/fault']);
        refused = `m${at}`;
      }
    }
    expect([answered.size > 2, refused]).toEqual([true, `m${answered.size + 1}`]);
    expect(await (await post(url, 'm1')).text()).toBe(answered.get('m1'));
    full.child.kill('SIGTERM');
    expect(await full.ended).toBe(0);
    expect(full.out()).toMatch(/"fault":"LedgerError \| (disk I\/O error|database or disk is full) \| /);

    const roomy = started('src/server.ts', env);
    await roomy.wrote(/chat page/);
    for (const [id, body] of answered) expect(await (await post(url, id)).text()).toBe(body);
    expect((await (await post(url, refused)).json()).turn).toBe(answered.size + 1);
  },
  60_000,
);
