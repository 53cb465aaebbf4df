import { afterAll, beforeAll, expect, test } from 'vitest';
import { z } from 'zod';
import { EXAMPLE_JOB } from '../../src/schema/example-job.ts';
import { posted } from './app-under-test.ts';
import { type RealApp, realApp } from './real-app.ts';

let app: RealApp;
let schemas: Record<string, object>;

beforeAll(async () => {
  app = await realApp();
  schemas = (await (await app.request('/openapi.json')).json()).components.schemas;
});

afterAll(() => app.close());

/** The served schema of that name, read back from its JSON as a client's generator would. */
function served(name: string): z.ZodType {
  const root = { $ref: `#/$defs/${name}`, $defs: schemas };
  return z.fromJSONSchema(
    JSON.parse(JSON.stringify(root).replaceAll('#/components/schemas/', '#/$defs/')) as never,
  );
}

const said = (id: string, conversation: string, text: string) =>
  posted({ id, conversation, author: { id: 'u7' }, text });
const A_KNOWN_STOP = { ...EXAMPLE_JOB, wall: { ...EXAMPLE_JOB.wall, baseMaterial: 'unknown' } };
const MEASURED = { marks: [{ id: 'A', fromLeftMm: 1025, upMm: 1020 }], fixing: { screw: { gauge: 14 } } };

/** [what answers, the served schema it is of, path, what is sent] */
const ANSWERS: [string, string, string, RequestInit][] = [
  ['a first message', 'Answer', '/v1/messages', said('m1', 'c', 'a 24 kg mirror on brick')],
  ['a stop', 'Answer', '/v1/messages', said('m1', 'stop', 'a 60 kg mirror on brick')],
  ['a trade question', 'Answer', '/v1/messages', said('m1', 'trade', 'what bit for a 14 gauge in brick?')],
  ['a plan', 'Plan', '/v1/plans', posted(EXAMPLE_JOB)],
  ['a plan that stops', 'Plan', '/v1/plans', posted(A_KNOWN_STOP)],
  ['a check', 'Check', '/v1/checks', posted({ job: EXAMPLE_JOB, measured: MEASURED })],
  ['a check of a stop', 'Check', '/v1/checks', posted({ job: A_KNOWN_STOP, measured: MEASURED })],
  ['no JSON', 'Problem', '/v1/messages', posted('{')],
  ['a missing field', 'Problem', '/v1/plans', posted({})],
  ['a wrong type of body', 'Problem', '/v1/checks', { method: 'POST', body: 'hello' }],
  ['an unknown plan', 'Problem', '/v1/plans/none', {}],
  ['an unknown address', 'Problem', '/nowhere', {}],
  ['a wrong method', 'Problem', '/v1/plans', { method: 'DELETE' }],
];

test.each(ANSWERS)(
  'what %s is answered with is of the served schema %s, read from its JSON alone',
  async (_, name, path, init) => {
    const body = await (await app.request(path, init)).json();
    expect(served(name).safeParse(body).error?.issues ?? []).toEqual([]);
    expect(served(name).safeParse({ ...body, surprise: 1 }).success).toBe(false);
  },
);

test('the described job and check are of the served schemas that they are examples of', () => {
  expect(served('Job').safeParse(EXAMPLE_JOB).error?.issues ?? []).toEqual([]);
  const check = { job: EXAMPLE_JOB, measured: MEASURED };
  expect(served('CheckRequest').safeParse(check).error?.issues ?? []).toEqual([]);
  expect(served('Job').safeParse({ ...EXAMPLE_JOB, wall: {} }).success).toBe(false);
});
