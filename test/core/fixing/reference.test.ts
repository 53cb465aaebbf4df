import { expect, test } from 'vitest';
import { REFERENCE, titleOf } from '../layout/reference.ts';
import { ANSWERED, ANSWERS } from './answered.ts';

const cases = REFERENCE.filter((each) => ANSWERED.includes(each.id)).map(
  (each) => [titleOf(each), each] as const,
);

test.each(cases)('%s', (_, each) => {
  expect.hasAssertions();
  ANSWERS[each.id]?.(each);
});

test('each answered case is one the reference has', () => {
  expect(cases.map(([, each]) => each.id).sort()).toEqual([...ANSWERED].sort());
});
