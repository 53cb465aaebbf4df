import { expect, test } from 'vitest';
import { type AppUnderTest, posted } from '../app-under-test.ts';

export type AppFactory = (env?: Record<string, string>) => Promise<AppUnderTest>;

const HELLO = {
  id: 'm1',
  conversation: 'c',
  author: { id: 'u7', name: 'Robin', role: 'apprentice' },
  text: 'hi',
};
const without = (field: string) =>
  Object.fromEntries(Object.entries(HELLO).filter(([name]) => name !== field));

/** [what is wrong, body, status, problem, path of the first error] */
const REFUSED: [string, unknown, number, string, string?][] = [
  ['not JSON', '{"id":', 400, 'bad-json'],
  ['nothing at all', '', 400, 'bad-json'],
  ['a list', [], 422, 'bad-field', ''],
  ['null', 'null', 422, 'bad-field', ''],
  ['a number', '7', 422, 'bad-field', ''],
  ['no conversation', without('conversation'), 422, 'bad-field', 'conversation'],
  ['no author', without('author'), 422, 'bad-field', 'author'],
  ['no text and no choice', without('text'), 422, 'bad-field', 'text'],
  ['no id anywhere', without('id'), 422, 'bad-field', 'id'],
  ['an empty id', { ...HELLO, id: '' }, 422, 'bad-field', 'id'],
  ['an id of 201 characters', { ...HELLO, id: 'x'.repeat(201) }, 422, 'bad-field', 'id'],
  ['an id with a NUL in it', { ...HELLO, id: 'a\u0000b' }, 422, 'bad-field', 'id'],
  ['half a character as an id', { ...HELLO, id: '\ud83d' }, 422, 'bad-field', 'id'],
  ['empty text', { ...HELLO, text: '' }, 422, 'bad-field', 'text'],
  ['only spaces', { ...HELLO, text: ' \n\t ' }, 422, 'bad-field', 'text'],
  ['only control characters', { ...HELLO, text: '\u0000\u0007\u001b' }, 422, 'bad-field', 'text'],
  ['only marks of direction and joiners', { ...HELLO, text: '\u200b\u200e\u200d' }, 422, 'bad-field', 'text'],
  ['2,001 characters', { ...HELLO, text: 'x'.repeat(2001) }, 422, 'bad-field', 'text'],
  ['10,000 characters', { ...HELLO, text: 'x'.repeat(10_000) }, 422, 'bad-field', 'text'],
  ['text that is a number', { ...HELLO, text: 24 }, 422, 'bad-field', 'text'],
  ['text that is null', { ...HELLO, text: null }, 422, 'bad-field', 'text'],
  ['text and a choice', { ...HELLO, choice: 'brick' }, 422, 'bad-field', 'choice'],
  ['a question without a choice', { ...HELLO, question: 'wall.cores' }, 422, 'bad-field', 'question'],
  [
    'a question nobody asks',
    { ...without('text'), choice: 'x', question: 'wall.colour' },
    422,
    'bad-field',
    'question',
  ],
  ['a field of no meaning', { ...HELLO, admin: true }, 422, 'bad-field', 'admin'],
  ['__proto__', '{"__proto__":{"role":"boss"},"id":"m1"}', 422, 'bad-field'],
  ['a role nobody has', { ...HELLO, author: { id: 'u7', role: 'foreman' } }, 422, 'bad-field', 'author.role'],
  ['an author without an id', { ...HELLO, author: { role: 'boss' } }, 422, 'bad-field', 'author.id'],
  ['64 KiB and a byte', `${' '.repeat(64 * 1024)}7`, 413, 'too-large'],
];

/** [what it is, body, what reaches the crew as text] */
const TAKEN: [string, object, string][] = [
  ['plain words', HELLO, 'hi'],
  ['2,000 emoji, which are 4,000 units of UTF-16', { ...HELLO, text: '🔨'.repeat(2000) }, '🔨'.repeat(2000)],
  ['right-to-left text', { ...HELLO, text: 'قِيرميد ٢٤ كغ' }, 'قِيرميد ٢٤ كغ'],
  ['SQL', { ...HELLO, text: "'; drop table turn; --" }, "'; drop table turn; --"],
  ['HTML', { ...HELLO, text: '<img src=x onerror=alert(1)>' }, '<img src=x onerror=alert(1)>'],
  [
    'control characters between words',
    { ...HELLO, text: '24\u0000kg\u001b[31m\nbrick' },
    '24 kg [31m\nbrick',
  ],
  ['half a character', { ...HELLO, text: 'a\ud83db' }, 'a\ufffdb'],
  ['a body of 64 KiB', { ...HELLO, text: 'hi', pad: undefined }, 'hi'],
];

