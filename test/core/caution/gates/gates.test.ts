import { describe, expect, it } from 'vitest';
import { EVENT_CAUTIONS } from '../../../../core/caution/events.ts';
import { inSeparatingWall } from '../../../../core/caution/gates/separating.ts';
import { replyDue } from '../../../../core/caution/gates/tenancy.ts';
import { cordFactor } from '../../../../core/caution/hanging/hanging.ts';
import { tiltCaution } from '../../../../core/caution/hanging/level.ts';
import { stopsSoFar } from '../../../../core/caution/rules.ts';
import type { JobSoFar } from '../../../../core/job.ts';
import { degrees, kg, mm } from '../../../../core/quantity.ts';
import { PLATE_STEEL } from '../../../../core/wall/stud-setback.ts';
import { cases } from '../cases.ts';
import { jobWith, saidOf, severityOf } from '../ordinary-job.ts';

describe('gates', () => {
  it.each(cases('GT-01'))('$title', ({ inputs, expected }) => {
    expect(inputs.scan).toBe(false);
    const flat = jobWith({
      building: { kind: 'flat' },
      wall: { baseMaterial: 'concrete', tensioned: 'possible' },
    });
    expect(severityOf(saidOf(flat), 'C-GT-1')).toBe(expected.severity);
  });

  it.each([
    ['flat', 'unknown', 'stop'],
    ['flat', 'scanned', undefined],
    ['flat', 'no', undefined],
    ['house', 'possible', 'stop'],
    ['house', 'unknown', 'warn'],
    ['unknown', 'unknown', 'warn'],
  ] as const)('concrete in a %s, tensioned %s: C-GT-1 is %s', (kind, tensioned, severity) => {
    const job = jobWith({ building: { kind }, wall: { baseMaterial: 'concrete', tensioned } });
    expect(severityOf(saidOf(job), 'C-GT-1')).toBe(severity);
    expect(stopsSoFar(job).some(({ id }) => id === 'C-GT-1')).toBe(severity === 'stop');
  });

  it.each(cases('GT-02'))('$title', ({ expected }) => {
    const said = saidOf(jobWith({ building: { country: 'UK' }, wall: { separating: true } }));
    expect(severityOf(said, 'C-GT-4')).toBe(expected.severity);
    expect(said.find(({ id }) => id === 'C-GT-4')?.text).toContain('too minor to need a notice');
    expect(expected.notice_needed).toBe(false);
  });

  it.each(cases('GT-04'))('$title', ({ inputs, expected }) => {
    expect(replyDue(inputs.request_day)).toEqual({
      dueDay: expected.landlord_reply_due_day,
      days: expected.days,
    });
  });

  it.each(cases('GT-05'))('$title', ({ expected }) => {
    expect(inSeparatingWall('cut-out')).toBe(expected.severity);
    expect(inSeparatingWall('through-bolt')).toBe(expected.severity);
    expect(severityOf(saidOf(jobWith({ wall: { separating: true } })), 'C-GT-5')).toBe('warn');
  });

  it.each(cases('KC-D4'))('$title', ({ expected, tolerance }) => {
    expect(EVENT_CAUTIONS['steel-behind-board'].severity).toBe(expected.severity);
    expect(Math.abs(PLATE_STEEL.value - expected.plate_min_mm)).toBeLessThanOrEqual(tolerance);
  });

  it.each<[string, JobSoFar, string[]]>([
    ['nothing said', {}, []],
    ['a tenant who has not been asked for consent', { building: { tenure: 'tenant' } }, []],
    ['a tenant who does not know', { building: { tenure: 'tenant', consent: 'unknown' } }, ['C-GT-2']],
    ['a tenant refused', { building: { tenure: 'tenant', consent: false } }, ['C-GT-2']],
    [
      'an owner of a client’s wall who refused',
      { building: { tenure: 'client', consent: false } },
      ['C-GT-2'],
    ],
    ['a client not asked', { building: { tenure: 'client', consent: 'unknown' } }, []],
    ['an owner who says no to himself', { building: { tenure: 'owner', consent: false } }, []],
    ['a refused wall whose owner nobody named', { building: { consent: false } }, ['C-GT-2']],
    ['a tenant allowed', { building: { tenure: 'tenant', consent: true } }, []],
    ['a client', { building: { tenure: 'client' } }, []],
    ['heritage', { building: { heritage: true } }, ['C-GT-3']],
    ['heritage not known', { building: { heritage: 'unknown', yearBuilt: 1880 } }, []],
    ['a wall that crumbles', { wall: { condition: 'poor' } }, ['C-WL-5']],
    ['a wall nobody can tell', { wall: { baseMaterial: 'unknown' } }, ['C-WL-1']],
    ['both faces unknown', { wall: { accessories: 'unknown' } }, ['C-SV-4']],
    [
      'a far face unknown in a thin wall',
      { wall: { accessories: [], farSide: 'unknown', thicknessMm: mm(100) } },
      ['C-SV-4'],
    ],
    [
      'a far face unknown in a thick wall',
      { wall: { accessories: [], farSide: 'unknown', thicknessMm: mm(101) } },
      [],
    ],
    ['a far face unknown, thickness not asked', { wall: { accessories: [], farSide: 'unknown' } }, []],
    ['a shower wall', { wall: { wet: 'shower' } }, ['C-WA-1']],
    [
      'a shower wall, up to 1800 and no more: 680 + 1120',
      {
        wall: { wet: 'shower' },
        piece: { heightMm: mm(1120) },
        place: { up: { by: 'bottom-above', mm: mm(680) } },
      },
      ['C-WA-1'],
    ],
    [
      'a shower wall, reaching above 1800, where its holes decide: 681 + 1120',
      {
        wall: { wet: 'shower' },
        piece: { heightMm: mm(1120) },
        place: { up: { by: 'bottom-above', mm: mm(681) } },
      },
      [],
    ],
    [
      'a shower wall, all above 1800',
      { wall: { wet: 'shower' }, place: { up: { by: 'bottom-above', mm: mm(1801) } } },
      [],
    ],
    ['mains', { piece: { lit: true } }, ['C-SV-8']],
    ['50 kg', { piece: { massKg: kg(50) } }, []],
    ['over 50 kg', { piece: { massKg: kg(50.1) } }, ['C-GT-9']],
    ['a public place', { building: { kind: 'public' } }, ['C-GT-9']],
    ['concrete in a flat, not asked', { building: { kind: 'flat' }, wall: { baseMaterial: 'concrete' } }, []],
  ])('%s: an unfinished job stops for exactly what is certain', (_, job, ids) => {
    expect(stopsSoFar(job).map(({ id }) => id)).toEqual(ids);
  });

  it('every stop says why, and what would clear it', () => {
    const everything = stopsSoFar({
      building: {
        tenure: 'tenant',
        consent: false,
        heritage: true,
        kind: 'flat',
        yearBuilt: 1970,
        country: 'AU',
      },
      piece: { lit: true, massKg: kg(60) },
      wall: {
        baseMaterial: 'concrete',
        coating: 'textured',
        tensioned: 'possible',
        accessories: 'unknown',
        wet: 'shower',
        condition: 'poor',
      },
      place: { below: 'cot' },
      crew: { people: 1, lifter: false },
    });
    expect(everything.map(({ id }) => id).sort()).toEqual(
      [
        'C-AB-1',
        'C-BZ-1',
        'C-FL-2',
        'C-GT-1',
        'C-GT-2',
        'C-GT-3',
        'C-GT-9',
        'C-MH-2',
        'C-SV-4',
        'C-SV-8',
        'C-WA-1',
        'C-WL-5',
      ].sort(),
    );
    for (const { text, clears, basis } of everything) {
      expect(text.length).toBeGreaterThan(40);
      expect(clears).toBeTruthy();
      expect(basis.length).toBeGreaterThan(1);
    }
  });

  it.each([
    [0.19, undefined],
    [0.2, 'C-LV-1'],
    [0.59, 'C-LV-1'],
    [0.6, 'C-LV-2'],
    [-0.6, 'C-LV-2'],
  ])('a tilt of %f degrees is %s (Vision Research 1990, read; 0.2 ours)', (tilt, id) => {
    expect(tiltCaution(degrees(tilt))?.id).toBe(id);
  });

  it('a cord at 30 degrees pulls once the weight, at 10 degrees 2.88 times (statics, trade 5.2)', () => {
    expect(cordFactor(degrees(30))).toBeCloseTo(1, 9);
    expect(cordFactor(degrees(10))).toBeCloseTo(2.88, 2);
  });

  it.each([
    ['tenant', true, undefined],
    ['tenant', false, 'stop'],
    ['tenant', 'unknown', 'stop'],
    ['client', false, 'stop'],
    ['client', 'unknown', undefined],
    ['unknown', false, 'stop'],
    ['owner', false, undefined],
  ] as const)('tenure %s, consent %s: C-GT-2 is %s (contract 4)', (tenure, consent, severity) => {
    expect(severityOf(saidOf(jobWith({ building: { tenure, consent } })), 'C-GT-2')).toBe(severity);
  });
});
