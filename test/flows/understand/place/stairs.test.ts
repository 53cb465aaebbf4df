import { expect, test } from 'vitest';
import type { WallDatum } from '../../../../core/wall/wall.ts';
import { placeInWords } from '../../../../flows/wording/place.ts';
import { hear } from '../as-said.ts';

const datumIn = (say: string, known: WallDatum | undefined) =>
  hear(say, 'wall.accessories', known && { known: { wall: { datum: known } } }).facts.flatMap(
    ({ value }) => value.wall?.datum ?? [],
  );

test.each<[string, Partial<WallDatum> | undefined]>([
  [
    'the stairs rise 180, going 250 and climb to the right',
    { riseMm: 180, goingMm: 250, climbs: 'right' } as WallDatum,
  ],
  [
    'stairs, riser 175 tread 260, going up to the left',
    { riseMm: 175, goingMm: 260, climbs: 'left' } as WallDatum,
  ],
  ['steps 180 rise 250 going', { riseMm: 180, goingMm: 250 } as WallDatum],
  ['the stairs climb to the right', undefined],
  ['rise 180, going 250', undefined],
])('before heights are from a nosing, "%s" (invented)', (say, heard) => {
  expect(datumIn(say, undefined)).toEqual(heard === undefined ? [] : [{ kind: 'nosing', ...heard }]);
});

test.each<[string, Partial<WallDatum>]>([
  ['rise 180, going 250', { riseMm: 180, goingMm: 250 } as WallDatum],
  ['they go up to the left', { climbs: 'left' }],
])('once heights are from a nosing, "%s" (invented)', (say, heard) => {
  expect(datumIn(say, { kind: 'nosing' })).toEqual([{ kind: 'nosing', ...heard }]);
});

test('a riser by itself is a pipe, stairs or no stairs', () => {
  expect(datumIn('riser 175 in, 260 up', { kind: 'nosing' })).toEqual([]);
});

test('what was heard of a flight is said back', () => {
  const [datum] = datumIn('stairs, rise 180, going 250, climb to the right', undefined);
  expect(placeInWords({ wall: { ...(datum && { datum }) } }, 'mm')).toContain(
    'stairs: rise 180 mm, going 250 mm, up to the right',
  );
});
