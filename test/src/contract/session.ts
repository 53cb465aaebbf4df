import { expect, test } from 'vitest';
import { KEYED, posted } from '../app-under-test.ts';
import type { AppFactory } from './messages.ts';

const HELLO = { id: 'm1', conversation: 'c', author: { id: 'u7' }, text: 'hi' };
const OWN = 'http://localhost';

function keyGiven(key: string, headers: Record<string, string> = {}): RequestInit {
  return {
    method: 'POST',
    headers: { 'content-type': 'application/x-www-form-urlencoded', origin: OWN, ...headers },
    body: new URLSearchParams({ key }).toString(),
  };
}

async function cookieOf(response: Response): Promise<string> {
  return (response.headers.get('set-cookie') ?? '').split(';')[0] ?? '';
}

/** The chat page of a server with keys: contract, section 1. */
export function sessionContract(appWith: AppFactory): void {
  test('the chat page asks for a key once, then keeps a cookie that holds no key', async () => {
    const app = await appWith(KEYED);
    expect(await (await app.request('/')).text()).toContain('type="password"');
    const kept = await app.request('/session', keyGiven('harbour-key'));
    expect([kept.status, kept.headers.get('location')]).toEqual([303, '/']);
    const set = kept.headers.get('set-cookie') ?? '';
    expect(set).toMatch(/HttpOnly/);
    expect(set).toMatch(/SameSite=Strict/);
    expect(set).not.toContain('harbour-key');
    const cookie = await cookieOf(kept);
    expect(await (await app.request('/', { headers: { cookie } })).text()).not.toContain('type="password"');
    const said = await app.request('/v1/messages', posted(HELLO, { cookie, origin: OWN }));
    expect(said.status).toBe(200);
    expect([...app.taken.keys()]).toEqual(['harbour']);
  });

  test('over TLS the cookie is never sent in the clear', async () => {
    const app = await appWith(KEYED);
    const kept = await app.request('/session', keyGiven('harbour-key', { 'x-forwarded-proto': 'https' }));
    expect(kept.headers.get('set-cookie')).toMatch(/Secure/);
  });

  test.each([
    ['a wrong key', 'no', OWN, 401],
    ['no key', '', OWN, 401],
    ['a signing secret', 'whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw', OWN, 401],
    ['a key sent by another site', 'harbour-key', 'https://wall.example', 403],
  ])('%s keeps nothing', async (_, key, origin, status) => {
    const app = await appWith(KEYED);
    const response = await app.request('/session', keyGiven(key, { origin }));
    expect([response.status, response.headers.get('set-cookie')]).toEqual([status, null]);
  });

  test.each<[string, Record<string, string>, (cookie: string) => string, number]>([
    ['from another site', { origin: 'https://wall.example' }, (cookie) => cookie, 0],
    ['without saying from where', {}, (cookie) => cookie, 0],
    ['for another crew', { origin: OWN }, (cookie) => cookie.replace('harbour', 'hill'), 0],
    ['that lasts longer', { origin: OWN }, (cookie) => cookie.replace(/\.(\d+)\./, '.9999999999.'), 0],
    ['without its signature', { origin: OWN }, (cookie) => cookie.replace(/\.[^.]*$/, '.'), 0],
    ['of nothing', { origin: OWN }, () => 'wallhand=', 0],
    ['after half a year', { origin: OWN }, (cookie) => cookie, 181],
  ])('a cookie %s opens nothing', async (_, headers, changed, days) => {
    const app = await appWith(KEYED);
    const cookie = changed(await cookieOf(await app.request('/session', keyGiven('harbour-key'))));
    app.clock.now += days * 24 * 60 * 60 * 1000;
    const response = await app.request('/v1/messages', posted(HELLO, { ...headers, cookie }));
    expect(response.status).toBe(401);
    expect(app.taken.size).toBe(0);
  });

  test('a key that is withdrawn ends the cookies it opened, and another secret ends them all', async () => {
    const cookie = await cookieOf(await (await appWith(KEYED)).request('/session', keyGiven('harbour-key')));
    const headers = { cookie, origin: OWN };
    const withdrawn = await appWith({ ...KEYED, WALLHAND_KEYS: 'harbour:new-key,hill:hill-key' });
    expect((await withdrawn.request('/v1/messages', posted(HELLO, headers))).status).toBe(401);
    const resigned = await appWith({ ...KEYED, WALLHAND_SECRET: 'another secret of the tests' });
    expect((await resigned.request('/v1/messages', posted(HELLO, headers))).status).toBe(401);
  });

  test('without keys there is no key to give', async () => {
    const app = await appWith();
    expect((await app.request('/session', keyGiven('harbour-key'))).status).toBe(404);
    expect(await (await app.request('/')).text()).not.toContain('type="password"');
  });
}
