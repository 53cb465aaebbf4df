import { expect, test } from 'vitest';
import type { Below } from '../../../../core/job.ts';
import { hear } from '../as-said.ts';

test.each<[string, Below | undefined]>([
  ['never used', 'fireplace-unused'],
  ['not used', 'fireplace-unused'],
  ['its used every winter', 'fireplace'],
  ['wood burner in use', 'fireplace'],
  ['dont know if its used', undefined],
])('the fire under a mantel: "%s" is %s (invented)', (say, below) => {
  const reading = hear(say, 'place.below', { known: { wall: { datum: { kind: 'mantel' } } } });
  expect(reading.facts.map(({ value }) => value.place?.below)).toEqual(below === undefined ? [] : [below]);
});
