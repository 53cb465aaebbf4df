import { Validator } from '@seriousme/openapi-schema-validator';
import { expect, test } from 'vitest';
import { BODIES, type SchemaName } from '../../src/http/bodies.ts';
import { openApi } from '../../src/openapi/openapi.ts';
import { EXAMPLE_JOB } from '../../src/schema/example-job.ts';
import { appUnderTest, KEYED, posted } from './app-under-test.ts';

type Described = {
  paths: Record<string, Record<string, { responses: Record<string, Response3>; parameters?: unknown[] }>>;
  components: { schemas: Record<string, object> };
};
type Response3 = { content?: Record<string, { schema: { $ref?: string } }> };

const HELLO = { id: 'm1', conversation: 'c', author: { id: 'u7' }, text: 'hi' };
const CHECK = { job: EXAMPLE_JOB, measured: { marks: [{ id: 'A', fromLeftMm: 1025, upMm: 1020 }] } };
const KEY = { authorization: 'Bearer harbour-key' };
const FORM = { 'content-type': 'application/x-www-form-urlencoded' };
const BIG = ' '.repeat(70_000);

/** Calls that bring out every status a path is described to have, on a server without keys and on one with. */
const CALLS: [string, string, string, RequestInit, Record<string, string>?][] = [
  ['get', '/', '/', {}],
  ['get', '/', '/', { headers: { host: 'wall.example' } }],
  ['post', '/session', '/session', { method: 'POST', body: 'key=harbour-key', headers: FORM }, KEYED],
  ['post', '/session', '/session', { method: 'POST', body: 'key=no', headers: FORM }, KEYED],
  ['post', '/session', '/session', { method: 'POST', body: BIG, headers: FORM }, KEYED],
  [
    'post',
    '/session',
    '/session',
    { method: 'POST', headers: { ...FORM, origin: 'http://a.example' } },
    KEYED,
  ],
  ['post', '/session', '/session', { method: 'POST', headers: FORM }],
  ...['/v1/messages', '/v1/plans', '/v1/checks'].flatMap(
    (path): [string, string, string, RequestInit, Record<string, string>?][] => [
      [
        'post',
        path,
        path,
        posted({ '/v1/messages': HELLO, '/v1/plans': EXAMPLE_JOB, '/v1/checks': CHECK }[path]),
      ],
      ['post', path, path, posted('{'), {}],
      ['post', path, path, posted({}, KEY), KEYED],
      ['post', path, path, posted({}), KEYED],
      ['post', path, path, posted({}, { 'content-type': 'text/plain' })],
      ['post', path, path, posted(BIG)],
      ['post', path, path, posted({}, { host: 'wall.example' })],
    ],
  ),
  ['post', '/v1/messages', '/v1/messages', posted({ ...HELLO, author: { id: 'erased' } })],
  ['get', '/v1/plans/{id}', '/v1/plans/p1', {}],
  ['get', '/v1/plans/{id}', '/v1/plans/p2', {}],
  ['get', '/v1/plans/{id}', '/v1/plans/p1', {}, KEYED],
  ['get', '/v1/plans/{id}', '/v1/plans/p1', { headers: { host: 'wall.example' } }],
  ['get', '/openapi.json', '/openapi.json', {}],
  ['get', '/openapi.json', '/openapi.json', { headers: { host: 'wall.example' } }],
  ['get', '/healthz', '/healthz', {}],
  ['get', '/healthz', '/healthz', { headers: { host: 'wall.example' } }],
];

const fetched = async (env: Record<string, string>): Promise<Described> =>
  (await (await appUnderTest(env)).request('/openapi.json')).json();

test.each([
  ['without keys', {}],
  ['with keys', KEYED],
])('the description of a server %s is OpenAPI 3.1 by an independent validator', async (_, env) => {
  const result = await new Validator().validate(await fetched(env));
  expect(result).toEqual({ valid: true });
});

test.each(CALLS)(
  '%s %s: what %s answers is described, and its body is of the described shape',
  async (method, path, at, init, env = {}) => {
    const app = await appUnderTest(env);
    const response = await app.request(at, init);
    const described = (await fetched(env)).paths[path]?.[method]?.responses[String(response.status)];
    expect(described, `${method} ${path} ${response.status}`).toBeDefined();
    const type = response.headers.get('content-type')?.split(';')[0] ?? '';
    expect(Object.keys(described?.content ?? {})).toEqual(type === '' ? [] : [type]);
    const name = described?.content?.[type]?.schema.$ref?.split('/').at(-1) as SchemaName | undefined;
    const body = await response.text();
    if (name) expect(BODIES[name].safeParse(JSON.parse(body)).error?.issues ?? []).toEqual([]);
  },
);

test('no status is described that no call brings out, but a fault', async () => {
  const seen = new Set(['500']);
  for (const [method, path, at, init, env = {}] of CALLS) {
    const response = await (await appUnderTest(env)).request(at, init);
    seen.add(`${method} ${path} ${response.status}`);
  }
  const described = Object.entries((await fetched(KEYED)).paths).flatMap(([path, methods]) =>
    Object.entries(methods).flatMap(([method, { responses }]) =>
      Object.keys(responses).map((status) => (status === '500' ? status : `${method} ${path} ${status}`)),
    ),
  );
  expect([...new Set(described)].sort()).toEqual([...seen].sort());
});

test('every schema that is referred to is there', () => {
  const whole = openApi(true) as Described;
  const text = JSON.stringify(whole);
  const names = [...text.matchAll(/"#\/components\/schemas\/([^"]+)"/g)].map(([, name]) => name ?? '');
  expect(names.filter((name) => !Object.hasOwn(whole.components.schemas, name))).toEqual([]);
  expect(text).not.toContain('$defs');
});
