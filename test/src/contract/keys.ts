import { expect, test } from 'vitest';
import { KEYED, posted } from '../app-under-test.ts';
import type { AppFactory } from './messages.ts';

const HELLO = { id: 'm1', conversation: 'c', author: { id: 'u7' }, text: 'hi' };

/** [what is sent, Authorization, query, the crew it reaches or null] */
const CALLS: [string, string | null, string, string | null][] = [
  ['no key', null, '', null],
  ['a key', 'Bearer harbour-key', '', 'harbour'],
  ['a key with the scheme in other letters', 'bearer hill-key', '', 'hill'],
  ['a key kept here only as its hash', 'Bearer hashed-key', '', 'hashed'],
  ['a key and its own crew', 'Bearer harbour-key', '?crew=harbour', 'harbour'],
  ['a key and another crew', 'Bearer harbour-key', '?crew=hill', null],
  ['a wrong key', 'Bearer harbour-kez', '', null],
  ['the beginning of a key', 'Bearer harbour', '', null],
  ['a key in another scheme', 'Basic aGFyYm91cjpoYXJib3VyLWtleQ==', '', null],
  ['an empty key', 'Bearer ', '', null],
  [
    'the hash in place of the key',
    'Bearer sha256:a4ae87b73fa5645e6aee415a6f72be4dcbd99d057a7b40cb1b867c181d179260',
    '',
    null,
  ],
  ['a signing secret as a bearer key', 'Bearer whsec_MfKQ9r8GKYqrTwjUPD8ILPZIo2LaLaSw', '', null],
  ['only a crew', null, '?crew=harbour', null],
];

/** Keys: contract, section 2. */
export function keyContract(appWith: AppFactory): void {
  test.each(CALLS)('%s reaches the crew it belongs to, or none', async (_, authorization, query, crew) => {
    const app = await appWith(KEYED);
    const headers: Record<string, string> = authorization === null ? {} : { authorization };
    const response = await app.request(`/v1/messages${query}`, posted(HELLO, headers));
    expect(response.status).toBe(crew === null ? 401 : 200);
    expect([...app.taken.keys()]).toEqual(crew === null ? [] : [crew]);
  });

  test.each([
    ['not JSON', '{', {}],
    ['of the wrong type', '{}', { 'content-type': 'text/plain' }],
    ['too large', ' '.repeat(70_000), {}],
    ['fit for nothing', '{"a":1}', {}],
  ])('without a key it is 401 though the body is %s', async (_, body, headers) => {
    const app = await appWith(KEYED);
    for (const path of ['/v1/messages', '/v1/plans', '/v1/checks']) {
      const response = await app.request(path, posted(body, headers));
      expect([path, response.status, (await response.json()).type]).toEqual([
        path,
        401,
        '/problems/unauthorised',
      ]);
      expect(response.headers.get('www-authenticate')).toContain('Bearer');
    }
  });

  test('a plan is not read without a key, nor with the key of another crew', async () => {
    const app = await appWith(KEYED);
    expect((await app.request('/v1/plans/p1')).status).toBe(401);
    const other = await app.request('/v1/plans/p1', { headers: { authorization: 'Bearer hill-key' } });
    expect(other.status).toBe(404);
  });

  test('the log has the crew and the route, and neither key nor words nor ids', async () => {
    const app = await appWith(KEYED);
    const secretive = { ...HELLO, id: 'secret-id', text: 'secret words' };
    const headers = { authorization: 'Bearer harbour-key' };
    await app.request('/v1/messages?crew=harbour', posted(secretive, headers));
    await app.request('/v1/plans/secret-plan', { headers });
    await app.request('/v1/messages', posted(secretive, { authorization: 'Bearer secret-key' }));
    expect(app.lines).toMatchObject([
      { method: 'POST', route: '/v1/messages', status: 200, crew: 'harbour' },
      { method: 'GET', route: '/v1/plans/:id', status: 404, crew: 'harbour', problem: true },
      { method: 'POST', route: '/v1/messages', status: 401, problem: true },
    ]);
    expect(JSON.stringify(app.lines)).not.toMatch(/secret|harbour-key|words/);
  });
}
