import { describe, expect, it } from 'vitest';
import { SILICA_LIMITS } from '../../../../core/caution/health/dust.ts';
import { dosePercent, NOISE, noiseHours } from '../../../../core/caution/health/noise.ts';
import type { Country } from '../../../../core/job.ts';
import type { BaseMaterial } from '../../../../core/wall/wall.ts';
import { cases } from '../cases.ts';
import { heldAt, jobWith, saidOf, severityOf } from '../ordinary-job.ts';

describe('dust and noise', () => {
  it.each(cases('SI-03'))('$title', ({ inputs, expected }) => {
    expect(SILICA_LIMITS[inputs.country as Country]?.value).toBe(expected.wel_mg_m3);
  });

  it.each(cases('SI-05'))('$title', ({ inputs, expected }) => {
    const job = jobWith({
      wall: { baseMaterial: inputs.material, tensioned: 'no' },
      crew: { dustExtraction: inputs.shroud },
    });
    const said = saidOf(job).find(({ id }) => id === 'C-SI-1');
    expect(said?.severity).toBe(expected.severity);
    for (const word of ['FFP3', 'P2', 'N95', 'others out']) expect(said?.text).toContain(word);
  });

  it.each(cases('NO-01'))('$title', ({ inputs, expected, tolerance }) => {
    const allowed = noiseHours(inputs.level_dBA, NOISE.osha.value);
    expect(allowed).toEqual({ ok: true, hours: expected.permitted_h });
    const dose = dosePercent(inputs.minutes / 60, expected.permitted_h);
    expect(Math.abs(dose - expected.dose_pct)).toBeLessThanOrEqual(tolerance);
  });

  it.each(cases('NO-02'))('$title', ({ inputs, expected, tolerance }) => {
    const allowed = noiseHours(inputs.level_dBA, NOISE.niosh.value);
    expect(allowed.ok && Math.abs(allowed.hours * 60 - expected.permitted_min) <= tolerance).toBe(true);
  });

  // 29 CFR 1926.52 Table D-2 (read-secondary): 90 dBA 8 h, 100 2 h, 115 a quarter.
  it.each([
    [90, 8],
    [100, 2],
    [115, 0.25],
  ])('Table D-2 allows %i dBA for %f hours (29 CFR 1926.52, read-secondary)', (level, hours) => {
    expect(noiseHours(level, NOISE.osha.value)).toEqual({ ok: true, hours });
  });

  it.each([89, 116, Number.NaN])('%f dBA is not covered by the table', (level) => {
    expect(noiseHours(level, NOISE.osha.value)).toEqual({ ok: false, because: 'notCovered' });
  });

  it.each<[BaseMaterial, boolean, string | undefined, string | undefined]>([
    ['clay-brick', true, undefined, 'note'],
    ['clay-brick', false, 'warn', undefined],
    ['fibre-cement-on-studs', false, 'warn', undefined],
    ['plasterboard-on-timber-studs', false, undefined, undefined],
  ])('drilling %s with extraction %s', (baseMaterial, dustExtraction, without, withIt) => {
    const said = saidOf(jobWith({ wall: { baseMaterial }, crew: { dustExtraction } }));
    expect([severityOf(said, 'C-SI-1'), severityOf(said, 'C-SI-2')]).toEqual([without, withIt]);
  });

  it('Australia counts drilling brick as processing silica, Britain does not', () => {
    expect(severityOf(saidOf(jobWith()), 'C-SI-4')).toBe('warn');
    expect(severityOf(saidOf(jobWith({ building: { country: 'UK' } })), 'C-SI-4')).toBeUndefined();
  });

  it('a rail hook drills nothing, so nothing is said of dust', () => {
    const hook = heldAt(0, { fastener: 'picture-rail-hook', bit: { ...heldAt(0).fixing.bit, kind: 'none' } });
    expect(
      saidOf(jobWith({ crew: { dustExtraction: false } }), undefined, hook).map(({ id }) => id),
    ).not.toContain('C-SI-1');
  });
});
