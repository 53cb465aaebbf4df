import { describe, expect, it } from 'vitest';
import { removalistNeeded } from '../../../../core/caution/health/asbestos-licence.ts';
import { asbestosFinding, type Suspect } from '../../../../core/caution/health/asbestos-lines.ts';
import { stopsSoFar } from '../../../../core/caution/rules.ts';
import type { Building, Country } from '../../../../core/job.ts';
import type { BaseMaterial, Wall } from '../../../../core/wall/wall.ts';
import { cases } from '../cases.ts';
import { jobWith, saidOf, severityOf } from '../ordinary-job.ts';

const MATERIALS: Record<string, Suspect> = { 'solid-brick-with-gypsum-plaster': 'not-suspect' };

const soFar = (building: Building, wall: Partial<Wall>): string[] =>
  stopsSoFar({ building, wall }).map(({ id }) => id);

describe('asbestos', () => {
  it.each(cases('AS-06', 'AS-07', 'AS-08', 'AS-09', 'AS-10', 'AS-11', 'AS-12'))(
    '$title',
    ({ inputs, expected }) => {
      const material = MATERIALS[inputs.material] ?? (inputs.material as Suspect);
      const found = asbestosFinding({
        country: inputs.country,
        year: inputs.year_built,
        material,
        testedClear: inputs.tested_clear,
      });
      expect(found?.severity).toBe(expected.severity);
    },
  );

  it.each(cases('AS-13'))('$title', ({ inputs, expected }) => {
    expect(removalistNeeded(inputs.kind, inputs.area_m2)).toBe(expected.licensed_removalist_required);
    expect(removalistNeeded('non-friable', 10)).toBe(false);
    expect(removalistNeeded('friable', 0.1)).toBe(true);
  });

  it.each([
    ['AU', 1990, 'fibre-cement', 'C-AB-1'],
    ['AU', 1991, 'fibre-cement', 'C-AB-2'],
    ['AU', 2003, 'fibre-cement', 'C-AB-2'],
    ['AU', 2004, 'fibre-cement', 'C-AB-4'],
    ['AU', 1990, 'textured-coating', 'C-AB-1'],
    ['AU', 1991, 'textured-coating', 'C-AB-3'],
    ['UK', 1999, 'textured-coating', 'C-AB-1'],
    ['UK', 2000, 'textured-coating', 'C-AB-4'],
    ['NZ', 1999, 'fibre-cement', 'C-AB-1'],
    ['NZ', 2000, 'fibre-cement', 'C-AB-4'],
    ['US', 1980, 'textured-coating', 'C-AB-1'],
    ['US', 1981, 'textured-coating', 'C-AB-3'],
    ['US', 1990, 'textured-coating', 'C-AB-3'],
    ['US', 1991, 'textured-coating', 'C-AB-4'],
    ['US', 1980, 'joint-compound-plasterboard', 'C-AB-1'],
    ['US', 1981, 'joint-compound-plasterboard', 'C-AB-3'],
  ] as const)(
    'in %s a wall of %i with %s is %s (safety-and-layout 2; severity ours)',
    (country, year, material, id) => {
      expect(asbestosFinding({ country, year, material, testedClear: false })?.id).toBe(id);
    },
  );

  it('a laboratory result clears it', () => {
    expect(
      asbestosFinding({ country: 'AU', year: 1974, material: 'fibre-cement', testedClear: true }),
    ).toBeNull();
  });

  it.each<
    [string, Country | 'unknown', number | 'unknown', BaseMaterial, Wall['coating'], string | undefined]
  >([
    ['an old fibre cement sheet', 'AU', 1974, 'fibre-cement-on-studs', 'none', 'stop'],
    ['a fibre cement sheet of unknown age', 'AU', 'unknown', 'fibre-cement-on-studs', 'none', 'stop'],
    ['a new fibre cement sheet', 'AU', 2014, 'fibre-cement-on-studs', 'none', undefined],
    ['an old textured coating on brick', 'UK', 1975, 'clay-brick', 'textured', 'stop'],
    ['a textured coating of unknown age', 'UK', 'unknown', 'clay-brick', 'textured', 'stop'],
    [
      'plain board whose coating nobody named, of unknown age',
      'UK',
      'unknown',
      'plasterboard-on-timber-studs',
      'unknown',
      undefined,
    ],
    [
      'filled board joints in America before 1981',
      'US',
      1972,
      'plasterboard-on-timber-studs',
      'none',
      'stop',
    ],
  ])('%s', (_, country, yearBuilt, baseMaterial, coating, severity) => {
    const wall = { baseMaterial, ...(coating !== undefined && { coating }) };
    const job = jobWith({ building: { country, yearBuilt }, wall });
    expect(severityOf(saidOf(job), 'C-AB-1')).toBe(severity);
    expect(soFar({ country, yearBuilt }, wall).includes('C-AB-1')).toBe(severity === 'stop');
  });

  it('a suspect sheet whose year was not asked yet stops nothing yet, and an unfinished answer does', () => {
    expect(soFar({ country: 'AU' }, { baseMaterial: 'fibre-cement-on-studs' })).toEqual([]);
    expect(soFar({ country: 'AU', yearBuilt: 'unknown' }, { baseMaterial: 'fibre-cement-on-studs' })).toEqual(
      ['C-AB-1'],
    );
  });

  it.each([
    [1974, true],
    [1991, false],
  ])(
    'with no country said a sheet of %i is certain to stop only where every country stops it',
    (yearBuilt, certain) => {
      expect(soFar({ yearBuilt }, { baseMaterial: 'fibre-cement-on-studs' }).includes('C-AB-1')).toBe(
        certain,
      );
    },
  );

  it('nothing that is said of a suspect sheet tells how to drill it', () => {
    const said = saidOf(
      jobWith({ building: { yearBuilt: 1974 }, wall: { baseMaterial: 'fibre-cement-on-studs' } }),
    );
    const words = said.map(({ text }) => text).join(' ');
    expect(words).not.toMatch(/drill slowly|vacuum the hole|mist the spot|hammer drilling/i);
    expect(words).toMatch(/picture rail/);
  });
});
