import { convert } from 'convert';
import { describe, expect, test } from 'vitest';
import { kg, mm } from '../../core/quantity.ts';
import { describe as inWords } from '../../flows/wording/describe.ts';
import { stepInUnit } from '../../flows/wording/in-unit.ts';
import { length, mass } from '../../flows/wording/length.ts';

describe('what is said', () => {
  test.each([
    [1025, 'mm', '1025 mm'],
    [1701.8, 'mm', '1701.8 mm'],
    [1025, 'cm', '102.5 cm'],
    [1025, 'm', '1.025 m'],
    // reference/safety-and-layout.md 12, arithmetic: 1450 = 57-1/16, 1525 = 60-1/16, 2030 = 79-15/16, 735 = 28-15/16
    [1450, 'in', '57-1/16 in'],
    [1525, 'in', '60-1/16 in'],
    [2030, 'in', '79-15/16 in'],
    [735, 'in', '28-15/16 in'],
  ] as const)('%d mm in %s is %s', (value, unit, said) => {
    expect(length(mm(value), unit)).toBe(said);
  });

  test.each([1, 17, 333.3, 1295.4, 2699])(
    '%d mm in inches is within half a sixteenth of what the convert library gives',
    (value) => {
      const [whole = '0', fraction = '0/1'] = length(mm(value), 'in').replace(' in', '').split('-');
      const [top = 0, bottom = 1] = (whole.includes('/') ? whole : fraction).split('/').map(Number);
      const inches = (whole.includes('/') ? 0 : Number(whole)) + top / bottom;
      expect(Math.abs(inches - convert(value, 'mm').to('in'))).toBeLessThanOrEqual(1 / 32 + 1e-9);
    },
  );

  test('a mass has pounds beside it for who speaks in inches', () => {
    // 8.16466266 kg = 18 lb exactly
    expect(mass(kg(8.16466266), 'in')).toBe('8.16 kg (18 lb)');
    expect(mass(kg(24), 'mm')).toBe('24 kg');
  });

  test('both hangers alike are said once', () => {
    const points = [
      { fromLeftMm: mm(95), fromTopMm: mm(240) },
      { fromRightMm: mm(95), fromTopMm: mm(240) },
    ];
    expect(inWords({ piece: { hanging: { by: 'rings', points } } }, 'mm')).toEqual([
      'rings: 95 mm from each side, 240 mm down',
    ]);
  });

  test('a step at the tape follows the unit; a bit keeps the millimetres it is bought in', () => {
    // 1295.4 / 25.4 = 51; 1701.8 / 25.4 = 67; 72 / 25.4 = 2.835 = 2-13/16
    const step = 'Tape on the wall. Mark A: 1295.4 mm from the left end, 1701.8 mm up from the floor.';
    expect(stepInUnit(step, 'in')).toBe(
      'Tape on the wall. Mark A: 51 in from the left end, 67 in up from the floor.',
    );
    expect(stepInUnit(step, 'm')).toContain('1.295 m from the left end');
    const drill = 'Drill 8 mm masonry bit, stop at 72 mm, rotary, no hammer.';
    expect(stepInUnit(drill, 'cm')).toBe(drill);
    expect(stepInUnit(drill, 'in')).toBe(
      'Drill 5/16 in (8 mm) masonry bit, stop at 2-13/16 in, rotary, no hammer.',
    );
  });
});
