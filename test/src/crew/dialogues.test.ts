import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';

import { begin, resume, step } from '../../../flows/step.ts';
import { type Crew, openCrew } from '../../../src/crew.ts';
import { openNodeStore } from '../../../src/ledger/node-store.ts';
import type { PlanJson } from '../../../src/schema/plan-json.ts';
import { tempFolder } from '../ledger/temp-folder.ts';
import { type Body, message } from './message.ts';

type Dialogue = {
  id: string;
  open: string;
  answers: Record<string, string>;
  expect: { marks: [number, number][]; verdict: string[] };
};

const FILE = new URL('../../fixtures/reference/dialogues.json', import.meta.url);
const DIALOGUES: Dialogue[] = JSON.parse(readFileSync(FILE, 'utf8')).dialogues;

/** The dialogues' own limit. */
const MOST_MESSAGES = 40;

const newCrew = (): Crew => {
  const store = openNodeStore(join(tempFolder(), 'crew.sqlite'), () => {});
  onTestFinished(() => store.close());
  return openCrew({ store, flow: { begin, resume, step }, now: () => '2026-03-02T09:00:00Z' });
};

/** Holds a dialogue in a crew, and gives every body. `before` is done before each message. */
const held = (crew: Crew, { id, open, answers }: Dialogue, before = () => {}): string[] => {
  const bodies: string[] = [];
  let say = open;
  while (bodies.length < MOST_MESSAGES) {
    before();
    const handled = crew.handle(message(id, `${bodies.length}`, say));
    if (!handled.ok) throw new Error(handled.detail);
    bodies.push(handled.body);
    const { plan, awaiting } = JSON.parse(handled.body) as Body;
    if (plan !== null) break;
    say = answers[awaiting ?? ''] ?? "don't know";
  }
  return bodies;
};

const withoutPlanId = (body: string): string => {
  const { plan } = JSON.parse(body) as Body;
  return plan === null ? body : body.replaceAll(plan, 'a-plan');
};

test.each(DIALOGUES)(
  '$id reads the same when its crew forgets and rebuilds it before each message',
  (dialogue) => {
    const remembering = held(newCrew(), dialogue);
    const crew = newCrew();
    const rebuilt = held(crew, dialogue, crew.forget);
    expect(rebuilt.map(withoutPlanId)).toEqual(remembering.map(withoutPlanId));
  },
);

test.each([
  ['in the order of the reference', DIALOGUES],
  ['in the other order', DIALOGUES.toReversed()],
])('held one after another by one crew, %s, each dialogue ends in its own marks', (_, dialogues) => {
  const crew = newCrew();
  for (const dialogue of dialogues) {
    const { plan } = JSON.parse(held(crew, dialogue).at(-1) ?? '') as Body;
    const logged = JSON.parse(crew.plan(plan ?? '') ?? '{}') as PlanJson;
    expect(dialogue.expect.verdict, dialogue.id).toContain(logged.verdict);
    expect(logged.cautions.flatMap((caution) => caution.basis)).toContain('our-choice');
    expect(logged.marks, dialogue.id).toHaveLength(dialogue.expect.marks.length);
    for (const [at, [fromLeft, up]] of dialogue.expect.marks.entries()) {
      expect(Math.abs((logged.marks[at]?.fromLeftMm ?? 0) - fromLeft), dialogue.id).toBeLessThanOrEqual(1);
      expect(Math.abs((logged.marks[at]?.upMm ?? 0) - up), dialogue.id).toBeLessThanOrEqual(1);
    }
  }
});
