import fc from 'fast-check';
import { expect, test } from 'vitest';
import { checkOf } from '../../../core/check.ts';
import { planOf } from '../../../core/plan.ts';
import { mm } from '../../../core/quantity.ts';
import { anyJob } from './any-job.ts';

test('marks that are held share the whole weight between them, unless the cord pulls them together', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const { actions, fixing } = planOf(job);
      if (fixing === null || actions === null || actions.cordN !== undefined) return;
      const shares = actions.perMark.reduce((sum, { shearN }) => sum + shearN, 0);
      // Each is rounded to a tenth.
      expect(Math.abs(shares - actions.weightN)).toBeLessThanOrEqual(
        0.05 * (actions.perMark.length + 1) + 1e-9,
      );
    }),
  );
});

test('every source a fixing, a caution or a why names is in the plan’s own list', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const { basis, fixing, cautions, why } = planOf(job);
      const listed = basis.map(({ id }) => id as string);
      const named = [...cautions, ...why].flatMap((each) => each.basis.map(({ id }) => id as string));
      for (const id of [...(fixing?.governing.basis ?? []), ...named]) expect(listed).toContain(id);
    }),
  );
});

test('steps and shopping say the figures of the fixing, and bring one of it for each hole', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const { fixing, steps, shopping } = planOf(job);
      if (fixing === null) return;
      const said = steps.join(' ');
      const drilled = fixing.bit.kind === 'none' ? [] : [fixing.bit.diameterMm, fixing.bit.depthMm];
      for (const figure of [...drilled, ...(fixing.screw ? [fixing.screw.lengthMm] : [])])
        expect(said).toContain(`${figure} mm`);
      if (fixing.plug) expect(said).toContain(`${fixing.plug.diameterMm} x ${fixing.plug.lengthMm} mm plug`);
      expect(shopping.some(({ count }) => count === fixing.count)).toBe(true);
      if (fixing.plug) expect(shopping.some(({ item }) => / plug /.test(item))).toBe(true);
    }),
  );
});

test('no hole comes within 10 mm of the far face, and no screw for a keyhole has a head that does not go in', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const { fixing } = planOf(job);
      if (fixing === null) return;
      if (job.wall.baseMaterial !== 'plasterboard-on-timber-studs')
        expect(fixing.bit.depthMm).toBeLessThanOrEqual((job.wall.thicknessMm ?? 0) - 10);
      const onBoard = fixing.fastener === 'batten-screws' || fixing.fastener === 'board-across-studs';
      if (job.piece.hanging.by === 'keyholes' && !onBoard)
        expect(['pan', 'round', 'hex', undefined]).toContain(fixing.screw?.head);
    }),
  );
});

test('the plan’s own fixing in the hand and its own marks on the wall are always good', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const { fixing, marks } = planOf(job);
      if (fixing === null) return;
      const { fastener, bit, plug, screw } = fixing;
      const check = checkOf(job, {
        fixing: { fastener, bit, plug, screw },
        marks: marks.map(({ id, fromLeftMm, upMm }) => ({ id, fromLeftMm, upMm: upMm ?? mm(0) })),
      });
      expect([check.verdict, check.fixing?.holds, check.fixing?.utilisation]).toEqual([
        'go',
        true,
        fixing.utilisation,
      ]);
    }),
  );
});

test('a stop gives no hole and no step, and says what would clear it', () => {
  fc.assert(
    fc.property(anyJob, (job) => {
      const plan = planOf(job);
      if (plan.verdict !== 'stop') return;
      expect([plan.marks, plan.fixing, plan.steps, plan.shopping, plan.alternatives]).toEqual([
        [],
        null,
        [],
        [],
        [],
      ]);
      expect(plan.clear.length).toBeGreaterThan(0);
    }),
  );
});
