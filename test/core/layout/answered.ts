import { HANGING_ANSWERS } from './answers-hanging.ts';
import { SET_OUT_ANSWERS } from './answers-set-out.ts';

/** Every row that answers a reference case about set-out, hanging and courses. */
export const ANSWERS = { ...SET_OUT_ANSWERS, ...HANGING_ANSWERS };

/** Their ids: taken from the rows that are run, so that none is listed that is not checked. */
export const ANSWERED: readonly string[] = Object.keys(ANSWERS);
