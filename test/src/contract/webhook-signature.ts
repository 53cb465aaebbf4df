import { Webhook } from 'standardwebhooks';
import { expect, test } from 'vitest';
import { hexOf, hmacSha256 } from '../../../src/who/digest.ts';
import { heldKey } from '../../../src/who/keys.ts';
import { isSignedBy } from '../../../src/who/webhook-signature.ts';
import cases from '../../fixtures/reference/neutral-door-cases.json' with { type: 'json' };
import { KEYED, posted } from '../app-under-test.ts';
import type { AppFactory } from './messages.ts';

const SECRET = 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw';
const MESSAGE = { conversation: 'c', author: { id: 'u7' }, text: 'hi' };
/** The time, id, body and signature of the Standard Webhooks repository's own test. */
const VECTOR = {
  nowS: 1614265330,
  id: 'msg_p5jXN8AQM9LWM0D4loKWxJek',
  body: '{"test": 2432232314}',
  signature: 'v1,g0hM9SsE+OTPJTGt/tmIKtSyZlE3uFJELVlNIOLJ1OE=',
};

const bytes = (text: string) => new TextEncoder().encode(text);
const row = (id: string) => cases.find((each) => each.id === id);

async function verifies(signatures: string, body: string, atS: number, nowS: number): Promise<boolean> {
  const key = await heldKey(`harbour:${SECRET}`);
  if (typeof key === 'string') throw new Error(key);
  const signed = { id: VECTOR.id, timestamp: String(atS), signatures };
  return isSignedBy([key], 'harbour', signed, bytes(body), nowS * 1000);
}

/** Standard Webhooks 1.0.0, against its published vector and the standardwebhooks package. */
export function webhookSignatureContract(appWith: AppFactory): void {
  test.each([
    ['hmac-rfc4231-1', new Uint8Array(20).fill(0x0b), 'Hi There'],
    ['hmac-rfc4231-2', bytes('Jefe'), 'what do ya want for nothing?'],
  ])('HMAC-SHA256 gives the published digest of %s', async (id, key, data) => {
    expect(hexOf(await hmacSha256(key, bytes(data)))).toBe(row(id)?.expected.hex);
  });

  test.each([
    ['the published signature', VECTOR.signature, VECTOR.body, VECTOR.nowS, true],
    [
      'stdwh-002: one good signature among others',
      String(row('stdwh-002')?.inputs.header),
      VECTOR.body,
      VECTOR.nowS,
      true,
    ],
    [
      'stdwh-003: an unknown version',
      String(row('stdwh-003')?.inputs.header),
      VECTOR.body,
      VECTOR.nowS,
      false,
    ],
    [
      'stdwh-007: an ed25519 signature',
      String(row('stdwh-007')?.expected.signature),
      VECTOR.body,
      VECTOR.nowS,
      false,
    ],
    ['stdwh-008: an empty body', String(row('stdwh-008')?.expected.signature), '', VECTOR.nowS, true],
    ['a body changed by one letter', VECTOR.signature, '{"test": 2432232315}', VECTOR.nowS, false],
    ['300 s late', VECTOR.signature, VECTOR.body, VECTOR.nowS + 300, true],
    ['stdwh-004: 301 s late', VECTOR.signature, VECTOR.body, Number(row('stdwh-004')?.inputs.now), false],
    ['300 s early', VECTOR.signature, VECTOR.body, VECTOR.nowS - 300, true],
    ['301 s early', VECTOR.signature, VECTOR.body, VECTOR.nowS - 301, false],
    ['not base64', 'v1,***', VECTOR.body, VECTOR.nowS, false],
    ['nothing', '', VECTOR.body, VECTOR.nowS, false],
  ])('%s verifies or not', async (_, signatures, body, nowS, expected) => {
    expect(await verifies(signatures, body, VECTOR.nowS, nowS)).toBe(expected);
  });

  const signedBy = (secret: string, id: string, atS: number, body: string) => ({
    'webhook-id': id,
    'webhook-timestamp': String(atS),
    'webhook-signature': new Webhook(secret).sign(id, new Date(atS * 1000), body),
  });

  test('a message signed by the standardwebhooks package is taken, its id being webhook-id', async () => {
    const app = await appWith(KEYED);
    const body = JSON.stringify({ ...MESSAGE, id: 'the body’s own' });
    const headers = signedBy(SECRET, 'msg_1', VECTOR.nowS, body);
    const response = await app.request('/v1/messages?crew=harbour', posted(body, headers));
    expect(response.status).toBe(200);
    expect(app.taken.get('harbour')?.map(({ id }) => id)).toEqual(['msg_1']);
  });

  const body = JSON.stringify(MESSAGE);
  const good = signedBy(SECRET, 'msg_1', VECTOR.nowS, body);
  const another = `whsec_${btoa('another secret of 24 bytes')}`;
  test.each([
    ['without a crew', '', good, body],
    ['for another crew', '?crew=hill', good, body],
    ['for a crew nobody has', '?crew=nobody', good, body],
    ['under another secret', '?crew=harbour', signedBy(another, 'msg_1', VECTOR.nowS, body), body],
    ['with another body', '?crew=harbour', good, `${body} `],
    ['with another id', '?crew=harbour', { ...good, 'webhook-id': 'msg_2' }, body],
    ['with a point in its id', '?crew=harbour', signedBy(SECRET, 'msg.1', VECTOR.nowS, body), body],
    ['without a timestamp', '?crew=harbour', { ...good, 'webhook-timestamp': '' }, body],
    ['from long ago', '?crew=harbour', signedBy(SECRET, 'msg_1', VECTOR.nowS - 301, body), body],
    ['from the future', '?crew=harbour', signedBy(SECRET, 'msg_1', VECTOR.nowS + 301, body), body],
    ['with a good signature and a bad key', '?crew=harbour', { ...good, authorization: 'Bearer no' }, body],
    ['with a bad signature and a good key', '', { ...good, authorization: 'Bearer hill-key' }, body],
    ['badly over a body too large', '?crew=harbour', good, ' '.repeat(70_000)],
    ['badly over a body that is not JSON', '?crew=harbour', good, '{'],
  ])('a request signed %s is 401 and reaches no crew', async (_, query, headers, sent) => {
    const app = await appWith(KEYED);
    const response = await app.request(`/v1/messages${query}`, posted(sent, headers));
    expect(response.status).toBe(401);
    expect(app.taken.size).toBe(0);
  });

  test.each([
    ['too large', ' '.repeat(70_000), 413],
    ['not JSON', '{', 400],
    ['refused by the schema', '{}', 422],
  ])('a well signed body that is %s is answered with its own problem', async (_, sent, status) => {
    const app = await appWith(KEYED);
    const headers = signedBy(SECRET, 'msg_1', VECTOR.nowS, sent);
    const response = await app.request('/v1/messages?crew=harbour', posted(sent, headers));
    expect(response.status).toBe(status);
  });

  test('a plan is read with a signature over the empty body', async () => {
    const app = await appWith(KEYED);
    const headers = signedBy(SECRET, 'msg_1', VECTOR.nowS, '');
    expect((await app.request('/v1/plans/p1?crew=harbour', { headers })).status).toBe(404);
  });
}
