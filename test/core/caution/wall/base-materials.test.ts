import { expect, test } from 'vitest';
import { kg } from '../../../../core/quantity.ts';
import type { BaseMaterial } from '../../../../core/wall/wall.ts';
import { heldAt, jobWith, saidOf, severityOf } from '../ordinary-job.ts';

type Expected = {
  'C-SI-4'?: 'warn';
  'C-GT-8'?: 'warn';
  'C-WL-3'?: 'warn';
  'C-WL-4'?: 'warn';
  'C-AB-4'?: 'note';
};

const SILICA = { 'C-SI-4': 'warn' } as const;
const SUSPECT_ONCE = { 'C-AB-4': 'note' } as const;
const IDS = ['C-SI-4', 'C-GT-8', 'C-WL-3', 'C-WL-4', 'C-AB-4'] as const;

test.each<[BaseMaterial, Expected]>([
  ['clay-brick', SILICA],
  ['concrete-block', SILICA],
  ['concrete', SILICA],
  ['aerated-concrete', SILICA],
  ['natural-stone', SILICA],
  ['plasterboard-on-timber-studs', SUSPECT_ONCE],
  ['plasterboard-on-steel-studs', { ...SUSPECT_ONCE, 'C-GT-8': 'warn' }],
  ['plasterboard-on-dabs', { ...SILICA, ...SUSPECT_ONCE, 'C-WL-4': 'warn' }],
  ['lath-and-plaster', { ...SILICA, 'C-WL-3': 'warn' }],
  ['fibre-cement-on-studs', { ...SILICA, ...SUSPECT_ONCE }],
  ['timber', {}],
])(
  'in an Australian house of 2010 with %s behind bare paint: dust, frame, keys, gap and old sheets as the wall has them (reference 2, 4, 9 and 11, common practice; sand in plaster: common practice)',
  (baseMaterial, expected) => {
    const job = jobWith({ piece: { massKg: kg(12) }, wall: { baseMaterial, finish: { kind: 'bare' } } });
    const said = saidOf(job);
    const found = Object.fromEntries(
      IDS.flatMap((id) => {
        const severity = severityOf(said, id);
        return severity === undefined ? [] : [[id, severity]];
      }),
    );
    expect(found).toEqual(expected);
  },
);

test.each([
  ['clay-brick', 'Brick dust'],
  ['natural-stone', 'Stone dust'],
  ['aerated-concrete', 'Block dust'],
  ['lath-and-plaster', 'Old sand plaster dust'],
  ['fibre-cement-on-studs', 'Cement sheet dust'],
] as const)('the dust of %s is called what it is', (baseMaterial, words) => {
  const job = jobWith({
    wall: { baseMaterial, finish: { kind: 'bare' } },
    crew: { dustExtraction: false },
  });
  expect(saidOf(job).find(({ id }) => id === 'C-SI-1')?.text).toContain(words);
});

test('ear protection is asked for only where the plan hammers (29 CFR 1926.102 and 1926.52, from memory)', () => {
  const bit = heldAt(40).fixing.bit;
  const words = (action: typeof bit.action) =>
    saidOf(jobWith(), undefined, heldAt(40, { bit: { ...bit, action } })).find(({ id }) => id === 'C-PP-1')
      ?.text;
  expect(words('hammer-after-finish')).toMatch(/ear protection/);
  expect(words('rotary')).toBe('Glasses on.');
});
