import { describe, test } from 'vitest';
import { expectHeard, hear, type Row } from '../as-said.ts';

/** Invented by us: walls and what is on them as they are typed on site. Inches 25.4 mm, pounds 0.45359237 kg, stone 14 of them, exact by definition. */
const ROWS: Row[] = [
  ['wall.baseMaterial', 'plasterboard', 'ask'],
  ['wall.baseMaterial', 'its hollow when i knock', 'ask'],
  ['wall.baseMaterial', 'red brick', { 'wall.baseMaterial': 'clay-brick' }],
  ['wall.baseMaterial', 'brik', { 'wall.baseMaterial': 'clay-brick' }],
  ['wall.baseMaterial', 'solid', 'ask'],
  ['wall.baseMaterial', 'tilt up concrete', { 'wall.baseMaterial': 'concrete' }],
  ['wall.baseMaterial', 'brick veneer', 'ask'],
  ['wall.baseMaterial', 'old horsehair plaster on laths', { 'wall.baseMaterial': 'lath-and-plaster' }],
  [
    'wall.baseMaterial',
    'cavity brick with 10mm render',
    { 'wall.baseMaterial': 'clay-brick', 'wall.finish.kind': 'render', 'wall.finish.thicknessMm': 10 },
  ],
  ['wall.baseMaterial', 'tongue and groove boards', { 'wall.baseMaterial': 'timber' }],
  [
    'wall.baseMaterial',
    'stone, about 600 thick',
    { 'wall.baseMaterial': 'natural-stone', 'wall.thicknessMm': 600 },
  ],
  ['wall.baseMaterial', 'either brick or block', 'ask'],
  ['wall.baseMaterial', 'no idea mate', 'dont-know'],
  ['wall.baseMaterial', 'metal stud partition', { 'wall.baseMaterial': 'plasterboard-on-steel-studs' }],
  ['wall.baseMaterial', 'cinderblock', { 'wall.baseMaterial': 'concrete-block' }],
  ['wall.finish', 'just painted', { 'wall.finish.kind': 'bare', 'wall.finish.thicknessMm': undefined }],
  ['wall.finish', 'painted plaster', { 'wall.finish.kind': 'plaster' }],
  ['wall.finish', 'wallpaper over plaster', { 'wall.finish.kind': 'plaster' }],
  ['wall.finish', 'bare brick', { 'wall.finish.kind': 'bare', 'wall.finish.thicknessMm': undefined }],
  ['wall.baseMaterial', 'quarzolit block', 'ask'],
  ['wall.baseMaterial', 'novabel blockwork', 'ask'],
  ['wall.baseMaterial', 'grey blocks', { 'wall.baseMaterial': 'concrete-block' }],
  [
    'wall.baseMaterial',
    'core filled block',
    { 'wall.baseMaterial': 'concrete-block', 'wall.cores': 'solid' },
  ],
  ['wall.finish', '10mm of hard plaster', { 'wall.finish.kind': 'plaster', 'wall.finish.thicknessMm': 10 }],
  ['wall.finish', 'half inch plaster', { 'wall.finish.kind': 'plaster', 'wall.finish.thicknessMm': 12.7 }],
  ['wall.finish', 'just wallpaper', 'ask'],
  ['wall.finish', 'tiled', { 'wall.finish.kind': 'tile', 'wall.finish.thicknessMm': undefined }],
  [
    'wall.finish',
    'plaster, no idea how thick',
    { 'wall.finish.kind': 'plaster', 'wall.finish.thicknessMm': undefined },
  ],
  ['wall.finish', '15', 'ask'],
  ['wall.finish', 'skim coat 3mm', { 'wall.finish.kind': 'plaster', 'wall.finish.thicknessMm': 3 }],
];

describe('the wall, as typed on site', () => {
  test.each(ROWS)('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });
});
