import { afterAll, beforeAll, expect, test } from 'vitest';
import { loggedPlanSchema } from '../../src/schema/reply.ts';
import reference from '../fixtures/reference/dialogues.json' with { type: 'json' };
import { type RealApp, realApp, speaker } from './real-app.ts';

let app: RealApp;

beforeAll(async () => {
  app = await realApp();
});

afterAll(() => app.close());

test.each(reference.dialogues.map((each) => [each.id, each] as const))(
  'over HTTP the dialogue %s ends in a plan that is read back, all of it as described',
  async (id, { open, answers }) => {
    const say = speaker(app, id);
    const said: Record<string, string> = { ...answers };
    let heard = await say(open);
    for (let turn = 0; heard.plan === null && turn < 40; turn += 1)
      heard = await say(said[heard.awaiting ?? ''] ?? "don't know");
    const response = await app.request(`/v1/plans/${heard.plan}`);
    const plan = await response.json();
    expect([response.status, plan.conversation]).toEqual([200, id]);
    expect(loggedPlanSchema.safeParse(plan).error?.issues ?? []).toEqual([]);
  },
);

/** [what it is, what is said when the mass is asked for] */
const NO_MASS: [string, string][] = [
  ['negative', '-5 kg'],
  ['nothing', '0 kg'],
  ['absurd', '900 t'],
  ['absurd in kilograms', '900000 kg'],
  ['not a number', 'NaN kg'],
  ['infinite', 'Infinity kg'],
  ['a length', '840 mm'],
  ['2,000 characters of one letter', 'x'.repeat(2000)],
  ['control characters', '\u0000\u001b[2J\u0007 ??'],
  ['emoji', '🪞🔨🧱'],
  ['right-to-left', '\u202eقِيرميد\u202c'],
  ['SQL', "'); DROP TABLE turn;--"],
  ['HTML', '<script>alert(1)</script>'],
  ['a format string', '%s%n%x {{7*7}}'],
];

test.each(NO_MASS)(
  'asked for a mass, %s gets a clear answer, and no mass is recorded',
  async (what, words) => {
    const say = speaker(app, `mass ${what}`);
    let heard = await say('hanging a mirror on a plastered brick wall');
    for (let turn = 0; heard.awaiting !== 'piece.massKg' && turn < 12; turn += 1)
      heard = await say("don't know");
    expect(heard.awaiting).toBe('piece.massKg');
    const answer = await say(words);
    expect(answer.replies.map(({ text }) => text).join(' ')).toMatch(/\w{3}/);
    expect(answer.known).not.toHaveProperty('piece.massKg');
    expect((await say('24 kg')).known).toHaveProperty('piece.massKg', 24);
  },
);

test('a name of SQL and markup is a name', async () => {
  const author = { id: "u'; drop table turn;--", name: '<b>Robin</b>\u0000', role: 'boss' };
  const say = speaker(app, 'names');
  expect((await say({ text: 'a 24 kg mirror', author })).turn).toBe(1);
  expect((await say({ text: 'on brick', author })).turn).toBe(2);
});

test('a button of another time changes nothing that is not its own', async () => {
  const say = speaker(app, 'buttons');
  const first = await say('a 24 kg mirror');
  const picked = await say({ choice: 'clay-brick', question: 'wall.baseMaterial' });
  expect(picked.known).toMatchObject({ wall: { baseMaterial: 'clay-brick' }, piece: { massKg: 24 } });
  const stale = await say({ choice: 'yes', question: 'confirm' });
  expect([stale.known, stale.plan]).toEqual([picked.known, first.plan]);
  const nonsense = await say({ choice: 'no-such-value', question: 'wall.cores' });
  expect(nonsense.known).toEqual(picked.known);
  expect(nonsense.replies[0]?.text).toMatch(/no answer to wall\.cores: one of solid, .*Nothing is changed/);
});
