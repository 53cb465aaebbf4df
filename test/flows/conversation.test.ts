import { describe, expect, test } from 'vitest';
import { flowOf } from '../../flows/flow.ts';
import { ANSWERS, plainParts } from './plain-parts.ts';
import { aloud, questionIn, talk } from './talk.ts';

const flow = flowOf(plainParts);
const ALL = ANSWERS.map(([text]) => text);

/** A conversation with a plan, its warning acknowledged. */
function planned() {
  const held = talk(flow);
  held.all(...ALL, 'yes', 'yes');
  return held;
}

describe('a conversation', () => {
  test('asks for what stops the job before anything has to be measured', () => {
    const held = talk(flow);
    const asked = ALL.map((text) => held.say(text).awaiting);
    const firstMeasured = asked.indexOf('piece.size');
    for (const gate of ['hazards', 'piece.massKg', 'place.below', 'wall.accessories'] as const) {
      expect(asked.indexOf(gate)).toBeLessThan(firstMeasured);
    }
  });

  test('asks nothing that one message has said', () => {
    const held = talk(flow);
    const { awaiting, replies } = held.say(ALL.join(', '));
    expect(awaiting).toBe('confirm');
    expect(questionIn(replies)).toMatch(
      /840 wide x 1120 mm high.*Assumed: 30 mm deep\..*\nIs that right\?$/s,
    );
  });

  test('says what it understood in one line with its unit, then asks one thing', () => {
    const held = talk(flow);
    held.all('a mirror', 'brick');
    const { replies } = held.say('24 kg');
    expect(replies.map(({ kind, text }) => [kind, text])).toEqual([
      ['text', '24 kg.'],
      [
        'question',
        'Which country is the wall in? Add the year it was built and whether it is yours, rented or a client’s, if you know.',
      ],
    ]);
  });

  test('logs the plan on a yes, speaks each warning, and gives the steps once they are acknowledged', () => {
    const held = talk(flow);
    const yes = held.all(...ALL, 'yes');
    expect(yes.plan?.id).toBe(yes.planId);
    expect(yes.replies.map(({ kind }) => kind)).toEqual([
      'marks',
      'fixing',
      'caution',
      'table',
      'text',
      'plan',
      'question',
    ]);
    expect(aloud(yes.replies)).not.toContain('At the wall');
    expect(yes.awaiting).toBe('acknowledge');
    const noted = held.say('yes');
    expect(noted.added).toMatchObject([{ act: 'acknowledge', cautions: ['C-SV-3'] }]);
    expect(aloud(noted.replies)).toContain('At the wall:\n1. Mark A.');
    expect(noted.awaiting).toBeNull();
    expect(noted.plan).toBeNull();
    expect(noted.planId).toBe(yes.planId);
  });

  test('gives every mark from both ends and from the datum, in words', () => {
    const held = talk(flow);
    const { replies } = held.all(...ALL, 'yes');
    // (2700 - 840) / 2 = 930; 2700 - 930 = 1770
    expect(replies.find(({ kind }) => kind === 'marks')?.text).toBe(
      'Mark A: 930 mm from the left, 1770 mm from the right, 1500 mm up from the floor.',
    );
  });

  test('answers a correction after the plan with what changes, and asks for no second confirmation', () => {
    const step = planned().say('make that 2900');
    // (2900 - 840) / 2 = 1030, 100 further right
    expect(aloud(step.replies)).toContain('Wall 2900 mm wide now, not wall 2700 mm wide.');
    expect(aloud(step.replies)).toContain('Mark A moves 100 mm right.');
    expect(step.plan).not.toBeNull();
    expect(step.awaiting).toBeNull();
  });

  test('asks which is right when a figure differs from what was said before', () => {
    const held = talk(flow);
    held.all('a mirror', '24 kg');
    const asked = held.say('28 kg');
    expect(questionIn(asked.replies)).toBe('You said 24 kg before; now 28 kg. Which is right?');
    expect(asked.known.piece?.massKg).toBe(24);
    expect(held.say({ choice: 'reading-2', question: 'piece.massKg' }).known.piece?.massKg).toBe(28);
  });

  test('keeps what was said before when that is right', () => {
    const held = talk(flow);
    held.all('a mirror', '24 kg', '28 kg');
    const kept = held.say('the first');
    expect(kept.known.piece?.massKg).toBe(24);
    expect(kept.awaiting).toBe('wall.baseMaterial');
  });

  test('takes the heavier figure at once when it is called a correction', () => {
    const held = talk(flow);
    held.all('a mirror', '24 kg');
    const step = held.say('make that 28 kg');
    expect(step.known.piece?.massKg).toBe(28);
    expect(aloud(step.replies)).toContain('28 kg now, not 24 kg.');
  });

  test('stops as soon as it knows, logs that, gives no mark, and goes on when it is cleared', () => {
    const held = talk(flow);
    const stopped = held.all('a mirror', 'over a cot');
    expect(stopped.plan?.plan).toMatchObject({ verdict: 'stop', marks: [], fixing: null, steps: [] });
    expect(stopped.replies.map(({ kind }) => kind)).toEqual(['text', 'caution', 'text', 'plan', 'question']);
    expect(stopped.awaiting).toBe('place.below');
    const cleared = held.say('nothing below');
    expect(aloud(cleared.replies)).toContain('That clears what stopped it.');
    expect(cleared.planId).toBeNull();
    expect(cleared.awaiting).toBe('wall.baseMaterial');
  });

  test('logs a stop once and speaks it once, however much more is said', () => {
    const held = talk(flow);
    const stopped = held.all('a mirror', 'over a cot');
    const more = held.say('24 kg');
    expect(more.plan).toBeNull();
    expect(more.planId).toBe(stopped.planId);
    expect(more.replies.map(({ kind }) => kind)).toEqual(['text', 'text', 'question']);
    expect(aloud(more.replies)).toContain('It is still stopped by what I said above.');
  });

  test('says what it keeps for the crew, and neither whose wall it is nor who lifts today', () => {
    const held = talk(flow, { country: 'AU', dustExtraction: true });
    const { replies, known } = held.say('a mirror');
    expect(aloud(replies)).toContain(
      'As before for your crew: Australia, dust extraction. Say so if it differs here.',
    );
    expect(known.building?.tenure).toBeUndefined();
    expect(known.crew?.people).toBeUndefined();
  });

  test('takes back with one back all that one message said', () => {
    const held = talk(flow);
    held.say(ALL.slice(0, 3).join(', '));
    const { known, added } = held.say('back');
    expect(known).toEqual({});
    expect(added.every(({ act }) => act === 'take-back')).toBe(true);
  });

  test('thanked, it neither greets nor asks twice', () => {
    const held = talk(flow);
    const { replies, awaiting } = held.all('a mirror', 'thanks');
    expect([replies.length, awaiting]).toEqual([1, 'wall.baseMaterial']);
    expect(aloud(planned().say('cheers').replies)).toBe('Noted. The plan stands.');
  });

  test('does not know the wall and stops there, asking for it still', () => {
    const held = talk(flow);
    const step = held.all('a mirror', 'dont know');
    expect(step.known.wall?.baseMaterial).toBe('unknown');
    expect(step.plan?.plan.verdict).toBe('stop');
    expect(step.awaiting).toBe('wall.baseMaterial');
  });

  test('puts off a mass nobody knows, and comes back to it with what such a piece weighs', () => {
    const held = talk(flow);
    const upToTheMass = ALL.slice(0, ALL.indexOf('24 kg'));
    const put = held.all(...upToTheMass, 'dont know');
    expect(put.awaiting).toBe('place.below');
    expect(aloud(put.replies)).toContain('bathroom scale');
    const again = held.all(...ALL.slice(ALL.indexOf('24 kg') + 1));
    expect(again.awaiting).toBe('piece.massKg');
    // 900 x 1200 with 4 to 6 mm glass: trade.md 4.3, derived
    expect(aloud(held.say('dont know').replies)).toContain('usually weighs 14 to 30 kg');
    expect(held.say('24 kg').awaiting).toBe('confirm');
  });

  test('asks whether another piece is a new one, and keeps building, wall and crew for it', () => {
    const held = planned();
    const asked = held.say('next: a picture');
    expect(questionIn(asked.replies)).toBe('A new piece, or change this one?');
    expect(asked.planId).not.toBeNull();
    const { known, awaiting, planId } = held.say('a new one');
    expect(known).toMatchObject({ piece: { kind: 'picture' }, wall: { widthMm: 2700 }, crew: { people: 2 } });
    expect(known.piece?.massKg).toBeUndefined();
    expect(known.place).toBeUndefined();
    expect([awaiting, planId]).toEqual(['piece.massKg', null]);
  });

  test('changes this piece when that is what was meant', () => {
    const held = planned();
    held.say('next: a picture');
    const { known, plan } = held.say('this one');
    expect(known.piece).toMatchObject({ kind: 'picture', massKg: 24 });
    expect(plan?.job.piece?.kind).toBe('picture');
  });

  test('explains a number of the plan by its formula and what went in', () => {
    expect(aloud(planned().say('why 72 mm').replies)).toBe(
      'Hole depth: 72 mm. It is finish + plug + 10. With finish 12, plug 50.',
    );
  });

  test('answers a stale confirm or acknowledge with the open question and changes nothing', () => {
    for (const question of ['confirm', 'acknowledge']) {
      const held = talk(flow);
      held.say('a mirror');
      const { added, awaiting } = held.say({ choice: 'yes', question });
      expect([added, awaiting]).toEqual([[], 'wall.baseMaterial']);
    }
  });

  test('records a button of another question while one is open', () => {
    const held = talk(flow);
    held.say('a mirror');
    const { known, awaiting } = held.say({ choice: 'nothing', question: 'place.below' });
    expect(known.place?.below).toBe('nothing');
    expect(awaiting).toBe('wall.baseMaterial');
  });

  test('remembers what the crew said once', () => {
    const held = talk(flow, { country: 'AU', dustExtraction: true });
    const { added, known, awaiting } = held.all('a mirror', 'brick');
    expect(awaiting).toBe('building.yearBuilt');
    expect(known).toMatchObject({ building: { country: 'AU' }, crew: { dustExtraction: true } });
    expect(held.entries().filter(({ act }) => act === 'default')).toHaveLength(2);
    expect(added).toHaveLength(1);
  });

  test('pauses when told to stop and goes on with whatever is written next', () => {
    const held = talk(flow);
    held.say('a mirror');
    const paused = held.say('stop');
    expect([paused.awaiting, aloud(paused.replies)]).toEqual([
      null,
      expect.stringContaining('Nothing is lost'),
    ]);
    expect(held.say('hello').awaiting).toBe('wall.baseMaterial');
  });

  test('says no to a summary and asks what is different', () => {
    const held = talk(flow);
    const step = held.all(...ALL, 'no');
    expect(questionIn(step.replies)).toContain('What is different?');
    expect(step.awaiting).toBe('confirm');
    expect(held.say('28 kg').known.piece?.massKg).toBe(28);
  });

  test('measures a hanger from the left as soon as the width is known, and follows a corrected width', () => {
    const held = talk(flow);
    held.say('a mirror, rings 95 in 240 down');
    expect(held.last().known.piece?.hanging?.points?.[1]?.fromLeftMm).toBeUndefined();
    // 840 - 95 = 745; 860 - 95 = 765
    expect(held.say('840 x 1120').known.piece?.hanging?.points?.[1]?.fromLeftMm).toBe(745);
    expect(held.say('make that 860 wide').known.piece?.hanging?.points?.[1]?.fromLeftMm).toBe(765);
  });
});
