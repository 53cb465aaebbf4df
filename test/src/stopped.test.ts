import { readdirSync } from 'node:fs';
import { Agent, request } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { setTimeout as sleep } from 'node:timers/promises';
import { expect, test } from 'vitest';
import { freePort } from './crew/running-server.ts';
import { tempFolder } from './ledger/temp-folder.ts';
import { started } from './started.ts';

const CLIENTS = 8;

/** Longer than an answer may take after the signal, with room for a slow machine. */
const A_FEW_SECONDS_MS = 4500;

type Post = (message: object) => Promise<{ status: number; body: string }>;

/** A client that keeps its connections open, as proxies and chat platforms do. */
function keptAlive(port: number): Post {
  const agent = new Agent({ keepAlive: true });
  return (message) =>
    new Promise((resolve, reject) => {
      const to = { host: '127.0.0.1', port, path: '/v1/messages', method: 'POST', agent };
      const sent = request({ ...to, headers: { 'content-type': 'application/json' } }, (response) => {
        let body = '';
        response.setEncoding('utf8').on('data', (text) => {
          body += text;
        });
        response.on('end', () => resolve({ status: response.statusCode ?? 0, body }));
        response.on('error', reject);
      });
      sent.on('error', reject);
      sent.end(JSON.stringify(message));
    });
}

const said = (id: string, conversation: string) => ({
  ...{ id, conversation, author: { id: 'u7' }, text: 'a 24 kg mirror on brick' },
});

test.each(['SIGTERM', 'SIGINT'] as const)(
  'told to stop by %s in the middle of its work, the server ends within seconds and has every turn it acknowledged',
  async (signal) => {
    const data = tempFolder();
    const port = await freePort();
    const server = started('src/server.ts', { PORT: String(port), WALLHAND_DATA: data });
    await server.wrote(/chat page/);
    // One who begins a message and falls asleep must not hold it up.
    const asleep = connect(port, '127.0.0.1').on('error', () => {});
    asleep.write('POST /v1/messages HTTP/1.1\r\nHost: 127.0.0.1\r\nContent-Type: application/json\r\n');
    asleep.write('Content-Length: 100\r\n\r\n{"id":');

    const acknowledged = new Map<string, string>();
    const unheard: string[] = [];
    const client = async (who: number): Promise<void> => {
      const post = keptAlive(port);
      for (let at = 0; ; at += 1) {
        const id = `${who}-${at}`;
        try {
          const { status, body } = await post(said(id, `c${who}`));
          expect(status).toBe(200);
          acknowledged.set(id, body);
        } catch (error) {
          if (!(error instanceof Error && 'code' in error)) throw error;
          unheard.push(id);
          return;
        }
      }
    };
    const clients = Promise.all(Array.from({ length: CLIENTS }, (_, who) => client(who)));
    while (acknowledged.size < 5 * CLIENTS) await sleep(20);
    const told = performance.now();
    server.child.kill(signal);
    expect(await server.ended).toBe(0);
    expect(performance.now() - told).toBeLessThan(A_FEW_SECONDS_MS);
    await clients;

    expect(unheard).toHaveLength(CLIENTS);
    expect(server.err()).toBe('');
    // No log written ahead is left beside it: all is in the one file, which can be copied as it is.
    expect(readdirSync(data)).toEqual(['local.sqlite']);
    const db = new DatabaseSync(join(data, 'local.sqlite'), { readOnly: true });
    const rows = db.prepare('SELECT id, reply FROM turn').all();
    db.close();
    const kept = new Map(rows.map(({ id, reply }) => [id, reply]));
    for (const [id, body] of acknowledged) expect(kept.get(id)).toBe(body);
    expect(rows.length - acknowledged.size).toBeLessThanOrEqual(CLIENTS);
  },
  60_000,
);
