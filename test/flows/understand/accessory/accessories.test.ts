import { describe, expect, test } from 'vitest';
import type { JobSoFar } from '../../../../core/job.ts';
import { mm } from '../../../../core/quantity.ts';
import { hear } from '../as-said.ts';
import { FACES, namesOf, ONE_FITTING, rows, SEVERAL, TO_BE_ASKED, WALL_KNOWN } from './fittings-as-said.ts';

function toldIn(say: string, wall: JobSoFar['wall'] = {}): { told: string; farSide: string | undefined } {
  const { facts } = hear(say, 'wall.accessories', { known: { wall } });
  const value = facts.find(({ question }) => question === 'wall.accessories')?.value.wall;
  return { told: namesOf(value), farSide: value?.farSide };
}

describe('fittings of a wall', () => {
  test.each(rows([...ONE_FITTING, ...SEVERAL]))('"$say" (invented): $told', ({ say, told }) => {
    expect(toldIn(say).told).toBe(told);
  });

  test.each(rows(FACES))('"$say" (invented): each on its own face, $told', ({ say, told, farSide }) => {
    expect(toldIn(say)).toEqual({ told, farSide });
  });

  test.each(rows(TO_BE_ASKED))('"$say" (invented): kept to be asked for, $told', ({ say, told, farSide }) => {
    expect(toldIn(say)).toEqual({ told, farSide });
    expect(hear(say, 'wall.accessories').facts.some(({ partial }) => partial !== undefined)).toBe(true);
  });

  test.each(rows(WALL_KNOWN))(
    '"$say" (invented), on a wall 3000 by 2400: $told',
    ({ say, told, farSide }) => {
      expect(toldIn(say, { widthMm: mm(3000), heightMm: mm(2400) })).toEqual({ told, farSide });
    },
  );

  test('small bare figures are asked for their unit, never taken for millimetres', () => {
    const { facts, asks } = hear('socket 30 up, 60 from the left', 'wall.accessories');
    expect(facts).toEqual([]);
    const spots = asks[0]?.readings.map(({ fact }) => fact?.value.wall?.accessories);
    // 60 cm and 30 cm; 60 in = 1524 mm and 30 in = 762 mm
    expect(spots).toEqual([
      [{ kind: 'socket', face: 'this', xMm: 600, yMm: 300 }],
      [{ kind: 'socket', face: 'this', xMm: 1524, yMm: 762 }],
    ]);
  });
});
