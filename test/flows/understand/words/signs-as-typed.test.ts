import { describe, test } from 'vitest';
import { expectHeard, hear, type Row } from '../as-said.ts';

const size = (widthMm: number, heightMm: number) => ({
  'piece.widthMm': widthMm,
  'piece.heightMm': heightMm,
});
const IN = 25.4;

/** Invented by us, inches exact by definition. What nobody sees parts no figure; what hides one is not read. */
const ROWS: Row[] = [
  ['piece.massKg', '2\u200b4 kg', { 'piece.massKg': 24 }],
  ['piece.massKg', '2\u00ad4 kg', { 'piece.massKg': 24 }],
  ['piece.massKg', '24\u2060kg\ufeff', { 'piece.massKg': 24 }],
  ['piece.massKg', '\u200e24 kg\u200f', { 'piece.massKg': 24 }],
  ['piece.massKg', '\u202a24\u202c kg', 'not-understood'],
  ['piece.massKg', '\u202e42\u202c kg', 'not-understood'],
  ['piece.massKg', '2\u00004 kg', 'not-understood'],
  ['piece.massKg', '2😀4 kg', 'ask'],
  ['piece.massKg', '😀 24 kg 👍🏽', { 'piece.massKg': 24 }],
  ['piece.massKg', '２４kg', { 'piece.massKg': 24 }],
  ['piece.massKg', '24\u00a0kg', { 'piece.massKg': 24 }],
  ['piece.massKg', '24\u202fkg', { 'piece.massKg': 24 }],
  ['piece.massKg', '24½ kg', { 'piece.massKg': 24.5 }],
  ['piece.massKg', '1,200 g', 'ask'],
  ['wall.widthMm', '2\u00a0700', { 'wall.widthMm': 2700 }],
  ['wall.widthMm', '2\u202f700 mm', { 'wall.widthMm': 2700 }],
  ['wall.widthMm', '2.7 m', { 'wall.widthMm': 2700 }],
  ['wall.widthMm', '2,7 m', { 'wall.widthMm': 2700 }],
  ['wall.widthMm', '2,700', { 'wall.widthMm': 2700 }],
  ['wall.widthMm', '1,200', { 'wall.widthMm': 1200 }],
  ['wall.widthMm', '11’ 2”', { 'wall.widthMm': 134 * IN }],
  ['wall.widthMm', '11′ 2″', { 'wall.widthMm': 134 * IN }],
  ['piece.size', '35½” × 47¼”', size(35.5 * IN, 47.25 * IN)],
  ['piece.size', '35 ½ x 47 ¾ in', size(35.5 * IN, 47.75 * IN)],
  ['piece.size', '24″ x 36″', size(24 * IN, 36 * IN)],
  ['piece.size', '９００×１２００', size(900, 1200)],
  ['piece.size', '900\u200b x 1\u200b200', size(900, 1200)],
  ['piece.depthMm', '1¼"', { 'piece.depthMm': 1.25 * IN }],
];

describe('signs as phones type them', () => {
  test.each(ROWS)('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });
});
