import { describe, expect, test } from 'vitest';
import type { Hanging } from '../../../../core/piece/piece.ts';
import { planOf } from '../../../../core/plan.ts';
import type { ChainLink } from '../../../../core/plan-shape.ts';
import { kg, mm, STANDARD_GRAVITY } from '../../../../core/quantity.ts';
import { fixingJob, rings } from '../a-fixing-job.ts';

type Rings = Extract<Hanging, { by: 'rings' | 'keyholes' }>;
type Cord = Extract<Hanging, { by: 'cord' }>;

const byRings = (hanger: Rings['hanger']): Hanging => ({ ...rings(2, 800), ...(hanger && { hanger }) });
/** Rings 600 apart, on one hook in the middle. */
const cord = (riseMm: number, more: Partial<Cord> = {}): Hanging => ({
  by: 'cord',
  points: [
    { fromLeftMm: mm(100), fromTopMm: mm(250) },
    { fromLeftMm: mm(700), fromTopMm: mm(250) },
  ],
  riseMm: mm(riseMm),
  ...more,
});

const plan = (massKg: number, hanging: Hanging) => planOf(fixingJob({ kg: massKg, hanging }));
function link(made: ReturnType<typeof plan>, which: ChainLink['link']): ChainLink {
  const found = made.chain?.find((each) => each.link === which);
  if (!found) throw new Error(`no ${which}`);
  return found;
}
const ids = (made: ReturnType<typeof plan>, severity: string): string[] =>
  made.cautions.filter((each) => each.severity === severity).map((each) => each.id);

