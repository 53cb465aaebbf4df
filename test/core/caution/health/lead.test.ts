import { describe, expect, it } from 'vitest';
import { leadFinding } from '../../../../core/caution/health/lead.ts';
import {
  disturbedByHoles,
  disturbedByPanel,
  squareFeet,
  withinMinorRepair,
} from '../../../../core/caution/health/lead-area.ts';
import { mm } from '../../../../core/quantity.ts';
import { cases } from '../cases.ts';
import { jobWith, saidOf, severityOf } from '../ordinary-job.ts';

describe('lead paint', () => {
  it.each(cases('PB-01', 'PB-02', 'PB-03', 'PB-05', 'PB-06', 'PB-07'))('$title', ({ inputs, expected }) => {
    expect(leadFinding(inputs.country, inputs.year_built)).toBe(expected.severity);
    const said = saidOf(jobWith({ building: { country: inputs.country, yearBuilt: inputs.year_built } }));
    const spoken = severityOf(said, 'C-PB-1') ?? severityOf(said, 'C-PB-2') ?? null;
    expect(spoken).toBe(expected.severity);
  });

  it.each(cases('PB-08'))('$title', ({ inputs, expected, tolerance }) => {
    const area = disturbedByHoles(inputs.holes, mm(inputs.diameter_mm));
    expect(area).toBeCloseTo(expected.area_mm2, 3);
    expect(Math.abs(squareFeet(area) - expected.area_ft2)).toBeLessThanOrEqual(tolerance);
    expect(withinMinorRepair(area)).toBe(expected.within_6_ft2);
  });

  it.each(cases('PB-09'))('$title', ({ inputs, expected, tolerance }) => {
    const area = disturbedByPanel(mm(inputs.cutout_w_mm), mm(inputs.cutout_h_mm));
    expect(Math.abs(squareFeet(area) - expected.area_ft2)).toBeLessThanOrEqual(tolerance);
    expect(withinMinorRepair(area)).toBe(expected.within_6_ft2);
  });

  it.each([
    ['AU', 1979, 'warn'],
    ['AU', 1980, 'note'],
    ['AU', 1997, 'note'],
    ['AU', 1998, null],
    ['UK', 1992, 'note'],
    ['UK', 1993, null],
    ['unknown', null, 'warn'],
  ] as const)('in %s paint of %s is %s (safety-and-layout 3; severity ours)', (country, year, severity) => {
    expect(leadFinding(country, year)).toBe(severity);
  });
});
