import fc from 'fast-check';
import { expect, test } from 'vitest';
import { loadOf } from '../../../core/fixing/acting/actions.ts';
import { chooseFixing } from '../../../core/fixing/choose.ts';
import { pick } from '../../../core/fixing/choose-from.ts';
import type { Shank } from '../../../core/fixing/masonry/walk-row.ts';
import { bendingResistance } from '../../../core/fixing/steel/shank-strength.ts';
import { walkedOf } from '../../../core/fixing/walk-candidates.ts';
import { setOut } from '../../../core/layout/marks.ts';
import { kg, mm, newtons } from '../../../core/quantity.ts';
import type { Wall } from '../../../core/wall/wall.ts';
import { readableJob, wildJob } from '../layout/any-job.ts';
import { chooseFor, fixingJob, rings } from './a-fixing-job.ts';

const walls: fc.Arbitrary<Partial<Wall>> = fc.record({
  baseMaterial: fc.constantFrom('clay-brick', 'concrete-block', 'concrete', 'plasterboard-on-timber-studs'),
  cores: fc.constantFrom('solid', 'perforated', 'hollow', 'unknown'),
  finish: fc.record({
    kind: fc.constantFrom('bare', 'plaster', 'render', 'tile'),
    thicknessMm: fc.integer({ min: 0, max: 40 }).map(mm),
  }),
  studs: fc.constantFrom(
    'unknown' as const,
    { spacingMm: mm(450), firstMm: mm(225), widthMm: mm(45) },
    { spacingMm: mm(600), firstMm: mm(300), widthMm: mm(45) },
  ),
  boardMm: fc.constantFrom(mm(10), mm(13), mm(16)),
});
const given = fc.record({
  wall: walls,
  hangers: fc.integer({ min: 1, max: 4 }),
  widthMm: fc.integer({ min: 400, max: 1600 }),
  standOffMm: fc.integer({ min: 0, max: 12 }),
  country: fc.constantFrom('AU', 'UK', 'US'),
});
const mass = fc.double({ min: 0.2, max: 45, noNaN: true });
type Given = typeof given extends fc.Arbitrary<infer T> ? T : never;

const jobOf = (each: Given, kg: number) => ({
  kg,
  wall: each.wall,
  widthMm: each.widthMm,
  country: each.country as 'AU',
  hanging: rings(each.hangers, each.widthMm, each.standOffMm),
});

/** The walk, reckoned through: `at` is the row chosen, or past the last when nothing holds. */
function walked(each: Given, kg: number) {
  const job = fixingJob(jobOf(each, kg));
  const layout = setOut(job);
  if (!layout.ok) throw new Error(layout.text);
  const walk = walkedOf(job, layout, loadOf(job, layout), null)?.walk ?? [];
  const { chosen } = pick(walk);
  return { walk, at: chosen === null ? walk.length : walk.indexOf(chosen) };
}

test('a heavier piece never gets a weaker fastener: never an earlier line of the same walk', () => {
  fc.assert(
    fc.property(given, mass, mass, (each, one, other) => {
      const light = walked(each, Math.min(one, other));
      const heavy = walked(each, Math.max(one, other));
      expect(heavy.at).toBeGreaterThanOrEqual(light.at);
    }),
  );
});

test('with the fastener held fixed a heavier piece never lowers utilisation', () => {
  fc.assert(
    fc.property(given, mass, mass, (each, one, other) => {
      const light = walked(each, Math.min(one, other)).walk;
      const heavy = walked(each, Math.max(one, other)).walk;
      expect(heavy).toHaveLength(light.length);
      for (const [at, row] of light.entries()) {
        const same = heavy[at];
        if (!row.ok || !same?.ok) continue;
        // A board whose hangers want a second screw each is another fastening.
        if (row.fixing().hangerScrews !== same.fixing().hangerScrews) continue;
        expect(same.worst.utilisation).toBeGreaterThanOrEqual(row.worst.utilisation * (1 - 1e-9));
      }
    }),
  );
});

test('a deeper finish never raises bending resistance', () => {
  const shank = fc.constantFrom<Shank>(6, 8, 10, 12, 14, 'coach-8', 'stud-M8');
  const depth = fc.double({ min: 0, max: 60, noNaN: true });
  fc.assert(
    fc.property(
      shank,
      depth,
      depth,
      fc.double({ min: 0, max: 500, noNaN: true }),
      (each, one, other, pull) => {
        const shallow = bendingResistance(each, mm(Math.min(one, other)), newtons(pull));
        const deep = bendingResistance(each, mm(Math.max(one, other)), newtons(pull));
        expect(deep).toBeLessThanOrEqual(shallow);
      },
    ),
  );
});

test('whatever is chosen holds, its plug is past the finish, and its screw does not bottom', () => {
  fc.assert(
    fc.property(given, mass, (each, kg) => {
      const result = chooseFor(jobOf(each, kg));
      if (!result.ok) {
        expect(result.because).not.toBe('');
        return;
      }
      const { bit, plug, screw, utilisation, count } = result.fixing;
      const finish = each.wall.finish?.thicknessMm ?? 0;
      expect(utilisation).toBeGreaterThan(0);
      expect(utilisation).toBeLessThanOrEqual(1);
      expect(count).toBeGreaterThanOrEqual(1);
      if (plug) {
        expect(bit.depthMm).toBeGreaterThanOrEqual(finish + plug.lengthMm + 10);
        // What stays outside is at most the stand-off or a batten: the least it can be is the stand-off.
        const outside = screw?.head === 'countersunk' ? 18 : each.standOffMm;
        expect(screw?.lengthMm).toBeGreaterThanOrEqual(outside + finish + plug.lengthMm - 1e-9);
        expect(bit.depthMm).toBeGreaterThanOrEqual((screw?.lengthMm ?? 0) - Math.max(outside, 18) + 5 - 1e-9);
      }
      expect(result.basis.length).toBeGreaterThan(0);
    }),
  );
});

test('no figure a job can hold makes choosing throw', () => {
  fc.assert(
    fc.property(fc.oneof(readableJob, wildJob), given, fc.double(), (job, each, kilograms) => {
      const strange = {
        ...job,
        piece: { ...job.piece, massKg: kg(kilograms) },
        wall: { ...each.wall, ...job.wall },
      };
      const layout = setOut(strange);
      if (!layout.ok) return;
      const result = chooseFixing(strange, layout);
      expect(result.ok ? result.fixing.utilisation <= 1 : result.because.length > 0).toBe(true);
    }),
  );
});
