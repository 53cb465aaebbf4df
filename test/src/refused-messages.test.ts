import { createHmac, randomBytes } from 'node:crypto';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { checkOf } from '../../core/check.ts';
import { planOfAny } from '../../core/plan-of-pieces.ts';
import { begin, resume, step } from '../../flows/step.ts';
import { appOf } from '../../src/app.ts';
import { readConfig } from '../../src/config.ts';
import { openCrews } from '../../src/crews.ts';
import { tempFolder } from './ledger/temp-folder.ts';

const BEARER = 'a-key-of-the-oak-crew';
const [SIGNING, OTHER] = [randomBytes(32), randomBytes(32)];
const KEYS = `oak:${BEARER},elm:whsec_${SIGNING.toString('base64')}`;

type Sent = { body: string; headers: Record<string, string>; crew?: string };

const said = (rest: object): string =>
  JSON.stringify({ id: 'm1', conversation: 'hall', author: { id: 'u7', role: 'apprentice' }, ...rest });
const JSON_TYPE = { 'content-type': 'application/json' };
const OAK = { ...JSON_TYPE, authorization: `Bearer ${BEARER}` };
const oak = (rest: object): Sent => ({ body: said(rest), headers: OAK });

/** Signed by Standard Webhooks so many seconds ago. */
function signed(ageSeconds: number, crew = 'elm', key = SIGNING): Sent {
  const body = said({ text: 'brick' });
  const timestamp = Math.floor(Date.now() / 1000) - ageSeconds;
  const signature = createHmac('sha256', key).update(`s1.${timestamp}.${body}`).digest('base64');
  const headers = {
    ...JSON_TYPE,
    'webhook-id': 's1',
    'webhook-timestamp': String(timestamp),
    'webhook-signature': `v1,${signature}`,
  };
  return { body, headers, crew };
}

const WHOLE = 64 * 1024;
const filled = (bytes: number): Sent => oak({ text: 'x'.repeat(bytes - said({ text: '' }).length) });

/** The status, and how many turns are then in all ledgers together. */
async function sent({ body, headers, crew }: Sent): Promise<[status: number, turns: number]> {
  const read = await readConfig({ WALLHAND_KEYS: KEYS, WALLHAND_SECRET: 's'.repeat(40) });
  if (!read.ok) throw new Error(read.refused.join(' '));
  const folder = tempFolder();
  const crews = openCrews(folder, { begin, resume, step });
  const app = appOf({
    ...{ config: read.config, crewOf: crews.crewOf, planOf: planOfAny, checkOf, now: Date.now },
    log: () => {},
    asset: async () => '',
  });
  const query = crew === undefined ? '' : `?crew=${crew}`;
  const { status } = await app.request(`/v1/messages${query}`, { method: 'POST', body, headers });
  crews.close();
  const ledgers = readdirSync(folder).filter((file) => file.endsWith('.sqlite'));
  return [status, ledgers.map((file) => turnsIn(join(folder, file))).reduce((all, each) => all + each, 0)];
}

function turnsIn(file: string): number {
  const db = new DatabaseSync(file, { readOnly: true });
  const row = db.prepare('SELECT count(*) AS n FROM turn').get();
  db.close();
  return Number(row?.n);
}

test.each<[string, Sent]>([
  ['a bearer key', oak({ text: 'brick' })],
  ['a signature', signed(0)],
  ['a signature of 290 s ago', signed(290)],
  ['a text of 2000 code points', oak({ text: '😀'.repeat(2000) })],
  ['an id of 200 characters', oak({ text: 'brick', id: 'i'.repeat(200) })],
])('a message with %s is taken, and is one turn', async (_, message) => {
  expect(await sent(message)).toEqual([200, 1]);
});

test.each<[number, string, Sent]>([
  [401, 'no key', { body: said({ text: 'brick' }), headers: JSON_TYPE }],
  [401, 'a wrong key', { body: said({ text: 'brick' }), headers: { ...OAK, authorization: 'Bearer no' } }],
  [401, 'a wrong key and no JSON', { body: '{', headers: { ...OAK, authorization: 'Bearer no' } }],
  [401, 'the signature of another secret', signed(0, 'elm', OTHER)],
  [401, 'the signature of another crew', signed(0, 'oak')],
  [401, 'a signature of 310 s ago', signed(310)],
  [401, 'a signature of 310 s to come', signed(-310)],
  [400, 'half a body', { body: '{"id"', headers: OAK }],
  [413, 'a byte over 64 KiB', filled(WHOLE + 1)],
  [422, '64 KiB of one text', filled(WHOLE)],
  [415, 'another type', { body: said({ text: 'brick' }), headers: { ...OAK, 'content-type': 'text/plain' } }],
  [422, 'an empty text', oak({ text: '' })],
  [422, 'a text of 2001 code points', oak({ text: '😀'.repeat(2001) })],
  [422, 'neither text nor choice', oak({})],
  [422, 'a text and a choice', oak({ text: 'brick', choice: 'clay-brick' })],
  [422, 'a field nobody knows', oak({ text: 'brick', colour: 'red' })],
  [422, 'an empty id', oak({ text: 'brick', id: '' })],
  [422, 'an id of 201 characters', oak({ text: 'brick', id: 'i'.repeat(201) })],
])('%i for %s, and no turn is written', async (status, _, message) => {
  expect(await sent(message)).toEqual([status, 0]);
});
