import { describe, expect, test } from 'vitest';
import { planOf } from '../../../../core/plan.ts';
import { mm } from '../../../../core/quantity.ts';
import { fixingJob } from '../../fixing/a-fixing-job.ts';

const onClips = (lowerRail?: boolean | 'unknown') =>
  planOf(
    fixingJob({
      kg: 8,
      hanging: {
        by: 'clips',
        points: [
          { fromLeftMm: mm(100), fromTopMm: mm(990) },
          { fromRightMm: mm(100), fromTopMm: mm(990) },
        ],
        standOffMm: mm(2),
        ...(lowerRail !== undefined && { lowerRail }),
      },
    }),
  );

describe('frameless glass on clips (trade 5.1, common practice)', () => {
  test('clips without a rail stop the job and leave no mark', () => {
    const plan = onClips(false);
    expect(plan.verdict).toBe('stop');
    expect(plan.marks).toEqual([]);
    expect(plan.clear.join(' ')).toContain('lower rail');
  });

  test.each([undefined, 'unknown'] as const)(
    'whether there is a rail not known (%s): warned, never a stop',
    (rail) => {
      const said = onClips(rail).cautions.filter((each) => each.id === 'C-HG-3');
      expect(said.map((each) => each.severity)).toEqual(['warn']);
    },
  );

  test('with a lower rail its screws are the marks, and the glass is kept off the metal', () => {
    const plan = onClips(true);
    expect(plan.cautions.map((each) => each.id)).not.toContain('C-HG-3');
    expect(plan.advice.join(' ')).toContain('soft washers');
  });
});
