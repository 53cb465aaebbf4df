import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Country } from '../../../core/job.ts';
import { mm } from '../../../core/quantity.ts';
import { clearancesOf, type Hole, reachOf } from '../../../core/wall/clearance.ts';
import type { Accessory } from '../../../core/wall/wall.ts';
import type { ZoneWall } from '../../../core/wall/zone.ts';
import { zonesOf } from '../../../core/wall/zones.ts';
import { cases } from '../caution/cases.ts';

const SEVERITY = { inside: 'stop', tight: 'warn', clear: 'note' } as const;

type Plate = { cx: number; cy: number; w: number; h: number };
const plate = (face: 'this' | 'far', { cx, cy, w, h }: Plate): Accessory => ({
  kind: 'socket',
  face,
  xMm: mm(cx),
  yMm: mm(cy),
  widthMm: mm(w),
  heightMm: mm(h),
});

const hole = (x: number, y: number, ceiling: number): Hole => ({
  id: 'A',
  xMm: mm(x),
  upMm: mm(y),
  downMm: mm(ceiling - y),
});

function nearest(wall: ZoneWall, country: Country, x: number, y: number) {
  const found = clearancesOf(hole(x, y, wall.heightMm ?? 2400), zonesOf(wall, country))[0];
  if (!found) throw new Error('no zone');
  return { zone: found.zone.id, distance: found.distanceMm, severity: SEVERITY[reachOf(found, mm(0))] };
}

const socket: Accessory = { kind: 'socket', face: 'this', xMm: mm(1250), yMm: mm(300) };
const far: Accessory = { ...socket, face: 'far', xMm: mm(900), yMm: mm(1200) };
const brick = (accessories: Accessory[], thicknessMm = 230): ZoneWall => ({
  widthMm: mm(4000),
  heightMm: mm(2400),
  thicknessMm: mm(thicknessMm),
  baseMaterial: 'clay-brick',
  accessories,
});
const ids = (wall: ZoneWall, country: Country): string[] => zonesOf(wall, country).map((zone) => zone.id);

