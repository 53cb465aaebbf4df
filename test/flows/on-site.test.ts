import { describe, expect, test } from 'vitest';
import * as flow from '../../flows/step.ts';
import { aloud, questionIn, talk } from './talk.ts';

const ALL_AT_ONCE =
  '24 kg safety glass mirror 840 x 1120 mm, two rings 95 mm in and 240 mm down, solid brick wall with 12 mm plaster, ' +
  'wall 2700 mm wide, centred, bottom 140 mm above the floor, nothing below it, no sockets or switches on either side, ' +
  'built 2010, Australia, I own it, two of us';

function planned() {
  const held = talk(flow);
  held.all(ALL_AT_ONCE, 'none of these', 'yes', 'yes, understood');
  return held;
}

describe('on site', () => {
  test('who types it all is asked for the hazards, a yes and to heed the warnings, no more', () => {
    const held = talk(flow);
    expect(held.say(ALL_AT_ONCE).awaiting).toBe('hazards');
    expect(held.say('none of these').awaiting).toBe('confirm');
    const yes = held.say('yes');
    expect(yes.awaiting).toBe('acknowledge');
    // (2700 - 840) / 2 + 95 = 1025; 2700 - 1025 = 1675; 140 + 1120 - 240 = 1020
    expect(yes.replies.find(({ kind }) => kind === 'marks')?.text).toContain(
      'Mark A: 1025 mm from the left, 1675 mm from the right, 1020 mm up from the floor.',
    );
    expect(held.say('ok understood').awaiting).toBeNull();
    expect(aloud(held.last().replies)).toContain('At the wall:\n1.');
  });

  test('a correction after the plan says which marks move', () => {
    const { replies, plan } = planned().say('make it the left edge 300 from the left');
    // 300 + 95 = 395, and 1025 - 395 = 630 to the left
    expect(plan?.plan.marks[0]?.fromLeftMm).toBe(395);
    expect(aloud(replies)).toContain('Mark A moves 630 mm left.');
  });

  test('a heavier piece says what changes in the fixing, or that nothing does', () => {
    const { replies, known } = planned().say('make that 28 kg');
    expect(known.piece?.massKg).toBe(28);
    expect(aloud(replies)).toMatch(/What changes: .*(?:now|used to)/);
  });

  test('why a number is what it is comes with formula, inputs and basis', () => {
    const held = planned();
    const why = aloud(held.say('why is the hole that deep').replies);
    expect(why).toMatch(/^Hole depth: \d+ mm\. It is .*\. With .*\. Basis: /);
  });

  test('marks read back are held against the plan', () => {
    const held = planned();
    expect(aloud(held.say('A 1025 1020, B 1675 1030').replies)).toContain('Mark B is 10 mm too high');
    expect(aloud(held.say('A 1025 1020, B 1675 1021').replies)).toContain('agree with the plan');
  });

  test('an old sheet stops the job before anything is measured, and a laboratory result clears it', () => {
    const held = talk(flow);
    const stopped = held.all('mirror on a cement sheet wall', 'Australia', '1974');
    expect(stopped.plan?.plan).toMatchObject({ verdict: 'stop', marks: [], fixing: null, steps: [] });
    expect(stopped.awaiting).toBe('wall.asbestos');
    expect(aloud(stopped.replies)).not.toMatch(/\bdrill (?:slowly|through|at)\b|\bbit\b/);
    const cleared = held.say({ choice: 'tested-clear', question: 'wall.asbestos' });
    expect(cleared.planId).toBeNull();
    expect(aloud(cleared.replies)).toContain('That clears what stopped it.');
    expect(questionIn(cleared.replies)).toBe('Whose wall is it?');
  });

  test('what is said of this wall replaces what the crew remembers', () => {
    const held = talk(flow, { country: 'AU' });
    held.all('a mirror', 'brick');
    expect(held.say("it's in new zealand").known.building?.country).toBe('NZ');
  });

  test('a tape in inches is answered in inches, to the sixteenth', () => {
    const held = talk(flow, { country: 'US' });
    held.all(
      '24 x 36 in picture, 18 lb, two D-rings 3 in from each side and 9 in down',
      'drywall on wood studs',
      '1995',
      'I own it',
      'none of these',
    );
    held.all('nothing', 'none on either side', "don't know", '120 in', 'centre');
    expect(questionIn(held.last().replies)).toContain('so many inches above the floor');
    const yes = held.all('centre at 58 in', 'yes');
    // (120 - 24) / 2 + 3 = 51; 120 - 51 = 69; 58 + 18 - 9 = 67
    expect(aloud(yes.replies)).toContain(
      'Mark A: 51 in from the left, 69 in from the right, 67 in up from the floor.',
    );
  });

  test('nothing that can be no answer is recorded, whatever it is', () => {
    const held = talk(flow);
    held.all('a mirror', 'brick', 'Australia', '2010', 'I own it', 'none of these');
    for (const said of [
      '900 t',
      '0',
      '-5 kg',
      'NaN',
      'x'.repeat(2000),
      '1200mm',
      '😀',
      'ثقيل جدا',
      "'; drop table turn; --",
      '<script>alert(1)</script>',
    ]) {
      const { added, awaiting, known, replies } = held.say(said);
      expect([said.slice(0, 20), added, awaiting]).toEqual([said.slice(0, 20), [], 'piece.massKg']);
      expect(known.piece?.massKg).toBeUndefined();
      expect(aloud(replies)).not.toContain('<script>');
    }
  });
});
