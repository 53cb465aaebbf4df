import { expect, test } from 'vitest';
import { checkOf } from '../../core/check.ts';
import { planOfAny } from '../../core/plan-of-pieces.ts';
import { mm } from '../../core/quantity.ts';
import { groupOf, pictureOf } from './layout/group/a-group.ts';

const job = groupOf(4000, [pictureOf(400, 500), pictureOf(700, 900, 120, 24), pictureOf(400, 500)], {
  as: 'row',
  gapMm: mm(75),
  align: 'centre',
});
const asPlanned = planOfAny(job).marks.map(({ id, fromLeftMm, upMm = mm(0) }) => ({ id, fromLeftMm, upMm }));

test('marks of several pieces measured as planned are right', () => {
  expect(checkOf(job, { marks: asPlanned })).toMatchObject({ verdict: 'go', tiltDeg: 0 });
});

test('a mark of one piece that is off is named by its number and letter, and only that one', () => {
  const marks = asPlanned.map((mark) =>
    mark.id === '2B' ? { ...mark, fromLeftMm: mm(mark.fromLeftMm + 6) } : mark,
  );
  const check = checkOf(job, { marks });
  expect(check.verdict).toBe('care');
  expect(check.text).toContain('Mark 2B is 6 mm too far right. Move it before you drill.');
  expect(check.text).not.toMatch(/Mark (?:1|3)/);
});

test('the piece that would hang most crooked gives the tilt: 6 mm high over 300 (geometry, derived)', () => {
  const marks = asPlanned.map((mark) => (mark.id === '3B' ? { ...mark, upMm: mm(mark.upMm + 6) } : mark));
  // atan(6 / 300) in degrees.
  expect(checkOf(job, { marks }).tiltDeg).toBeCloseTo((Math.atan(6 / 300) * 180) / Math.PI, 2);
});

test('one piece measured leaves the others named as not measured yet', () => {
  const check = checkOf(job, { marks: asPlanned.slice(0, 2) });
  expect(check.verdict).toBe('care');
  expect(check.text).toContain('Not measured yet: 2A, 2B, 3A, 3B.');
});

test('a fixing in the hand has to hold every piece, and the words say which it does not hold', () => {
  const plan = planOfAny(job);
  const strong = plan.fixings?.[1];
  const small = plan.fixings?.[0];
  expect(small).not.toEqual(strong);
  const check = checkOf(job, {
    fixing: { ...(small?.plug && { plug: small.plug }), ...(small?.screw && { screw: small.screw }) },
  });
  expect(check.verdict).toBe('stop');
  expect(check.fixing?.holds).toBe(false);
  expect(check.fixing?.text).toMatch(/Piece 2: /);
});
