import { TIMBER_ANSWERS } from './answers-timber.ts';
import { WALL_ANSWERS } from './answers-wall.ts';

/** Every row that answers a reference case about what holds. */
export const ANSWERS = { ...TIMBER_ANSWERS, ...WALL_ANSWERS };

/** Their ids: taken from the rows that are run, so that none is listed that is not checked. */
export const ANSWERED: readonly string[] = Object.keys(ANSWERS);
