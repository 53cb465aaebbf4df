import { describe, test } from 'vitest';
import { expectHeard, hear, type Row } from '../as-said.ts';

const finish = (kind: string, thicknessMm: number) => ({
  'wall.finish.kind': kind,
  'wall.finish.thicknessMm': thicknessMm,
});

/** Invented by us. What carries nothing goes through to the base, so coats add up: 8 + 5 = 13. */
const ROWS: Row[] = [
  ['wall.finish', 'tiles 8mm on 5mm adhesive', finish('tile', 8 + 5)],
  ['wall.finish', '8mm tiles on 5mm adhesive', finish('tile', 8 + 5)],
  ['wall.finish', '10mm tile and 5 mm adhesive', finish('tile', 10 + 5)],
  ['wall.finish', 'tile 10, adhesive 5', finish('tile', 10 + 5)],
  ['wall.finish', '8mm tile over 12mm render', finish('tile', 8 + 12)],
  ['wall.finish', '3mm skim over 10mm plaster', finish('plaster', 3 + 10)],
  ['wall.finish', '12 mm plaster', finish('plaster', 12)],
  ['wall.finish', 'tiles, 8mm', finish('tile', 8)],
  [null, 'tiled brick wall, 8mm tiles on 5mm adhesive', finish('tile', 8 + 5)],
  [null, 'brick with 12mm render, wall 2.7m', { ...finish('render', 12), 'wall.widthMm': 2700 }],
];

describe('coats one over another', () => {
  test.each(ROWS)('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });
});
