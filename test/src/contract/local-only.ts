import { expect, test } from 'vitest';
import { posted } from '../app-under-test.ts';
import type { AppFactory } from './messages.ts';

const HELLO = { id: 'm1', conversation: 'c', author: { id: 'u7' }, text: 'hi' };

/** [Host, Origin, status] */
const CALLS: [string, string | null, number][] = [
  ['127.0.0.1:8080', null, 200],
  ['localhost', null, 200],
  ['LOCALHOST:8080', null, 200],
  ['[::1]:8080', null, 200],
  ['wall.example', null, 403],
  ['localhost.wall.example', null, 403],
  ['127.0.0.1.wall.example:8080', null, 403],
  ['user@localhost', null, 403],
  ['0.0.0.0:8080', null, 403],
  ['192.168.1.7:8080', null, 403],
  ['127.0.0.1:8080', 'http://127.0.0.1:8080', 200],
  ['127.0.0.1:8080', 'http://127.0.0.1:9090', 403],
  ['127.0.0.1:8080', 'http://localhost:8080', 403],
  ['127.0.0.1:8080', 'https://wall.example', 403],
  ['127.0.0.1:8080', 'null', 403],
  ['127.0.0.1:8080', '', 403],
];

/** A server without keys: contract, section 1. */
export function localOnlyContract(appWith: AppFactory): void {
  test.each(CALLS)(
    'without keys a call to %s from a page of %s is answered with %i',
    async (host, origin, status) => {
      const app = await appWith();
      const headers: Record<string, string> = { host, ...(origin !== null && { origin }) };
      const said = await app.request('/v1/messages', posted(HELLO, headers));
      const read = await app.request('/openapi.json', { headers });
      expect([said.status, read.status]).toEqual([status, status]);
      expect(app.taken.size).toBe(status === 200 ? 1 : 0);
    },
  );

  test('without keys there is one crew, local, and no other can be named', async () => {
    const app = await appWith();
    expect((await app.request('/v1/messages?crew=local', posted(HELLO))).status).toBe(200);
    expect((await app.request('/v1/messages?crew=harbour', posted(HELLO))).status).toBe(401);
    expect([...app.taken.keys()]).toEqual(['local']);
  });
}
