import { createHmac, timingSafeEqual } from 'node:crypto';
import { DatabaseSync } from 'node:sqlite';
import { serve } from '@hono/node-server';
import { Hono } from 'hono';

/**
 * The floor: a bare route that checks the same signature and commits one row with `synchronous=FULL`.
 * Arguments: port, file, secret (`whsec_` + base64). Prints `listening` when it does.
 */
const [port = '0', file = '', secret = ''] = process.argv.slice(2);
const key = Buffer.from(secret.replace('whsec_', ''), 'base64');
const db = new DatabaseSync(file);
db.exec(
  'PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA locking_mode=EXCLUSIVE; CREATE TABLE IF NOT EXISTS row (id TEXT PRIMARY KEY, body TEXT) STRICT',
);
const insert = db.prepare('INSERT OR REPLACE INTO row (id, body) VALUES (?, ?)');

const app = new Hono();
app.post('/v1/messages', async (c) => {
  const body = await c.req.text();
  const id = c.req.header('webhook-id') ?? '';
  const signed = createHmac('sha256', key)
    .update(`${id}.${c.req.header('webhook-timestamp')}.${body}`)
    .digest();
  const given = Buffer.from((c.req.header('webhook-signature') ?? '').replace('v1,', ''), 'base64');
  if (given.length !== signed.length || !timingSafeEqual(given, signed))
    return c.json({ error: 'signature' }, 401);
  insert.run(id, body);
  return c.json({ ok: true });
});
serve({ fetch: app.fetch, port: Number(port), hostname: '127.0.0.1' }, () => console.log('listening'));
process.on('SIGTERM', () => {
  db.close();
  process.exit(0);
});