describe('the links between the piece and the wall', () => {
  test.each([
    ['d-ring', 8, 'trade 5.1, common practice'],
    ['strap-ring', 15, 'trade 5.1, common practice, the lower end'],
    ['screw-eye', 2.5, 'trade 5.1, common practice, 5 kg a pair'],
    ['mirror-plate', 5, 'trade 5.1, common practice'],
    ['sawtooth', 4, 'trade 5.1, common practice'],
  ] as const)('a %s is good for %d kg (%s)', (hanger, each, _source) => {
    const made = plan(2 * 2, byRings(hanger));
    expect(link(made, 'hanger').resistanceN).toBeCloseTo(each * STANDARD_GRAVITY, 0);
  });

  test.each([
    [16, 'warn', []],
    [16.2, 'warn', ['C-HG-4']],
    [31.8, 'warn', ['C-HG-4']],
    [32, 'stop', ['C-HG-3']],
  ] as const)(
    '%d kg on two D-rings of 8 kg each: %s %j (common practice; twice over stops, our choice)',
    (massKg, severity, expected) => {
      const said = ids(plan(massKg, byRings('d-ring')), severity).filter((id) => id.startsWith('C-HG'));
      expect(said).toEqual(expected);
    },
  );

  test('a stop by a link gives no mark and says what would clear it', () => {
    const made = plan(34, byRings('d-ring'));
    expect(made.verdict).toBe('stop');
    expect(made.marks).toEqual([]);
    expect(made.clear.join(' ')).toContain('strap ring on all of its four screws');
  });

  test('the weakest link is named: a strap ring at 10 of 15 kg (common practice) and the wall fixing apart', () => {
    const made = plan(20, byRings('strap-ring'));
    const most = Math.max(...(made.chain ?? []).map((each) => each.utilisation ?? 0));
    expect(made.weakest?.utilisation).toBe(most);
    expect(link(made, 'hanger').utilisation).toBeCloseTo(10 / 15, 2);
    expect(link(made, 'wall-fixing').utilisation).toBe(made.fixing?.utilisation);
  });

  test('a ring of unknown kind has no strength, only what it must be', () => {
    const ring = link(plan(24, byRings(undefined)), 'hanger');
    expect(ring.resistanceN).toBeUndefined();
    expect(ring.needs).toContain('strap ring on two or more screws (15 kg)');
  });

  test('an unrated cord at 45 degrees under 10 kg needs four times W / (2 sin 45) (statics; 49 CFR 393.108(e) by analogy)', () => {
    // T = 10 / (2 x 0.70711) = 7.07 kg; four times that 28.3, and the next whole kilogram is 29.
    const line = link(plan(10, cord(300)), 'cord');
    expect(line.actionN).toBeCloseTo(7.0711 * STANDARD_GRAVITY, 1);
    expect(line.resistanceN).toBeUndefined();
    expect(line.needs).toContain('rated 29 kg or more');
  });

  test.each([
    [29, [], []],
    [28, ['C-HG-2'], []],
    [14, [], ['C-HG-3']],
  ])(
    'a cord of %d kg breaking strength with 28.3 needed: warns %j, stops %j (our choice of severity)',
    (rated, warns, stops) => {
      const made = plan(10, cord(300, { cordRatingN: rated * STANDARD_GRAVITY, hanger: 'strap-ring' }));
      const onLinks = (severity: string) =>
        ids(made, severity).filter((id) => id === 'C-HG-2' || id === 'C-HG-3');
      expect(onLinks('warn')).toEqual(warns);
      expect(onLinks('stop')).toEqual(stops);
    },
  );

  test('0.9 mm of hard-drawn wire breaks at 1.16 kN (A227 by S_ut = A / d^m, read-secondary)', () => {
    const line = link(plan(10, cord(300, { cordKind: 'hard-drawn-steel', cordMm: mm(0.9) })), 'cord');
    expect((line.resistanceN ?? 0) * 4).toBeGreaterThan(1150);
    expect((line.resistanceN ?? 0) * 4).toBeLessThan(1170);
  });

  test.each([
    ['picture-wire', 0.9],
    ['hard-drawn-steel', 0.5],
    ['stainless-wire', 3],
  ] as const)('of %s at %d mm no table gives a strength, so none is said', (cordKind, size) => {
    const line = link(plan(10, cord(300, { cordKind, cordMm: mm(size) })), 'cord');
    expect(line.resistanceN).toBeUndefined();
    expect(line.needs).toContain('rated 29 kg');
  });

  test('a cord pulls its ring with its whole tension, not with half the weight (statics)', () => {
    const made = plan(10, cord(300, { hanger: 'strap-ring' }));
    expect(link(made, 'hanger').actionN).toBe(link(made, 'cord').actionN);
  });

  test('the screw of a D-ring in a 30 mm oak frame is computed; in 20 mm no published figure begins (NDS 12.3.1, read)', () => {
    const screw = (thicknessMm: number) => {
      const job = fixingJob({ kg: 10, hanging: byRings('d-ring') });
      job.piece.build = { frame: { material: 'oak', widthMm: mm(40), thicknessMm: mm(thicknessMm) } };
      job.piece.massKg = kg(10);
      return planOf(job).chain?.find((each) => each.link === 'hanger-screw');
    };
    expect(screw(30)?.utilisation).toBeLessThan(1);
    expect(screw(20)?.resistanceN).toBeUndefined();
    expect(screw(20)?.needs).toContain('22 mm of screw in the wood');
  });

  test('a batten over screws 400 apart bends by W s / 4 (statics; EN 338 C16, from memory)', () => {
    const made = plan(20, { by: 'batten', fromTopMm: mm(60), lengthMm: mm(700) });
    const gap = (made.marks[1]?.fromLeftMm ?? 0) - (made.marks[0]?.fromLeftMm ?? 0);
    // 18 x 80: t h2 / 6 = 19200 mm3; 16 x 0.6 / (1.3 x 1.35) = 5.470 MPa; 105 028 Nmm.
    const moment = (20 * STANDARD_GRAVITY * gap) / 4;
    expect(link(made, 'batten').utilisation).toBeCloseTo(moment / 105_028, 2);
  });
});