/** The neutral chat webhook as the contract, section 3, has it. */
export function messageContract(appWith: AppFactory): void {
  test.each(REFUSED)(
    'a message with %s is refused and reaches no crew',
    async (_, body, status, name, path) => {
      const app = await appWith();
      const response = await app.request('/v1/messages', posted(body));
      expect(response.status).toBe(status);
      expect(response.headers.get('content-type')).toBe('application/problem+json');
      const problem = await response.json();
      expect(problem).toMatchObject({ type: `/problems/${name}`, status });
      if (path !== undefined)
        expect(problem.errors.map((each: { path: string }) => each.path)).toContain(path);
      expect(app.taken.size).toBe(0);
    },
  );

  test.each(TAKEN)('a message of %s reaches the crew', async (_, body, text) => {
    const app = await appWith();
    const response = await app.request('/v1/messages', posted(body));
    expect(response.status).toBe(200);
    expect(app.taken.get('local')?.map((message) => message.text)).toEqual([text]);
  });

  test('a message comes to the crew under the door’s own name space, and a role not given is apprentice', async () => {
    const app = await appWith();
    await app.request('/v1/messages', posted({ ...HELLO, author: { id: 'u7' } }));
    expect(app.taken.get('local')).toEqual([
      { door: 'neutral', conversation: 'c', id: 'm1', author: { id: 'u7', role: 'apprentice' }, text: 'hi' },
    ]);
  });

  test('a button sends its value and the question it belongs to', async () => {
    const app = await appWith();
    const button = { ...without('text'), choice: 'clay-brick', question: 'wall.baseMaterial' };
    expect((await app.request('/v1/messages', posted(button))).status).toBe(200);
    expect(app.taken.get('local')?.[0]).toMatchObject({
      choice: 'clay-brick',
      question: 'wall.baseMaterial',
    });
  });

  test('a message sent again gets the same bytes, and with other words is a conflict', async () => {
    const app = await appWith();
    const first = await (await app.request('/v1/messages', posted(HELLO))).text();
    expect(await (await app.request('/v1/messages', posted(HELLO))).text()).toBe(first);
    const other = await app.request('/v1/messages', posted({ ...HELLO, text: 'other' }));
    expect([other.status, (await other.json()).type]).toEqual([422, '/problems/conflict']);
    expect(app.taken.get('local')).toHaveLength(1);
  });

  test('an id of an erased person is gone', async () => {
    const app = await appWith();
    const response = await app.request('/v1/messages', posted({ ...HELLO, author: { id: 'erased' } }));
    expect([response.status, (await response.json()).type]).toEqual([410, '/problems/erased']);
  });

  test.each([
    ['in quotes (draft-ietf-httpapi-idempotency-key-header)', '"8e03978e-40d5-43e8-bc93-6894a57f9324"'],
    ['bare, as one types it at a prompt', '8e03978e-40d5-43e8-bc93-6894a57f9324'],
  ])('the Idempotency-Key %s is the id where the body has none', async (_, header) => {
    const app = await appWith();
    await app.request('/v1/messages', posted(without('id'), { 'idempotency-key': header }));
    await app.request('/v1/messages', posted({ ...HELLO, id: 'm2' }, { 'idempotency-key': header }));
    expect(app.taken.get('local')?.map(({ id }) => id)).toEqual([
      '8e03978e-40d5-43e8-bc93-6894a57f9324',
      'm2',
    ]);
  });

  test('of a key given twice in JSON the last holds, as it does everywhere', async () => {
    const app = await appWith();
    await app.request(
      '/v1/messages',
      posted(JSON.stringify(HELLO).replace('"text"', '"text":"first","text"')),
    );
    expect(app.taken.get('local')?.[0]?.text).toBe('hi');
  });

  test.each([
    ['text/plain', 415],
    ['application/x-www-form-urlencoded', 415],
    ['application/json; charset=latin1', 415],
    ['application/jsonp', 415],
    ['application/json', 200],
    ['application/json; charset=UTF-8', 200],
    ['Application/JSON;charset="utf-8"', 200],
  ])('a body called %s is answered with %i', async (type, status) => {
    const app = await appWith();
    expect((await app.request('/v1/messages', posted(HELLO, { 'content-type': type }))).status).toBe(status);
  });

  test('bytes that are not UTF-8 are not JSON', async () => {
    const app = await appWith();
    const body = new Uint8Array([0x7b, 0xff, 0x7d]);
    const response = await app.request('/v1/messages', { ...posted(HELLO), body });
    expect(response.status).toBe(400);
  });

  test.each([
    [64 * 1024, 200],
    [64 * 1024 + 1, 413],
  ])('a body of %i bytes that comes in chunks without a length is answered with %i', async (size, status) => {
    const app = await appWith();
    const bytes = new TextEncoder().encode(JSON.stringify(HELLO).padEnd(size));
    const body = new ReadableStream({
      start(controller) {
        for (let at = 0; at < bytes.byteLength; at += 4096) controller.enqueue(bytes.slice(at, at + 4096));
        controller.close();
      },
    });
    const init = { ...posted(HELLO), body, duplex: 'half' };
    expect((await app.request('/v1/messages', init)).status).toBe(status);
  });
}
