import { expect, test } from 'vitest';
import type { BaseMaterial } from '../../../../core/wall/wall.ts';
import { expectHeard, hear, type Want } from '../as-said.ts';

const BARE = { 'wall.finish.kind': 'bare' };
const UNDER_IT = ['plaster', 'render', 'bare'];

test.each<[BaseMaterial, string, Want]>([
  ['clay-brick', 'painted', 'ask'],
  ['clay-brick', 'its painted white', 'ask'],
  ['concrete-block', 'paint', 'ask'],
  ['clay-brick', 'wallpaper', 'ask'],
  ['concrete', 'wallpapered', 'ask'],
  ['concrete', 'painted', BARE],
  ['clay-brick', 'just painted', BARE],
  ['clay-brick', 'bare brick, painted', BARE],
  ['clay-brick', 'painted plaster', { 'wall.finish.kind': 'plaster' }],
  [
    'clay-brick',
    'wallpaper on 12mm plaster',
    { 'wall.finish.kind': 'plaster', 'wall.finish.thicknessMm': 12 },
  ],
])(
  'what is under the paint of %s is asked where "%s" does not tell (invented)',
  (baseMaterial, say, want) => {
    expectHeard(hear(say, 'wall.finish', { known: { wall: { baseMaterial } } }), want);
  },
);

test('paint over brick is asked with what may be under it', () => {
  const { asks } = hear('painted', 'wall.finish', { known: { wall: { baseMaterial: 'clay-brick' } } });
  expect(asks[0]?.readings.map(({ fact }) => fact?.value.wall?.finish?.kind)).toEqual(UNDER_IT);
});

test('bare by its paint alone is confirmed', () => {
  const { facts } = hear('just painted', 'wall.finish', { known: { wall: { baseMaterial: 'clay-brick' } } });
  expect(facts).toMatchObject([{ inferred: true }]);
});

test('who says paint again, asked what is under it, is taken at the word and asked to confirm', () => {
  const known = { wall: { baseMaterial: 'clay-brick' as const } };
  const [offered] = hear('painted', 'wall.finish', { known }).asks;
  const again = hear('painted', 'wall.finish', { known, ...(offered && { offered }) });
  expect(again.facts).toMatchObject([{ value: { wall: { finish: { kind: 'bare' } } }, inferred: true }]);
});
