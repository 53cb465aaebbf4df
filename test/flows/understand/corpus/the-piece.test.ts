import { describe, test } from 'vitest';
import { expectHeard, hear, type Row } from '../as-said.ts';

/** Invented by us: mass, size and hangers as they are typed on site. Inches 25.4 mm, pounds 0.45359237 kg, stone 14 of them, exact by definition. */
const ROWS: Row[] = [
  ['piece.massKg', 'bout 18 kilo i reckon', { 'piece.massKg': 18 }],
  ['piece.massKg', '12.5', { 'piece.massKg': 12.5 }],
  ['piece.massKg', '40lb', { 'piece.massKg': 18.1437 }],
  ['piece.massKg', 'forty pounds', { 'piece.massKg': 18.1437 }],
  ['piece.massKg', '3 stone', { 'piece.massKg': 19.0509 }],
  ['piece.massKg', '3st 4lb', { 'piece.massKg': 20.8652 }],
  ['piece.massKg', 'two and a half stone', { 'piece.massKg': 15.8757 }],
  ['piece.massKg', 'under 20', { 'piece.massKg': 20 }],
  ['piece.massKg', 'less than 20kg', { 'piece.massKg': 20 }],
  ['piece.massKg', 'at least 15 kg', 'ask'],
  ['piece.massKg', '15 to 20 kilos', { 'piece.massKg': 20 }],
  ['piece.massKg', 'no more than 12kg', { 'piece.massKg': 12 }],
  ['piece.massKg', '9 kg without the glass', 'ask'],
  ['piece.massKg', 'glass 12kg frame 6kg', { 'piece.massKg': undefined }],
  ['piece.massKg', '24kgs give or take', { 'piece.massKg': 24 }],
  ['piece.massKg', '24 kilogrammes', { 'piece.massKg': 24 }],
  ['piece.massKg', '0.5 tonne', { 'piece.massKg': 500 }],
  ['piece.massKg', '24 mm', 'reject'],
  ['piece.massKg', 'light', 'reject'],
  ['piece.massKg', 'twenty-four', { 'piece.massKg': 24 }],
  ['piece.massKg', '53 pounds 8 ounces', { 'piece.massKg': 24.2672 }],
  ['piece.massKg', 'i can lift it with one hand', 'reject'],
  ['piece.size', '900w x 1200h', { 'piece.widthMm': 900, 'piece.heightMm': 1200 }],
  ['piece.size', 'h1200 w900', { 'piece.widthMm': 900, 'piece.heightMm': 1200 }],
  ['piece.size', '1.2 x .9', { 'piece.widthMm': 1200, 'piece.heightMm': 900 }],
  ['piece.size', '120cm high by 90cm wide', { 'piece.widthMm': 900, 'piece.heightMm': 1200 }],
  ['piece.size', '3 foot by 2 foot 6', { 'piece.widthMm': 914.4, 'piece.heightMm': 762 }],
  ['piece.size', "2'6\" x 3'", { 'piece.widthMm': 762, 'piece.heightMm': 914.4 }],
  ['piece.size', '600 square', { 'piece.widthMm': 600, 'piece.heightMm': 600 }],
  ['piece.size', '600mm diameter', { 'piece.widthMm': 600, 'piece.heightMm': 600 }],
  ['piece.size', 'same as a door', 'reject'],
  ['piece.size', '900 wide, dont know the height', { 'piece.widthMm': 900, 'piece.heightMm': undefined }],
  ['piece.size', '36 by 48', 'ask'],
  ['piece.size', '900/1200', { 'piece.widthMm': 900, 'piece.heightMm': 1200 }],
  ['piece.size', '1200 by 900 landscape', { 'piece.widthMm': 1200, 'piece.heightMm': 900 }],
  ['piece.size', '90cm', { 'piece.widthMm': 900, 'piece.heightMm': undefined }],
  ['piece.size', '10cm', { 'piece.heightMm': undefined }],
  ['piece.size', '4 foot round', { 'piece.widthMm': 1219.2, 'piece.heightMm': 1219.2 }],
  ['piece.size', 'nine hundred by twelve hundred', { 'piece.widthMm': 900, 'piece.heightMm': 1200 }],
  [
    'piece.hanging',
    'french cleat 100 down 600 long',
    { 'piece.hanging.by': 'batten', 'piece.hanging.fromTopMm': 100, 'piece.hanging.lengthMm': 600 },
  ],
  ['piece.hanging', 'wire', { 'piece.hanging.by': 'cord' }],
  ['piece.hanging', 'keyholes', { 'piece.hanging.by': 'keyholes' }],
  ['piece.hanging', "it doesn't have any hangers", 'reject'],
  [
    'piece.hanging',
    'z bar 50 down 500 long',
    { 'piece.hanging.by': 'batten', 'piece.hanging.fromTopMm': 50, 'piece.hanging.lengthMm': 500 },
  ],
  ['piece.hanging', 'two hooks on the back', { 'piece.hanging.by': 'rings' }],
  ['piece.hanging', 'mirror plates at the sides', 'reject'],
  ['piece.hanging', '240 down', 'ask'],
];

describe('the piece, as typed on site', () => {
  test.each(ROWS)('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });
});
