import { standingCautions, stopsSoFar } from '../core/caution/rules.ts';
import { checkOf } from '../core/check.ts';
import { planOf } from '../core/plan.ts';
import { withFarSide } from './far-side.ts';
import { flowOf } from './flow.ts';
import { withKnock } from './knock.ts';
import { factForChoice, understand } from './understand/understand.ts';

/** The conversation as the house runs it. All three are pure. */
export const { begin, resume, step } = flowOf({
  understand: withFarSide(withKnock(understand)),
  factForChoice,
  planOf,
  checkOf,
  stopsSoFar,
  standingLine: standingCautions,
});
