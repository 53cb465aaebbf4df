import { env, evictDurableObject, SELF } from 'cloudflare:test';
import { expect, test } from 'vitest';
import type { Plan } from '../../core/plan-shape.ts';
import reference from '../fixtures/reference/dialogues.json' with { type: 'json' };

type Dialogue = {
  id: string;
  open: string;
  answers: Record<string, string>;
  expect: { marks: [number, number][]; verdict: string[] };
};

const DIALOGUES = reference.dialogues as unknown as Dialogue[];

/** The dialogues' own limit. */
const MOST_MESSAGES = 40;

type Answer = { turn: number; awaiting: string | null; known: Record<string, unknown>; plan: string | null };

const send = (conversation: string, id: string, text: string): Promise<Response> =>
  SELF.fetch('http://127.0.0.1/v1/messages', {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({ conversation, id, text, author: { id: 'u7', role: 'apprentice' } }),
  });

const answer = async (conversation: string, id: string, text: string): Promise<Answer> =>
  (await (await send(conversation, id, text)).json()) as Answer;

test('the Worker takes a message, answers, and answers the same id with the same bytes', async () => {
  const first = await send('hall', 'm1', '24 kg mirror');
  expect(first.status).toBe(200);
  const body = await first.text();
  expect(JSON.parse(body)).toMatchObject({ conversation: 'hall', turn: 1, plan: null });
  await send('hall', 'm2', 'brick wall');
  expect(await (await send('hall', 'm1', '24 kg mirror')).text()).toBe(body);
  expect((await send('hall', 'm1', '25 kg mirror')).status).toBe(422);
});

test('the Worker goes on where it was when its crew has been out of memory', async () => {
  const before = await answer('stairs', 'm1', '24 kg mirror');
  await evictDurableObject(env.CREW.getByName('local'));
  const after = await answer('stairs', 'm2', 'help');
  expect(after).toMatchObject({ turn: 2, awaiting: before.awaiting, known: before.known });
});

test('two messages at once are one after the other, and twice the same one is one turn', async () => {
  const ids = ['m1', 'm2', 'm3', 'm1', 'm2', 'm3'];
  const answers = await Promise.all(ids.map((id) => answer('porch', id, 'hello')));
  expect(new Set(answers.map((one) => one.turn))).toEqual(new Set([1, 2, 3]));
  for (const [at, id] of ids.entries()) expect(answers[at]).toEqual(answers[ids.indexOf(id)]);
});

test('the Worker without keys answers only to the names of this machine', async () => {
  const elsewhere = await SELF.fetch('http://wallhand.test/v1/messages', { method: 'POST' });
  expect(elsewhere.status).toBeGreaterThanOrEqual(400);
  expect(elsewhere.headers.get('content-type')).toBe('application/problem+json');
});

test('an unknown plan is not found, and the description and the page are served', async () => {
  expect((await SELF.fetch('http://127.0.0.1/v1/plans/nothing')).status).toBe(404);
  expect((await SELF.fetch('http://127.0.0.1/openapi.json')).status).toBe(200);
  expect((await SELF.fetch('http://127.0.0.1/')).headers.get('content-type')).toMatch(/^text\/html/);
});

test.each(DIALOGUES)(
  '$id, held with the Worker, ends in its marks',
  async ({ id, open, answers, expect: wanted }) => {
    let last = await answer(id, '0', open);
    for (let said = 1; said < MOST_MESSAGES && last.plan === null; said++)
      last = await answer(id, `${said}`, answers[last.awaiting ?? ''] ?? "don't know");
    const plan = await SELF.fetch(`http://127.0.0.1/v1/plans/${last.plan}`);
    const { verdict, marks } = (await plan.json()) as Pick<Plan, 'verdict' | 'marks'>;
    expect(wanted.verdict).toContain(verdict);
    expect(marks).toHaveLength(wanted.marks.length);
    for (const [at, [fromLeft, up]] of wanted.marks.entries()) {
      expect(Math.abs((marks[at]?.fromLeftMm ?? 0) - fromLeft)).toBeLessThanOrEqual(1);
      expect(Math.abs((marks[at]?.upMm ?? 0) - up)).toBeLessThanOrEqual(1);
    }
  },
);
