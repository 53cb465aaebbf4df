import { expect, test } from 'vitest';
import * as flow from '../../flows/step.ts';
import { aloud, talk } from './talk.ts';

/** Invented by us: the wall 2700, the mirror 840 x 1120 centred, its rings 95 in and 240 down, on a mantel of 1100. */
const JOB =
  '24kg mirror 840x1120, 2 d rings 95 in from each side 240 down, solid brick with 12mm plaster, wall 2.7 wide 2.4 high 230 thick, centre, bottom 140 above the mantel which is 1100 off the floor, fireplace never used, no sockets either side, house in australia 2005, own it, two of us with vac';

function planned() {
  const held = talk(flow);
  held.all(JOB, 'none of these', 'yes', 'yes');
  return held;
}

test.each([
  // 1675 - 1025
  ['why 650', 'A to B: 650 mm. It is a check with the tape'],
  // 1020 + 240 - 140 - 240
  ['why 880', 'A down to the bottom of the frame: 880 mm'],
  // 1020 above the mantel, 1100 above the floor
  ['why 2120', '1020 mm above where you measure from, and that is 1100 mm above the floor'],
  // finish 12, plug 50, 10 beyond it is 72; the screw of 75 less 6 outside, 5 beyond it, is 74
  ['why 74', 'Hole depth: 74 mm'],
  ['why 5555', 'I find no 5555 in this plan'],
])('"%s" is answered: %s', (asked, answer) => {
  expect(aloud(planned().say(asked).replies)).toContain(answer);
});

test('what a warning names is answered by the warning and where it comes from', () => {
  const held = planned();
  const warned = held.last().replies.concat(held.say('why 13.3').replies);
  expect(aloud(warned)).toMatch(/two people \(13\.3 kg\).*Basis: Manual handling guidance/s);
});

test('a share that is spoken in percent, and a force that is spoken rounded, are found as they are spoken', () => {
  const held = planned();
  for (const reply of flowReplies(held.say('make it 23 kg').replies)) {
    const [, force, share] = /may carry (\d+) N .* uses (\d+) % of/.exec(reply) ?? [];
    if (force === undefined || share === undefined) continue;
    expect(aloud(held.say(`why ${force}`).replies)).toContain('Governing resistance');
    expect(aloud(held.say(`why ${share} %`).replies)).toContain('Utilisation');
    return;
  }
  throw new Error('no reply told the force and the share');
});

const flowReplies = (replies: readonly { text: string }[]): string[] => replies.map(({ text }) => text);
