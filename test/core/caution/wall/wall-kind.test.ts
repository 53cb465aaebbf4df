import { describe, expect, it } from 'vitest';
import { mm } from '../../../../core/quantity.ts';
import { plugInBase } from '../../../../core/wall/plug-depth.ts';
import { cases } from '../cases.ts';
import { heldAt, jobWith, saidOf, severityOf } from '../ordinary-job.ts';

const plug = { diameterMm: mm(8), lengthMm: mm(50) };

describe('what the wall is', () => {
  it.each(cases('WL-01'))('$title', ({ inputs, expected }) => {
    expect(inputs.set_flush_with).toBe('plaster face');
    const inMasonry = plugInBase(mm(inputs.plug_mm), mm(inputs.plaster_mm), mm(0));
    expect(inMasonry).toBe(expected.in_masonry_mm);
    expect(inMasonry >= inputs.plug_mm).toBe(expected.ok_if_full_length_required);
  });

  // The ordinary job: a plug of 50 behind 12 of plaster needs a hole of 62 or more.
  it.each([
    [61, 'warn'],
    [62, undefined],
    [72, undefined],
  ])('a hole of %i for a plug of 50 behind 12 of plaster: C-WL-2 is %s', (depth, severity) => {
    expect(severityOf(saidOf(jobWith(), undefined, heldAt(depth, { plug })), 'C-WL-2')).toBe(severity);
  });

  it.each([
    ['lath-and-plaster', 'C-WL-3', 'warn'],
    ['plasterboard-on-dabs', 'C-WL-4', 'warn'],
    ['plasterboard-on-steel-studs', 'C-GT-8', 'warn'],
    ['clay-brick', 'C-WL-3', undefined],
  ] as const)('a heavy piece on %s: %s is %s (common practice)', (baseMaterial, id, severity) => {
    expect(severityOf(saidOf(jobWith({ wall: { baseMaterial } })), id)).toBe(severity);
  });
});
