import { describe, expect, test } from 'vitest';
import * as flow from '../../flows/step.ts';
import type { Step } from '../../flows/step-shape.ts';
import { aloud, type Talk, talk } from './talk.ts';
import {
  FACES,
  namesOf,
  ONE_FITTING,
  rows,
  SEVERAL,
  TO_BE_ASKED,
} from './understand/accessory/fittings-as-said.ts';

const BEFORE = [
  '24 kg safety glass mirror',
  'solid brick with 12 mm plaster, 230 thick, built 2010, Australia, I own it, two of us',
  'none of these',
  'nothing below it',
];
const AFTER = [
  '840 x 1120',
  'two rings 95 mm in and 240 mm down',
  'wall 2700 mm wide',
  'centred',
  'bottom 140 mm above the floor',
  'yes',
];

/** A conversation in which what is on the wall is asked next. It is pure: each row goes on from the same place. */
const asked = (() => {
  const held = talk(flow);
  for (const text of BEFORE) held.say(text);
  if (held.last().awaiting !== 'wall.accessories') throw new Error(`asked is ${held.last().awaiting}`);
  return held.at();
})();

const said = (text: string): [Step, Talk] => {
  const held = talk(flow, {}, asked);
  return [held.say(text), held];
};

describe('fittings told in a whole conversation', () => {
  test.each(rows([...ONE_FITTING, ...SEVERAL, ...FACES]))('"$say" (invented): $told', ({ say, told }) => {
    const [step] = said(say);
    expect(namesOf(step.known.wall)).toBe(told);
    expect(step.awaiting).not.toBe('wall.accessories');
  });

  test.each(rows(TO_BE_ASKED))('"$say" (invented): asked for until it is placed, $told', ({ say, told }) => {
    const [step, held] = said(say);
    expect(namesOf(step.known.wall)).toBe(told);
    expect(step.awaiting).toBe('wall.accessories');
    // Whatever else is said meanwhile, it is asked again, and nobody gets a mark.
    for (const text of AFTER) held.say(text);
    expect(held.last().known.wall?.unplaced).toEqual(step.known.wall?.unplaced);
    expect(held.last().awaiting).toBe('wall.accessories');
    expect(held.last().planId).toBeNull();
  });

  test.each(rows(TO_BE_ASKED))('"$say", and then nobody knows: no mark is given', ({ say }) => {
    const [step, held] = said(say);
    held.say("don't know");
    for (const text of AFTER) held.say(text);
    const { replies, known, plan } = held.last();
    expect(known.wall?.unplaced?.length).toBe(step.known.wall?.unplaced?.length);
    expect(replies.some(({ kind }) => kind === 'marks')).toBe(false);
    expect(plan?.plan.marks ?? []).toEqual([]);
    expect(held.say('back').awaiting).not.toBeNull();
  });

  test('what was asked for is taken from the next answer, and the plan keeps clear of it', () => {
    const [, held] = said('socket 600 from the left 300 up. light switch on the other side somewhere');
    expect(aloud(held.last().replies)).toContain('Where is the switch on the other side');
    held.say('1675 from the left');
    expect(aloud(held.last().replies)).toContain('how high above the floor');
    held.say('1200');
    expect(namesOf(held.last().known.wall)).toBe('socket 600 300 | far switch 1675 1200');
    // In a wall of 100 or less it counts on this face, where it is at 2700 - 1675 = 1025: in line with mark A.
    held.say('make the wall 90 thick');
    const spoken = AFTER.map((text) => aloud(held.say(text).replies)).join('\n');
    expect(spoken).toMatch(/straight above or below the switch on the other side/);
    expect(held.last().replies.some(({ kind }) => kind === 'marks')).toBe(false);
  });

  test('a fitting remembered later is added, and a corrected one takes the place of the wrong one', () => {
    const [, held] = said('socket 600 from the left 300 up, nothing on the other side');
    held.say("there's also a switch on this side, 200 from the left 1200 up");
    expect(namesOf(held.last().known.wall)).toBe('socket 600 300 | switch 200 1200');
    held.say('the socket is at 700 not 600');
    expect(namesOf(held.last().known.wall)).toBe('socket 700 300 | switch 200 1200');
    held.say("there's a socket on the other side too");
    expect(held.last().awaiting).toBe('wall.accessories');
    held.say('900 from the left, 300 up');
    expect(namesOf(held.last().known.wall)).toBe('socket 700 300 | switch 200 1200 | far socket 900 300');
  });

  test('nothing on this side alone leaves the other side to be asked', () => {
    const [step, held] = said('nothing on this side');
    expect(step.awaiting).toBe('wall.farSide');
    expect(held.say('yes').known.wall?.farSide).toBe('unknown');
    held.say('a switch 400 from the left 1200 up');
    expect(namesOf(held.last().known.wall)).toBe('far switch 400 1200');
    expect(held.last().known.wall?.farSide).toBe('seen');
  });

  test('nothing, said after something, is asked about and drops nothing by itself', () => {
    const [, held] = said('socket 600 from the left 300 up, light switch on the other side somewhere');
    const { known, replies } = held.say('nothing');
    expect(namesOf(known.wall)).toBe('socket 600 300 | far switch ? ?');
    expect(aloud(replies)).toContain('Is nothing there after all');
    held.say('Nothing on either face');
    expect(namesOf(held.last().known.wall)).toBe('');
  });
});
