import { describe, expect, it } from 'vitest';
import { cautionsOf, stopsSoFar } from '../../../../core/caution/rules.ts';
import { deepFrom, isDeep } from '../../../../core/caution/services/services.ts';
import { mm } from '../../../../core/quantity.ts';
import type { Accessory, Wall } from '../../../../core/wall/wall.ts';
import { heldAt, jobWith, saidOf, setOutAt, severityOf } from '../ordinary-job.ts';

const socket = (xMm: number, yMm = 300): Accessory => ({
  kind: 'socket',
  face: 'this',
  xMm: mm(xMm),
  yMm: mm(yMm),
});
const said = (wall: Partial<Wall>, ...points: (readonly [number, number])[]) =>
  saidOf(jobWith({ wall }), points);
const textOf = (cautions: ReturnType<typeof said>, id: string): string | undefined =>
  cautions.find((each) => each.id === id)?.text;

describe('hidden services', () => {
  it.each([
    [49, undefined],
    [50, undefined],
    [51, 'warn'],
  ])(
    'a hole %i mm deep: C-SV-3 is %s (BS 7671 522.6.202, read-secondary; severity ours)',
    (depth, severity) => {
      expect(severityOf(saidOf(jobWith(), undefined, heldAt(depth)), 'C-SV-3')).toBe(severity);
    },
  );

  it('in an American stud wall the depth budget is the board and 31.75 mm (NEC 300.4, read-secondary)', () => {
    const job = jobWith({
      building: { country: 'US' },
      wall: { baseMaterial: 'plasterboard-on-timber-studs', boardMm: mm(12.7) },
    });
    expect([44.4, 44.5].map((depth) => severityOf(saidOf(job, undefined, heldAt(depth)), 'C-SV-3'))).toEqual([
      undefined,
      'warn',
    ]);
    expect(isDeep(mm(50.1), mm(50))).toBe(true);
    expect(deepFrom).toBeTypeOf('function');
  });

  // The socket at 1025 is 146 wide: its strip ends at 952 and 1098, and 50 + 4 mm of margin and bit at 898 and 1152.
  // Mark A at 1025 clears to the right at 1152.x: 128; to the left at 897: 128. Right has 1675 + 128 + 95 < 2700.
  it('a mark straight above a socket stops, and the text says how far the whole piece has to move', () => {
    const cautions = said({ accessories: [socket(1025)] }, [1025, 1680], [1675, 1680]);
    expect(severityOf(cautions, 'C-SV-1')).toBe('stop');
    expect(textOf(cautions, 'C-SV-1')).toMatch(/Mark A is straight above or below the socket/);
    expect(textOf(cautions, 'C-SV-1')).toMatch(/at least 128 mm to the (left|right)/);
  });

  // Two sockets, 1025 and 1675 + 100: going right by 128 puts B at 1803, still within 1775 + 73 + 54; going left is clear.
  it('the move is of the whole piece: a way that puts the other mark in a zone is not taken', () => {
    const cautions = said({ accessories: [socket(1025), socket(1775)] }, [1025, 1680], [1675, 1680]);
    expect(textOf(cautions, 'C-SV-1')).toMatch(/at least 128 mm to the left/);
  });

  it('a mark level with a socket is cleared by going up or down, not sideways', () => {
    const cautions = said({ accessories: [socket(300, 1670)] }, [1025, 1680], [1675, 1680]);
    expect(textOf(cautions, 'C-SV-1')).toMatch(
      /No move sideways clears it\. (Raise|Lower) the whole piece at least \d+ mm/,
    );
  });

  // A at 1152 is 54 mm from the strip's end at 1098: the margin and the radius of an 8 mm bit.
  it.each([
    [1152, 'warn'],
    [1153, undefined],
  ] as const)('a mark at %i beside a socket at 1025 is C-SV-2 %s', (x, severity) => {
    expect(severityOf(said({ accessories: [socket(1025)] }, [x, 1680]), 'C-SV-2')).toBe(severity);
  });

  it('while something else stops, how near a mark is to a cable is not said', () => {
    const near = { accessories: [socket(905)] };
    expect(severityOf(said(near, [1025, 1680]), 'C-SV-2')).toBe('warn');
    const rented = jobWith({ wall: near, building: { tenure: 'tenant', consent: false } });
    expect(saidOf(rented, [[1025, 1680]]).map(({ id }) => id)).not.toContain('C-SV-2');
  });

  // The strip is 937 to 1083: right by 1083 + 54 - 1025 + 1 = 113 would put the frame's edge from 1770 to 1883, over a
  // door that begins at 1850; left it is 1025 - (937 - 54) + 1 = 143.
  it('the move never puts the piece over a door', () => {
    const door: Accessory = {
      ...socket(1950, 1000),
      kind: 'door',
      widthMm: mm(200),
      heightMm: mm(2000),
    };
    const cautions = said({ accessories: [socket(1010), door] }, [1025, 1680], [1675, 1680]);
    expect(textOf(cautions, 'C-SV-1')).toMatch(/at least 143 mm to the left/);
  });

  it('a mark under a basin tap stops for the pipe, and the words are of plumbing', () => {
    const cautions = said({ accessories: [{ ...socket(1025), kind: 'tap' }] }, [1025, 1680]);
    expect(severityOf(cautions, 'C-SV-6')).toBe('stop');
    expect(textOf(cautions, 'C-SV-6')).toMatch(/pipe/);
  });

  it('with a mantel of unknown height the strips across are still checked, and the floor heights are given', () => {
    const job = jobWith({ wall: { datum: { kind: 'mantel' }, accessories: [socket(1025, 300)] } });
    const setOut = setOutAt(
      [
        [1025, 1020],
        [1675, 1020],
      ],
      { datumAboveFloorMm: null },
    );
    const cautions = cautionsOf({ job, setOut, fixing: heldAt(40) });
    expect(severityOf(cautions, 'C-SV-1')).toBe('stop');
    const beside = cautionsOf({
      job: jobWith({ wall: { datum: { kind: 'mantel' }, accessories: [socket(300, 300)] } }),
      setOut,
      fixing: heldAt(40),
    });
    expect(severityOf(beside, 'C-SV-1')).toBeUndefined();
    expect(severityOf(beside, 'C-SV-2')).toBe('warn');
    expect(textOf(beside, 'C-SV-2')).toMatch(/257 to 343 mm above the floor/);
    expect(textOf(beside, 'C-SV-2')).toMatch(/above 2250 mm/);
  });

  it('a mantel of known height lifts the marks: 1020 above a mantel of 1100 is level with a switch at 2120', () => {
    const job = jobWith({
      wall: { datum: { kind: 'mantel', aboveFloorMm: mm(1100) }, accessories: [socket(300, 2120)] },
    });
    const setOut = setOutAt([[1025, 1020]], { datumAboveFloorMm: mm(1100) });
    expect(severityOf(cautionsOf({ job, setOut, fixing: null }), 'C-SV-1')).toBe('stop');
  });

  it('set down from a ceiling of unknown height the band is still known', () => {
    const { heightMm: _, ...wall } = jobWith({ wall: { datum: { kind: 'ceiling' } } }).wall;
    const job = { ...jobWith(), wall };
    const at = (down: number) => {
      const setOut = setOutAt([[1025, 0]], { datumAboveFloorMm: null });
      const marks = setOut.marks.map(({ upMm: __, ...mark }) => ({ ...mark, downMm: mm(down) }));
      return severityOf(cautionsOf({ job, setOut: { ...setOut, marks }, fixing: heldAt(40) }), 'C-SV-1');
    };
    expect([at(150), at(205)]).toEqual(['stop', undefined]);
  });

  it.each<[string, Partial<Wall>, string | undefined]>([
    ['nobody looked', { accessories: 'unknown' }, 'stop'],
    ['both faces looked at', { accessories: [] }, undefined],
    ['only this face, wall of 100', { accessories: [], farSide: 'unknown', thicknessMm: mm(100) }, 'stop'],
    ['only this face, wall of 101', { accessories: [], farSide: 'unknown', thicknessMm: mm(101) }, undefined],
  ])('%s: C-SV-4 is %s', (_, wall, severity) => {
    expect(severityOf(saidOf(jobWith({ wall })), 'C-SV-4')).toBe(severity);
  });

  it('accessories that are absent stop a whole job and not an unfinished one', () => {
    const { accessories: _, ...wall } = jobWith().wall;
    expect(severityOf(saidOf({ ...jobWith(), wall }), 'C-SV-4')).toBe('stop');
    expect(stopsSoFar({ ...jobWith(), wall })).toEqual([]);
  });

  it.each([
    ['UK', 1980, undefined, 'warn'],
    ['UK', 1981, undefined, undefined],
    ['UK', 1968, 1995, undefined],
    ['UK', 1995, 'unknown', undefined],
    ['UK', 'unknown', undefined, 'warn'],
    ['US', 1995, undefined, 'warn'],
    ['AU', 2010, undefined, undefined],
  ] as const)(
    '%s, built %s, rewired %s: C-SV-7 is %s (15th edition 1981, read-secondary)',
    (country, yearBuilt, rewired, severity) => {
      const building = { country, yearBuilt, ...(rewired !== undefined && { rewiredYear: rewired }) };
      expect(severityOf(saidOf(jobWith({ building })), 'C-SV-7')).toBe(severity);
    },
  );
});
