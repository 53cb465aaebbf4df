import { describe, expect, test } from 'vitest';
import type { JobSoFar } from '../../../../core/job.ts';
import { kg, mm } from '../../../../core/quantity.ts';
import type { QuestionName } from '../../../../flows/question.ts';
import type { Intent } from '../../../../flows/reading.ts';
import { expectHeard, hear, type Want } from '../as-said.ts';
import { jobOf } from '../score.ts';

const SAID: Partial<Record<Intent, string[]>> = {
  yes: [
    'yes',
    'y',
    'yep',
    'Yes please',
    'yeah mate',
    'ok',
    'looks good',
    'all good',
    'spot on',
    "that's right",
    'correct',
    'go ahead',
    'sure thing, go',
    'yes, understood',
    'got it',
    'fine by me',
  ],
  no: ['no', 'n', 'nope', 'nah', 'no thanks', "that's wrong", 'not quite', 'nah mate'],
  back: [
    'back',
    'go back',
    'undo',
    'undo that',
    'go back one',
    'sorry go back',
    'previous question',
    'scratch that',
    'back a step please',
  ],
  'start-over': [
    'start again',
    'start over',
    'lets start again',
    'restart',
    'reset',
    'begin again',
    'can we start from scratch',
    'forget all that',
  ],
  why: [
    'why',
    'why?',
    'why do you ask',
    'what do you need that for',
    "what's that for",
    'does it matter',
    'what for',
    'how come you need that',
    'why do you need to know',
  ],
  help: [
    'help',
    'help me',
    "I'm stuck",
    'what can you do',
    'how do I measure that',
    'what do I say',
    '?',
    "i don't understand",
  ],
  stop: ['stop', 'cancel', 'quit', 'never mind', 'forget it', "that's enough", 'leave it there', 'bye'],
  greet: ['hello', 'hi', "g'day", 'good morning', 'hey there', 'thanks', 'cheers mate'],
  'where-were-we': [
    'where were we',
    'where are we up to',
    'what was the question',
    'say that again',
    'carry on',
    "what's left",
    'summary',
    'what do you know so far',
    'where are we',
    'show me what you have',
  ],
  'dont-know': [
    'dunno',
    'idk',
    'no idea',
    "haven't a clue",
    'not sure',
    'dunno mate boss never said',
    'havent measured it yet',
    "I'll have to go and measure it",
    'skip',
    'pass',
    "can't tell",
    'beats me',
    'hard to say',
    'no clue',
    'never weighed it',
    'couldn’t tell you',
    'need to check',
    'the boss never said',
  ],
  'trade-question': [
    'what bit for a 14 gauge in brick',
    'what plug for a 10 gauge?',
    'can I drill above a switch',
    'how much will two board anchors hold',
    'is it safe to drill here',
    'should I use a hammer drill on tile',
    'how far sideways of a socket',
    '3/16 masonry in mm',
    'do I need a hammer drill',
    'which way do the toggles go',
    'plug spins',
    "hole's too big",
    'I smell gas',
    'hit metal behind the board',
    'will one hook hold 5 kg',
    'how do I find a stud',
    'hollow block, what do I use',
    'plug for aerated block',
    'can four hooks share one wire',
    'what height',
  ],
};

const ROWS = Object.entries(SAID).flatMap(([intent, says]) => says.map((say) => ({ intent, say })));

const STANDING: JobSoFar = {
  piece: { kind: 'picture', massKg: kg(13), widthMm: mm(900), heightMm: mm(600) },
  wall: { baseMaterial: 'clay-brick', widthMm: mm(2690) },
};

