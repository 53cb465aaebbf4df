import { afterAll, beforeAll, expect, test } from 'vitest';
import { loggedPlanSchema } from '../../src/schema/reply.ts';
import { posted } from './app-under-test.ts';
import { type RealApp, realApp, speaker } from './real-app.ts';

let app: RealApp;

beforeAll(async () => {
  app = await realApp();
});

afterAll(() => app.close());

/** All that a plan needs, in the order it is asked for. */
const SAID = [
  'hanging a 24 kg mirror on a plastered brick wall',
  'australia, built 2010, its our own house',
  'none of these',
  'nothing under it',
  'none on either side',
  '840 x 1120',
  'two rings 95 in and 240 down',
  '12 mil plaster',
  '2700',
  'centred, bottom 800 above the floor',
  'solid',
  'two of us',
];

async function planned(conversation: string) {
  const say = speaker(app, conversation);
  let told = await say(SAID[0] ?? '');
  for (const words of SAID.slice(1)) told = await say(words);
  expect(told.awaiting).toBe('confirm');
  return { say, summary: told };
}

const logged = async (id: string | null) => (await app.request(`/v1/plans/${id}`)).json();

test('a yes logs the plan with every warning spoken; the steps wait for them to be acknowledged, once for all', async () => {
  const { say, summary } = await planned('yes');
  expect(summary.plan).toBeNull();
  const early = await say({ choice: 'yes', question: 'acknowledge' });
  expect([early.awaiting, early.plan]).toEqual(['confirm', null]);

  const yes = await say({ choice: 'yes', question: 'confirm' });
  const plan = loggedPlanSchema.parse(await logged(yes.plan));
  expect(plan).toMatchObject({ id: yes.plan, conversation: 'yes', job: yes.known });
  expect(Number.isNaN(Date.parse(plan.at))).toBe(false);
  const warned = plan.cautions.filter(({ severity }) => severity === 'warn').map(({ id }) => id);
  const spoken = yes.replies.filter(({ kind }) => kind === 'caution').map(({ id }) => id);
  expect(warned.length).toBeGreaterThan(0);
  expect(spoken).toEqual(expect.arrayContaining(warned));
  const isStep = ({ text }: { text: string }) => plan.steps.some((step) => text.includes(step));
  expect([yes.awaiting, yes.replies.some(isStep)]).toEqual(['acknowledge', false]);

  const late = await say({ choice: 'yes', question: 'confirm' });
  expect([late.awaiting, late.plan]).toEqual(['acknowledge', yes.plan]);
  const read = await say({ choice: 'yes', question: 'acknowledge' });
  expect([read.awaiting, read.plan, read.replies.some(isStep)]).toEqual([null, yes.plan, true]);
  for (const question of ['confirm', 'acknowledge']) {
    const stale = await say({ choice: 'yes', question });
    expect([stale.awaiting, stale.plan, stale.known]).toEqual([null, yes.plan, yes.known]);
  }
});

test('a plan made of the logged job at once is the logged plan', async () => {
  const { say } = await planned('at once');
  const { plan: planId } = await say('yes');
  const { id, job, conversation, at, ...plan } = await logged(planId);
  expect([id, conversation, typeof at]).toEqual([planId, 'at once', 'string']);
  const atOnce = await (await app.request('/v1/plans', posted(job))).json();
  // Beside it a whole job is told what would change if an assumption were wrong.
  const assumptions = atOnce.assumptions.map(({ ifWrong: _, ...each }: { ifWrong?: unknown }) => each);
  expect({ ...atOnce, assumptions }).toEqual(plan);
});

test('after the plan a message of before still gets its first answer, byte for byte', async () => {
  const { say } = await planned('again');
  await say('yes');
  const first = { id: 'm1', conversation: 'again', author: { id: 'u7', role: 'apprentice' }, text: SAID[0] };
  const twice = [
    await app.request('/v1/messages', posted(first)),
    await app.request('/v1/messages', posted(first)),
  ];
  const [one, two] = await Promise.all(twice.map((response) => response.text()));
  expect(one).toBe(two);
  expect(JSON.parse(one ?? '')).toMatchObject({ turn: 1, plan: null });
});

test('another piece after the plan is asked about; a new one keeps building, wall and crew', async () => {
  const { say } = await planned('another');
  const { known } = await say('yes');
  await say('yes');
  const asked = await say('now a 12 kg picture, 600 x 800');
  expect(asked.replies.find(({ kind }) => kind === 'question')?.text).toMatch(/new .*or change/);
  expect(asked.known).toEqual(known);
  const fresh = await say('a new one');
  expect(fresh.plan).toBeNull();
  expect(fresh.known).toMatchObject({
    building: { country: 'AU', yearBuilt: 2010 },
    wall: { baseMaterial: 'clay-brick', cores: 'solid', widthMm: 2700 },
    crew: { people: 2 },
    piece: { kind: 'picture', massKg: 12, widthMm: 600, heightMm: 800 },
  });
  expect(fresh.known).not.toHaveProperty('place');
  expect(fresh.known).not.toHaveProperty('piece.hanging');
});

test.each([
  ['over a cot', 'hanging a mirror on a wall over a cot'],
  ['over 50 kg', 'a 60 kg mirror on brick'],
  ['in a shower', 'mirror in the shower, tiles on brick'],
])(
  'a job %s is logged as a stop as soon as it is known, with no mark and what would clear it',
  async (what, words) => {
    const told = await speaker(app, what)(words);
    expect(told.replies.some(({ kind, severity }) => kind === 'caution' && severity === 'stop')).toBe(true);
    expect(told.replies).toContainEqual(
      expect.objectContaining({ kind: 'plan', id: told.plan, verdict: 'stop' }),
    );
    const plan = loggedPlanSchema.parse(await logged(told.plan));
    expect([plan.verdict, plan.marks, plan.fixing, plan.steps]).toEqual(['stop', [], null, []]);
    expect(plan.clear.length).toBeGreaterThan(0);
  },
);