describe('keep-clear zones', () => {
  it.each(cases('KC-03', 'KC-04', 'KC-05', 'KC-07', 'KC-08'))('$title', ({ inputs, expected, tolerance }) => {
    const wall: ZoneWall = {
      widthMm: mm(inputs.wall.w),
      heightMm: mm(inputs.wall.h),
      thicknessMm: mm(inputs.wall.t),
      accessories: inputs.accessories.map((each: Plate) => plate('this', each)),
    };
    const found = nearest(wall, 'UK', inputs.hole[0], inputs.hole[1]);
    expect(found.zone).toBe(expected.nearest_zone);
    expect(Math.abs(found.distance - expected.signed_distance_to_zone)).toBeLessThanOrEqual(tolerance);
    expect(found.severity).toBe(expected.severity);
  });

  it.each(cases('KC-R2'))('$title', ({ inputs, expected }) => {
    const accessories = inputs.reverse_accessories_in_other_room_coords.map((each: Plate) =>
      plate('far', each),
    );
    const wall: ZoneWall = { ...brick(accessories), thicknessMm: mm(inputs.wall.t) };
    const found = nearest(wall, 'UK', inputs.hole[0], inputs.hole[1]);
    expect(found).toEqual({
      zone: expected.nearest_zone,
      distance: expected.signed_distance_to_zone,
      severity: expected.severity,
    });
  });

  it.each(cases('KC-A1'))('$title', ({ inputs, expected }) => {
    const found = nearest(brick([]), inputs.country, inputs.distance_from_internal_corner_mm, 1200);
    expect(found.zone).toContain(expected.zone);
    expect(found.severity).toBe(expected.severity);
  });

  // The socket's plate is 146 wide about 1250, so its strip ends at 1323.
  it.each([
    [1323, 'UK', 'stop'],
    [1324, 'UK', 'warn'],
    [1323 + 49, 'UK', 'warn'],
    [1323 + 50, 'UK', 'warn'],
    [1323 + 51, 'UK', 'note'],
    [1323 + 74, 'US', 'warn'],
    [1323 + 76, 'US', 'note'],
  ] as const)(
    'a hole at %i beside a socket strip that ends at 1323 in %s is a %s (our choice)',
    (x, country, severity) => {
      expect(nearest(brick([socket]), country, x, 1500).severity).toBe(severity);
    },
  );

  // Figures to a tenth whose sums a computer gets wrong by 1e-13: 1726.7 + 146.2 / 2 = 1799.8, 1657.3 + 73 = 1730.3.
  it.each([
    [1726.7, 146.2, 1799.8],
    [1657.3, 146, 1730.3],
    [1726.9, 146, 1799.9],
    [1234.6, 86.6, 1277.9],
  ])('a hole on the very edge of the strip of a plate at %d, %d wide, is inside at %d', (cx, width, x) => {
    const on = (at: number) =>
      nearest(brick([{ ...socket, xMm: mm(cx), widthMm: mm(width) }]), 'UK', at, 1500).severity;
    expect([on(x), on(x + 0.1)]).toEqual(['stop', 'warn']);
  });

  it('a bit of 8 mm makes a hole tight 4 mm further out', () => {
    const [found] = clearancesOf(hole(1323 + 53, 1500, 2400), zonesOf(brick([socket]), 'UK'));
    expect(found && [reachOf(found, mm(2)), reachOf(found, mm(4))]).toEqual(['clear', 'tight']);
  });

  it.each([
    [100, 'stop', 'far0-vertical'],
    [101, 'note', 'top'],
  ] as const)(
    'a socket 900 from the left on the far side of a %i mm wall is a %s at 3100 on this side',
    (thickness, severity, zone) => {
      expect(nearest(brick([far], thickness), 'UK', 3100, 1500)).toMatchObject({ severity, zone });
    },
  );

  it('a wall nobody measured counts as thin', () => {
    const { thicknessMm: _, ...wall } = brick([far]);
    expect(nearest(wall, 'UK', 3100, 1500).severity).toBe('stop');
  });

  it('the far side of a thick stud wall warns for cables and stops for pipes', () => {
    const studs: ZoneWall = { ...brick([far], 114), baseMaterial: 'plasterboard-on-timber-studs' };
    expect(nearest(studs, 'US', 3100, 1500).severity).toBe('warn');
    const pipes: ZoneWall = { ...studs, accessories: [{ ...far, kind: 'tap' }] };
    expect(nearest(pipes, 'US', 3100, 1500).severity).toBe('stop');
  });

  // The tap's plate is 146 wide about 1250: 1250 + 73 + 75 = 1398, and the margin of 50 ends at 1448.
  it.each([
    [1398, 'stop'],
    [1398.1, 'warn'],
    [1448, 'warn'],
    [1448.1, 'note'],
  ] as const)('plumbing keeps 75 mm clear on each side: a hole at %d is a %s (our choice)', (x, severity) => {
    expect(nearest(brick([{ ...socket, kind: 'tap' }]), 'UK', x, 1500).severity).toBe(severity);
  });

  it('windows and doors hide no service', () => {
    const openings: Accessory[] = [
      { ...socket, kind: 'window' },
      { ...socket, kind: 'door' },
    ];
    expect(ids(brick(openings), 'UK')).toEqual(ids(brick([]), 'UK'));
  });

  it('an open end has no corner band', () => {
    expect(ids({ ...brick([]), ends: { left: 'open' } }, 'UK')).toEqual(['top', 'corner-right']);
  });

  it('the United States has no published band, only the strips', () => {
    expect(ids(brick([socket]), 'US')).toEqual(['acc0-vertical', 'acc0-horizontal']);
  });

  it('the mirror image of a wall keeps the mirror image of every distance', () => {
    const at = fc.integer({ min: 0, max: 4000 });
    fc.assert(
      fc.property(
        at,
        at,
        fc.integer({ min: 0, max: 2400 }),
        fc.constantFrom<'this' | 'far'>('this', 'far'),
        (x, sx, y, face) => {
          const distance = (holeX: number, plateX: number): number => {
            const wall = brick([{ ...socket, face, xMm: mm(plateX) }], 90);
            return nearest(wall, 'AU', holeX, y).distance;
          };
          expect(distance(4000 - x, 4000 - sx)).toBeCloseTo(distance(x, sx), 6);
        },
      ),
    );
  });
});
