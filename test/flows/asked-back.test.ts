import { describe, expect, test } from 'vitest';
import { flowOf } from '../../flows/flow.ts';
import * as house from '../../flows/step.ts';
import { ANSWERS, plainParts } from './plain-parts.ts';
import { aloud, questionIn, talk } from './talk.ts';

const flow = flowOf(plainParts);

describe('what was asked back', () => {
  test('stays open while something else is answered, and is answered then', () => {
    const held = talk(house);
    const asked = questionIn(held.say('18 kg picture on drywall').replies);
    expect(asked).toContain('What is the plasterboard on');
    const between = held.say('built 1995, in the US');
    expect(between.known.building).toMatchObject({ yearBuilt: 1995, country: 'US' });
    expect(questionIn(between.replies)).toBe(asked);
    expect(held.say('timber studs').known.wall?.baseMaterial).toBe('plasterboard-on-timber-studs');
  });

  test('of a figure that answered another question stays open too', () => {
    const held = talk(house);
    held.all('24 kg mirror 840 x 1120', 'solid brick', 'australia, 1990, mine');
    const asked = questionIn(held.say('3.2 m').replies);
    expect(asked).toContain('is that how wide the wall is, or how high?');
    expect(questionIn(held.say('two of us').replies)).toBe(asked);
    expect(held.say('the first').known.wall).toMatchObject({ widthMm: 3200 });
  });

  test('of two figures stays open while something else is answered', () => {
    const held = talk(flow);
    held.all('a mirror', '24 kg', '28 kg', 'brick');
    expect(questionIn(held.last().replies)).toBe('You said 24 kg before; now 28 kg. Which is right?');
    expect(held.say('the second').known).toMatchObject({
      piece: { massKg: 28 },
      wall: { baseMaterial: 'clay-brick' },
    });
  });

  test.each([
    ['2.7 m wide', 'the wall', { widthMm: 2700 }],
    ['2.4 m high', '3', { heightMm: 2400 }],
  ])('of a mirror 840 x 1120 that is now %s may be the wall', (later, answer, wall) => {
    const held = talk(house);
    held.all('24 kg mirror on solid brick', '840 x 1120', 'australia', later);
    expect(questionIn(held.last().replies)).toContain('or is that the wall?');
    const picked = held.say(answer);
    expect(picked.known).toMatchObject({ piece: { widthMm: 840, heightMm: 1120 }, wall });
    expect(questionIn(picked.replies)).not.toContain('Which is right');
  });

  test('of a narrower mirror is not the wall, nor of a wall that was measured', () => {
    const [narrow, measured] = [talk(house), talk(house)];
    narrow.all('24 kg mirror on solid brick', '840 x 1120', 'australia', '640 wide');
    measured.all('24 kg mirror on solid brick', '840 x 1120', 'wall is 3 m wide', 'australia', '2.7 m wide');
    for (const held of [narrow, measured])
      expect(questionIn(held.last().replies)).toMatch(/Which is right\?$/);
  });

  test('goes when all is started again', () => {
    const held = talk(flow);
    const { awaiting, replies } = held.all('a mirror', '24 kg', '28 kg', 'start over');
    expect([awaiting, aloud(replies)]).toEqual(['piece.kind', expect.not.stringContaining('Which is right')]);
  });

  test('keeps what is told of another piece until it is clear whether it is a new one', () => {
    const held = talk(flow);
    held.all(...ANSWERS.map(([text]) => text), 'yes', 'yes', 'next: a picture');
    const told = held.say('28 kg');
    expect(told.known.piece).toMatchObject({ kind: 'mirror', massKg: 24 });
    expect(questionIn(told.replies)).toBe('A new piece, or change this one?');
    expect(held.say('a new one').known.piece).toMatchObject({ massKg: 28 });
  });
});

test('a country that the crew remembers and the person says again was said', () => {
  const held = talk(flow, { country: 'AU' });
  expect(aloud(held.say('a mirror, Australia').replies)).not.toContain('As before for your crew');
});
