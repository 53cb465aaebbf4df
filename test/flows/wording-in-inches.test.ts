import { convert } from 'convert';
import { describe, expect, test } from 'vitest';
import * as flow from '../../flows/step.ts';
import { inInches } from '../../flows/wording/in-inches.ts';
import { talk } from './talk.ts';

describe('words said to who measures in inches', () => {
  test.each([
    // 50 / 25.4 = 1.969 = 1-15.5/16; 72 / 25.4 = 2.835 = 2-13.4/16
    ['The hole depth is over 50 mm.', 'The hole depth is over 1-15/16 in.'],
    ['Move it at least 72 mm to the right.', 'Move it at least 2-13/16 in to the right.'],
    // 18 = 11.3/16, 25 = 15.7/16: a range has its unit once
    ['A batten 18 to 25 mm thick.', 'A batten 11/16 to 1 in thick.'],
    ['300, 700 and 1100 mm from the left end', '11-13/16, 27-9/16 and 43-5/16 in from the left end'],
    // what is bought in millimetres keeps them: 8 = 20.2/64, 6 = 15.1/64
    ['an 8 mm masonry bit', 'an 5/16 in (8 mm) masonry bit'],
    ['Bit: 6 mm masonry bit, 70 mm deep', 'Bit: 15/64 in (6 mm) masonry bit, 2-3/4 in deep'],
    ['Plug: 8 x 50 mm.', 'Plug: 5/16 x 1-15/16 in (8 x 50 mm).'],
    ['In a mesh sleeve 16 x 85, filled', 'In a mesh sleeve 5/8 x 3-3/8 in (16 x 85 mm), filled'],
    ['Screw: 14 gauge (6.1 mm) x 75 mm, pan head.', 'Screw: 14 gauge x 2-15/16 in, pan head.'],
    // 18.14 / 0.45359237 = 40.0
    ['Lifting 18.14 kg', 'Lifting 18.14 kg (40 lb)'],
    ['24 kg (52.9 lb)', '24 kg (52.9 lb)'],
    ['moment 1403.9 N mm, 0.05 mg in a cubic metre', 'moment 1403.9 N mm, 0.05 mg in a cubic metre'],
  ])('%s: %s', (said, wanted) => {
    expect(inInches(said)).toBe(wanted);
  });

  test.each([1, 4, 13, 40, 76.2, 1295.4])(
    '%d mm is within half a part of what the convert library gives',
    (value) => {
      for (const [text, parts] of [
        [`${value} mm deep`, 16],
        [`${Math.min(value, 25)} mm bit`, 64],
      ] as const) {
        const [figure = ''] = inInches(text).split(' in');
        const [last = '0', first] = figure.split('-').reverse();
        const [top = 0, bottom = 1] = last.split('/').map(Number);
        const wanted = convert(Number(text.split(' ')[0]), 'mm').to('in');
        expect(Math.abs(Number(first ?? 0) + top / bottom - wanted)).toBeLessThanOrEqual(
          1 / (2 * parts) + 1e-9,
        );
      }
    },
  );

  test.each([
    ['brick', ['solid brick, 1/2 in plaster']],
    ['drywall', ['drywall on wood studs', 'studs every 16 in, first at 14 in']],
    ['concrete', ['bare concrete', "it's a house"]],
  ])('no reply of a whole conversation on %s has a bare millimetre', (_, wall) => {
    const held = talk(flow, { country: 'US' });
    const said: string[] = [];
    const answers: Record<string, string> = {
      'building.yearBuilt': '1995, I own it',
      'building.tenure': 'I own it',
      'building.kind': 'a house',
      'wall.baseMaterial': 'drywall on wood studs',
      hazards: 'none of these',
      'place.below': 'nothing',
      'wall.accessories': 'outlet 20 in from the left and 12 in up, nothing on the other side',
      'piece.hanging': 'two D-rings 3 in from each side and 9 in down',
      'wall.studs': 'first at 14 in, every 16 in',
      'wall.widthMm': '120 in',
      'place.across': 'centre',
      'place.up': 'middle at 58 in',
      'wall.cores': 'solid',
      'piece.glass': 'ordinary glass',
      'crew.people': 'two',
    };
    for (const text of ['24 x 36 in picture, 28 lb', ...wall]) held.say(text);
    const hear = (text: string): void => {
      for (const { text: reply } of held.say(text).replies) said.push(reply);
    };
    for (let turn = 0; turn < 30 && held.last().awaiting !== null; turn += 1) {
      hear('xyzzy');
      hear('help');
      const { awaiting } = held.last();
      hear(answers[awaiting ?? ''] ?? 'yes');
    }
    for (const more of ['what did you assume', 'why the hole depth', 'make that 40 lb', 'move it 3 in left'])
      hear(more);
    expect(held.last().planId).not.toBeNull();
    for (const line of said.flatMap((text) => text.split('\n')))
      expect(line.replace(/\([^()]*\)/g, '')).not.toMatch(/\d mm\b/);
  });
});
