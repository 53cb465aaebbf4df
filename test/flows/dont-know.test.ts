import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import * as flow from '../../flows/step.ts';
import { aloud, questionIn, type Talk, talk } from './talk.ts';

const UP_TO_THE_WALL = [
  'mirror 800 x 1200',
  'brick, 12 mm plaster',
  'UK, built 1995, I own it',
  'none of these',
  "don't know",
  'nothing',
  'none on either side',
  'two rings 95 in and 240 down',
  '2700',
];

/** The buttons now offered. */
function buttons(held: Talk): { value: string; label: string }[] {
  return held.last().replies.flatMap((reply) => (reply.kind === 'question' ? reply.choices : []));
}

describe('who does not know', () => {
  test('where it goes is given the middle of the wall at the usual height, said and confirmed', () => {
    const held = talk(flow);
    held.all(...UP_TO_THE_WALL);
    expect(held.last().awaiting).toBe('place.across');
    expect(held.say("don't know").known.place?.across).toEqual({ by: 'centre' });
    expect(aloud(held.last().replies)).toContain('centred on the wall; say so if it goes elsewhere');
    // the middle at 1450 to 1550: reference/trade.md 8.1, 41, common practice
    expect(held.say('no idea').known.place?.up).toEqual({ by: 'centre-at', mm: 1500 });
    expect(
      held.entries().filter(({ question, inferred }) => question?.startsWith('place.a') && inferred),
    ).toHaveLength(1);
  });

  test('how high over a sofa is given the usual gap above it, and asked how high the sofa is', () => {
    const held = talk(flow);
    held.all(...UP_TO_THE_WALL.map((said) => (said === 'nothing' ? 'a sofa' : said)), 'centre', "don't know");
    // 150 to 250 above a couch: reference/trade.md 8.1, 42, common practice
    expect(held.last().known.place?.up).toEqual({ by: 'bottom-above', mm: 200 });
    expect(held.last().awaiting).toBe('wall.datum');
  });

  test('what it weighs may take the heavy end of what such a piece weighs, by a button', () => {
    const held = talk(flow);
    held.all(...UP_TO_THE_WALL, 'centre', 'middle at 1500');
    expect(held.last().awaiting).toBe('piece.massKg');
    // a mirror of up to 900 x 1200 weighs 14 to 30: reference/trade.md 4.3, derived
    const [heavy] = buttons(held);
    expect(heavy?.label).toBe('Take 30 kg, the heavy end for its size');
    expect(held.say({ choice: heavy?.value ?? '', question: 'piece.massKg' }).known.piece?.massKg).toBe(30);
  });

  test('how thick the wall is, with the far side not looked at, is stopped before anything is measured', () => {
    const held = talk(flow);
    held.all('mirror', ...UP_TO_THE_WALL.slice(1, 4), '20 kg', 'nothing');
    held.say('nothing on this side, have not looked at the other');
    expect(held.last().awaiting).toBe('wall.thicknessMm');
    const { plan, awaiting } = held.say("don't know");
    expect(plan?.plan.cautions.map(({ id }) => id)).toContain('C-SV-4');
    expect(awaiting).toBe('wall.farSide');
    expect(held.say('the wall is 230 thick').awaiting).toBe('piece.size');
  });

  test('how the wall sounds is asked with buttons, each of which names what the wall may be', () => {
    const held = talk(flow);
    held.all('mirror', "don't know");
    expect(questionIn(held.last().replies)).toContain('How does it sound?');
    const sounds = buttons(held).filter(({ value }) => value !== 'unknown');
    expect(sounds).toHaveLength(4);
    for (const { value } of sounds) {
      const again = talk(flow, {}, held.at());
      expect(questionIn(again.say({ choice: value, question: 'wall.baseMaterial' }).replies)).toContain(
        'Which is it?',
      );
      expect(again.say({ choice: 'reading-1', question: 'wall.baseMaterial' }).planId).toBeNull();
    }
  });

  test('how thick the wall is may go and look at the other side instead', () => {
    const held = talk(flow);
    held.all('mirror', ...UP_TO_THE_WALL.slice(1, 4), '20 kg', 'nothing');
    held.say('nothing on this side, have not looked at the other');
    expect(held.last().awaiting).toBe('wall.thicknessMm');
    const { known, awaiting } = held.say('went and looked, nothing there');
    expect([known.wall?.farSide, known.wall?.accessories]).toEqual(['seen', []]);
    expect(awaiting).not.toBe('wall.thicknessMm');
  });

  test('nothing of the other side hears that it is taken as looked at', () => {
    const held = talk(flow);
    held.all('mirror', ...UP_TO_THE_WALL.slice(1, 4), '20 kg', 'nothing');
    const spoken = aloud(held.say('socket 500 from the left, 300 up').replies);
    expect(spoken).toContain('nothing told of the other side: I take it as looked at');
    expect(aloud(held.say('socket 900 from the left, 300 up on the other side too').replies)).not.toContain(
      'nothing told of',
    );
  });

  test('a thing said twice is recorded once', () => {
    const held = talk(flow);
    held.all('mirror', 'brick', 'UK', "don't know");
    const { awaiting } = held.last();
    held.say({ choice: 'unknown', question: 'building.yearBuilt' });
    expect(held.say({ choice: 'unknown', question: 'building.yearBuilt' }).added).toEqual([]);
    expect(held.last().awaiting).toBe(awaiting);
  });

  test('the wall is told how to find out once, then to have it looked at, and it stays stopped', () => {
    const held = talk(flow);
    held.all('mirror', "don't know");
    expect(aloud(held.say("don't know").replies)).toContain('A magnet that catches in vertical lines');
    for (const said of ['no idea', 'dunno']) {
      const spoken = aloud(held.say(said).replies);
      expect(spoken).toContain('let somebody look at it who knows walls');
      expect(spoken).not.toContain('A magnet that catches');
    }
    expect(held.last().awaiting).toBe('wall.baseMaterial');
    expect(held.say('brick').known.wall?.baseMaterial).toBe('clay-brick');
  });

  test('a name that nobody here knows is said back, with what would do', () => {
    const held = talk(flow);
    const spoken = aloud(held.all('mirror', 'quarzolit').replies);
    expect(spoken).toContain('“quarzolit” is no wall I know');
    expect(held.last().known.wall).toBeUndefined();
  });
});

type Dialogue = { open: string; answers: Record<string, string> };
const FILE = new URL('../fixtures/reference/dialogues.json', import.meta.url);
const DIALOGUES: (Dialogue & { id: string })[] = JSON.parse(readFileSync(FILE, 'utf8')).dialogues;

test.each(DIALOGUES)('every button offered on the way through $id is understood', ({ open, answers }) => {
  const held = talk(flow);
  held.say(open);
  for (let turn = 0; turn < 30 && held.last().awaiting !== null; turn += 1) {
    const { awaiting } = held.last();
    for (const { value, label } of buttons(held)) {
      const { replies } = talk(flow, {}, held.at()).say({ choice: value, question: awaiting ?? '' });
      expect(aloud(replies), `${awaiting}: ${label}`).not.toMatch(/did not follow|I expected|button is from/);
    }
    held.say(
      answers[awaiting ?? ''] ??
        (awaiting === 'confirm' || awaiting === 'acknowledge' ? 'yes' : "don't know"),
    );
  }
  expect(held.last().planId).not.toBeNull();
});
