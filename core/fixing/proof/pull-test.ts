import { type Newtons, newtons } from '../../quantity.ts';
import { sourced } from '../../sources.ts';

/** Allowable from tests: 20 % of the mean of five or more. */
export const PULL_TEST = sourced(
  { share: 0.2, least: 5 },
  'TMS402',
  '8.1.3.1 (ASTM E488 tests)',
  'read-secondary',
);
/** Readings so uneven that their mean says little. */
export const UNEVEN = sourced(
  0.75,
  'our-choice',
  'refused when the lowest is under 0.75 of the mean',
  'our-choice',
);

export type PullTest =
  | { readonly ok: true; readonly meanN: Newtons; readonly allowableN: Newtons }
  | { readonly ok: false; readonly because: string };

/** Allowable from pull tests on site: F = 0.20 mean(F_u), five readings or more (TMS 402 8.1.3.1), newtons. */
export function pullTestAllowable(readings: readonly number[]): PullTest {
  const { share, least } = PULL_TEST.value;
  if (readings.length < least)
    return { ok: false, because: `a pull test needs ${least} readings; there are ${readings.length}` };
  if (!readings.every((each) => Number.isFinite(each) && each > 0)) {
    return { ok: false, because: 'a pull-test reading must be a force above nothing' };
  }
  const mean = readings.reduce((total, each) => total + each, 0) / readings.length;
  if (Math.min(...readings) < UNEVEN.value * mean) {
    return {
      ok: false,
      because: 'the lowest pull-test reading is under three quarters of the mean: the wall is too uneven',
    };
  }
  return { ok: true, meanN: newtons(mean), allowableN: newtons(share * mean) };
}