type Correction = { say: string; awaiting: QuestionName | null; last: QuestionName; want: Want };
/** Each replaces what stood before: 13 kg, 900 x 600, brick, 2690 wide. */
const CORRECTIONS: Correction[] = [
  { say: 'make that 28 kg', awaiting: 'piece.size', last: 'piece.massKg', want: { 'piece.massKg': 28 } },
  { say: 'no wait, 26 kg', awaiting: 'piece.size', last: 'piece.massKg', want: { 'piece.massKg': 26 } },
  { say: 'make it 28', awaiting: 'piece.size', last: 'piece.massKg', want: { 'piece.massKg': 28 } },
  { say: 'no, 26', awaiting: 'piece.hanging', last: 'piece.massKg', want: { 'piece.massKg': 26 } },
  { say: 'its 31 not 13', awaiting: 'piece.size', last: 'piece.massKg', want: { 'piece.massKg': 31 } },
  { say: 'weight should be 26', awaiting: 'wall.widthMm', last: 'piece.size', want: { 'piece.massKg': 26 } },
  {
    say: 'weighed it again, 19.2',
    awaiting: 'piece.size',
    last: 'piece.massKg',
    want: { 'piece.massKg': 19.2 },
  },
  {
    say: 'the wall is 2960 not 2690',
    awaiting: 'piece.hanging',
    last: 'piece.massKg',
    want: { 'wall.widthMm': 2960 },
  },
  {
    say: 'sorry the wall is 2960',
    awaiting: 'piece.hanging',
    last: 'piece.massKg',
    want: { 'wall.widthMm': 2960 },
  },
  { say: 'make that 3 m', awaiting: 'place.across', last: 'wall.widthMm', want: { 'wall.widthMm': 3000 } },
  {
    say: 'its a mirror not a picture',
    awaiting: 'piece.hanging',
    last: 'piece.massKg',
    want: { 'piece.kind': 'mirror' },
  },
  {
    say: 'actually its concrete',
    awaiting: 'piece.hanging',
    last: 'wall.baseMaterial',
    want: { 'wall.baseMaterial': 'concrete' },
  },
  {
    say: "it's dot and dab after all",
    awaiting: 'confirm',
    last: 'wall.baseMaterial',
    want: { 'wall.baseMaterial': 'plasterboard-on-dabs' },
  },
  {
    say: 'no, its 950 x 600',
    awaiting: 'confirm',
    last: 'piece.size',
    want: { 'piece.widthMm': 950, 'piece.heightMm': 600 },
  },
  {
    say: 'oops meant pounds, 40 lb',
    awaiting: 'piece.size',
    last: 'piece.massKg',
    want: { 'piece.massKg': 18.14 },
  },
  {
    say: 'change the height to 650',
    awaiting: 'confirm',
    last: 'place.up',
    want: { 'piece.heightMm': 650, 'piece.widthMm': undefined },
  },
  { say: 'change the weight to 20 kg', awaiting: 'confirm', last: 'place.up', want: { 'piece.massKg': 20 } },
  { say: "wait, it's 15 kg", awaiting: 'confirm', last: 'place.up', want: { 'piece.massKg': 15 } },
];

describe('steering, as said', () => {
  test.each(ROWS)('"$say" is $intent (invented)', ({ intent, say }) => {
    const reading = hear(say, 'piece.massKg');
    expect(reading.intent).toBe(intent);
    expect(reading.facts).toEqual([]);
  });

  test.each([
    ['why 72 mm?', '72 mm'],
    ['why 14 gauge', '14 gauge'],
    ['where does 1025 come from', '1025'],
    ['how did you get 1020?', '1020'],
    ['why do you need the year', 'the year'],
    ['why', undefined],
  ])('"%s" asks about %s', (say, about) => {
    expect(hear(say, 'confirm', { hasPlan: true })).toMatchObject({
      intent: 'why',
      ...(about === undefined ? {} : { about }),
    });
  });

  test.each(CORRECTIONS)('"$say" replaces what stood (invented)', ({ say, awaiting, last, want }) => {
    const reading = hear(say, awaiting, { known: STANDING, lastAnswered: last });
    expectHeard(reading, want);
    expect(reading.correction).toBe(true);
    expect(Object.keys(jobOf(reading)).length).toBe(1);
  });

  test('"it is plasterboard after all" asks on what, as a correction', () => {
    const reading = hear("it's plasterboard after all", 'confirm', {
      known: STANDING,
      lastAnswered: 'place.up',
    });
    expectHeard(reading, 'ask');
    expect(reading.correction).toBe(true);
  });

  test.each([
    'a 12 kg mirror 600 x 800',
    'next one, picture 12 kg',
    'another mirror',
    'new piece',
    'what about a canvas 800 x 600',
  ])('after a plan "%s" names another piece', (say) => {
    expect(hear(say, null, { known: STANDING, hasPlan: true }).intent).toBe('new-piece');
  });

  test.each([
    'A is at 1025 and 1020 up, B at 1675 and 1019',
    'marks measured 1025 and 1676',
    'check my marks',
    'holes are at 1025 and 1675',
  ])('after a plan "%s" reads marks back and changes nothing', (say) => {
    const reading = hear(say, null, { known: STANDING, hasPlan: true });
    expect(reading.intent).toBe('self-check');
    expect(reading.facts).toEqual([]);
  });
});
