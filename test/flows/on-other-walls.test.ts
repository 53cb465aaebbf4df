import { expect, test } from 'vitest';
import * as house from '../../flows/step.ts';
import { talk } from './talk.ts';

const LATH = [
  'picture 3.5 kg on lath and plaster, uk, 1896 house, ours',
  'none of these',
  'nothing',
  'none either side',
  '500 x 400, two rings 50 in and 90 down',
];

test('while the studs are asked for, 20 mm of plaster is the plaster and no spacing', () => {
  const { known } = talk(house).all(...LATH, '20mm plaster');
  expect(known.wall?.studs).toBeUndefined();
  expect(known.wall?.finish).toEqual({ kind: 'plaster', thicknessMm: 20 });
});

test('what is not known is what the words name, whichever question is open', () => {
  // Past the studs and on to the wall's width: the words still name the studs.
  const held = talk(house);
  const open = held.all(...LATH, '20mm plaster', 'skip').awaiting;
  const { known } = held.say('no idea where the studs are');
  expect(open).not.toBeNull();
  expect(known.wall?.studs).toBe('unknown');
  expect(known.wall?.widthMm).toBeUndefined();
});

test('2800 wide while the place is asked for is the wall, not a place along it', () => {
  const { known } = talk(house).all(...LATH, 'dont know where the studs are', 'skip', '2800 wide');
  expect(known.wall?.widthMm).toBe(2800);
});

test('a size and rings with no comma between them are both heard, and a year then ours is an owner’s', () => {
  const { known } = talk(house).all(
    '5 kg picture on a thermal block wall, uk 1996 ours',
    '800x600 rings 80 in 150 down',
  );
  expect(known.wall?.baseMaterial).toBe('aerated-concrete');
  expect(known.building).toMatchObject({ country: 'UK', yearBuilt: 1996, tenure: 'owner' });
  expect(known.piece).toMatchObject({ widthMm: 800, heightMm: 600, hanging: { by: 'rings' } });
});
