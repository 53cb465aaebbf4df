import { describe, expect, test } from 'vitest';
import type { QuestionName } from '../../../../flows/question.ts';
import { QUESTIONS } from '../../../../flows/questions/all.ts';
import type { AskBack } from '../../../../flows/reading.ts';
import { factForChoice } from '../../../../flows/understand/understand.ts';
import { expectHeard, hear, type Want } from '../as-said.ts';
import { at } from '../score.ts';

function offeredFor(say: string, question: QuestionName): AskBack {
  const [ask] = hear(say, question).asks;
  if (ask === undefined) throw new Error(`"${say}" is not asked back`);
  return ask;
}

type Pick = readonly [asked: QuestionName, first: string, then: string, want: Want];
const is = (material: string) => ({ 'wall.baseMaterial': material });

/** A word with two meanings, then the reading that is picked. Invented by us. */
const PICKS: Pick[] = [
  ['wall.baseMaterial', 'plaster wall', 'lath and plaster', is('lath-and-plaster')],
  ['wall.baseMaterial', 'plaster wall', 'the first', is('clay-brick')],
  ['wall.baseMaterial', 'plaster wall', 'the second one', is('concrete-block')],
  ['wall.baseMaterial', 'plaster wall', 'wet plaster', 'ask'],
  ['wall.baseMaterial', 'plaster wall', 'wet plaster on brick', is('clay-brick')],
  ['wall.baseMaterial', 'plaster wall', 'plasterboard', 'ask'],
  ['wall.baseMaterial', 'plasterboard', 'timber', is('plasterboard-on-timber-studs')],
  ['wall.baseMaterial', 'plasterboard', 'steel studs', is('plasterboard-on-steel-studs')],
  ['wall.baseMaterial', 'plasterboard', 'dabs', is('plasterboard-on-dabs')],
  ['wall.baseMaterial', 'plasterboard', 'the last one', is('plasterboard-on-dabs')],
  ['wall.baseMaterial', 'drywall', 'wood studs', is('plasterboard-on-timber-studs')],
  ['wall.baseMaterial', 'brick house', 'brick inside too', is('clay-brick')],
  ['wall.baseMaterial', 'block', 'aerated', is('aerated-concrete')],
  ['wall.baseMaterial', 'brick or block', 'block', is('concrete-block')],
  ['wall.baseMaterial', 'plasterboard', 'no its brick', is('clay-brick')],
  ['wall.baseMaterial', 'plasterboard', 'no idea', 'dont-know'],
  ['piece.size', '40 x 60', 'inches', { 'piece.widthMm': 1016, 'piece.heightMm': 1524 }],
  ['piece.size', '40 x 60', 'cm', { 'piece.widthMm': 400, 'piece.heightMm': 600 }],
  ['piece.size', '40 x 60', '900 x 1200', { 'piece.widthMm': 900, 'piece.heightMm': 1200 }],
  ['place.up', '1500', 'centre', { 'place.up.by': 'centre-at', 'place.up.mm': 1500 }],
  ['place.up', '1500', 'the bottom', { 'place.up.by': 'bottom-above', 'place.up.mm': 1500 }],
  ['place.up', 'eye level', 'yes', { 'place.up.by': 'centre-at', 'place.up.mm': 1500 }],
  ['place.up', 'eye level', 'centre at 1550', { 'place.up.by': 'centre-at', 'place.up.mm': 1550 }],
  [
    'place.across',
    '450 from the left',
    'left edge',
    { 'place.across.by': 'left-edge', 'place.across.mm': 450 },
  ],
  [
    'place.across',
    '450 from the left',
    'the centre',
    { 'place.across.by': 'centre-at', 'place.across.mm': 450 },
  ],
  ['wall.finish', '15', 'plaster', { 'wall.finish.kind': 'plaster', 'wall.finish.thicknessMm': 15 }],
  [
    'wall.accessories',
    'none that I know of',
    'looked at both faces',
    { 'wall.accessories': [], 'wall.farSide': 'seen' },
  ],
  ['hazards', 'yes', 'a bathroom', { 'wall.wet': 'bathroom' }],
];

describe('what was asked back is picked', () => {
  test.each(PICKS)('%s: "%s", then "%s" (invented)', (asked, first, then, want) => {
    expectHeard(hear(then, asked, { offered: offeredFor(first, asked) }), want);
  });

  const buttons = Object.entries(QUESTIONS).flatMap(([name, question]) =>
    name === 'confirm' || name === 'acknowledge'
      ? []
      : question.choices.filter(({ value }) => value !== 'unknown').map(({ value }) => ({ name, value })),
  );
  test.each(buttons)('the button $value of $name records a fact for it', ({ name, value }) => {
    const fact = factForChoice(name as QuestionName, value);
    expect(fact?.question).toBe(name);
    expect(Object.keys(fact?.value ?? {}).length).toBeGreaterThan(0);
  });

  test.each([
    ['wall.baseMaterial', 'clay-brick', 'wall.baseMaterial', 'clay-brick'],
    ['building.country', 'AU', 'building.country', 'AU'],
    ['crew.people', '2', 'crew.people', 2],
    ['crew.dustExtraction', 'yes', 'crew.dustExtraction', true],
    ['place.across', 'centre', 'place.across.by', 'centre'],
    ['wall.finish', 'tile', 'wall.finish.kind', 'tile'],
    ['hazards', 'bathroom,lit', 'wall.wet', 'bathroom'],
    ['hazards', 'bathroom,lit', 'piece.lit', true],
    ['hazards', 'bathroom,lit', 'building.heritage', false],
    ['hazards', 'none', 'wall.condition', 'sound'],
  ] as const)('%s: %s sets %s to %s', (question, choice, path, value) => {
    expect(at(factForChoice(question, choice)?.value, path)).toBe(value);
  });

  test.each([
    ['wall.baseMaterial', 'marzipan'],
    ['piece.kind', 'yes'],
    ['hazards', 'bathroom,dragons'],
    ['crew.people', '99'],
    ['confirm', 'yes'],
  ] as const)('%s has no button %s', (question, choice) => {
    expect(factForChoice(question, choice)).toBeNull();
  });
});
