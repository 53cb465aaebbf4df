import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { tempFolder } from '../ledger/temp-folder.ts';
import { freePort, type Running, startServer } from './running-server.ts';

const KILLS = 25;
const CLIENTS = 8;
/** Two clients talk in each conversation, so turns of one conversation race too. */
const CONVERSATIONS = 4;
const SAID = [
  '24 kg mirror',
  'brick wall',
  'make that 28 kg',
  'the wall is nice',
  '840 x 1120',
  'back',
  'why?',
];

type Sent = { conversation: string; id: string; text: string };

const post = async (url: string, { conversation, id, text }: Sent): Promise<string> => {
  const response = await fetch(`${url}/v1/messages`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ conversation, id, text, author: { id: 'u7', role: 'apprentice' } }),
  });
  const body = await response.text();
  if (response.status !== 200) throw new Error(`${response.status} ${body}`);
  return body;
};

test(`a server killed ${KILLS} times in the middle of its work has every answer it gave, and no half of one`, {
  timeout: 300_000,
}, async () => {
  const data = tempFolder();
  const port = await freePort();
  await (await startServer(data, port)).kill('SIGTERM');
  let server: Running = await startServer(data, port);
  const acknowledged: { sent: Sent; body: string }[] = [];
  const unheard = new Set<string>();
  let going = true;

  const client = async (who: number) => {
    for (let at = 0; going; at++) {
      const sent = {
        conversation: `c${who % CONVERSATIONS}`,
        id: `${who}-${at}`,
        text: SAID[(who + at) % SAID.length] ?? '',
      };
      for (;;) {
        try {
          acknowledged.push({ sent, body: await post(server.url, sent) });
          break;
        } catch (error) {
          if (!(error instanceof TypeError)) throw error;
          // Nobody answered: the same id again once the server is back, as the chat page does.
          unheard.add(sent.id);
          if (!going) return;
          await sleep(20);
        }
      }
    }
  };
  const clients = Promise.all(Array.from({ length: CLIENTS }, (_, who) => client(who)));

  let inFlight = 0;
  for (let kill = 0; kill < KILLS; kill++) {
    await sleep(Math.random() * 300);
    const before = unheard.size;
    await server.kill();
    await sleep(5);
    inFlight += unheard.size - before;
    server = await startServer(data, port);
  }
  going = false;
  await clients;
  expect(inFlight, 'turns cut off in flight').toBeGreaterThan(KILLS);

  await Promise.all(
    acknowledged.map(async ({ sent, body }) => expect(await post(server.url, sent)).toBe(body)),
  );
  await server.kill();

  const db = new DatabaseSync(join(data, 'local.sqlite'));
  expect(db.prepare('PRAGMA integrity_check').all()).toEqual([{ integrity_check: 'ok' }]);
  const rows = db.prepare('SELECT conversation, n, id, reply FROM turn ORDER BY conversation, n').all();
  const plans = new Set(
    db
      .prepare('SELECT id FROM plan')
      .all()
      .map((row) => row.id),
  );
  db.close();
  const last = new Map<unknown, number>();
  for (const { conversation, n, reply } of rows) {
    const { turn, plan } = JSON.parse(String(reply)) as { turn: number; plan: string | null };
    expect(n).toBe((last.get(conversation) ?? 0) + 1);
    expect(turn).toBe(n);
    if (plan !== null) expect(plans).toContain(plan);
    last.set(conversation, Number(n));
  }
  expect(new Set(rows.map((row) => row.id)).size).toBe(rows.length);
  expect(rows.length).toBeGreaterThanOrEqual(acknowledged.length);
  expect(rows.length - acknowledged.length).toBeLessThanOrEqual(CLIENTS);
});
