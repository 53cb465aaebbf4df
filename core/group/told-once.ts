import type { Assumption, Plan } from '../plan-shape.ts';
import type { Why } from '../why.ts';
import { forPieces, saidOnce } from './which-pieces.ts';

/** A whole wall's assumption stands once; one about a piece bears the place of that piece in the job. */
export const assumptionsOf = (plans: readonly Plan[]): Assumption[] =>
  saidOnce(
    plans.map((each) => each.assumptions),
    ({ field, value }) => JSON.stringify([field, value]),
    (each, which, numbers) =>
      which !== null && each.field.startsWith('piece.')
        ? numbers.map((nth) => ({ ...each, field: each.field.replace('piece.', `pieces.${nth}.`) }))
        : { ...each, because: forPieces(which, each.because) },
  );

/** A mark's number and letter, in what a why is of: it needs no other name. */
const OF_A_MARK = /\b\d+[A-Z]+\b/;

/** What is reckoned alike for every piece is told once; else it bears the pieces' numbers, in words and in its paths. */
export const whysOf = (plans: readonly Plan[]): Why[] =>
  saidOnce(
    plans.map((each) => each.why),
    (each) => JSON.stringify([each.of, each.formula, each.inputs, each.result]),
    (each, which, numbers) => ({
      ...each,
      ...(which !== null && !OF_A_MARK.test(each.of) && { of: `${which.toLowerCase()} ${each.of}` }),
      ...(each.paths && { paths: each.paths.flatMap((path) => pathsOf(path, numbers)) }),
    }),
  );

const pathsOf = (path: string, numbers: readonly number[]): string[] => {
  const [first = '', ...rest] = path.split('.');
  return ['fixing', 'frame', 'batten'].includes(first)
    ? numbers.map((nth) => [`${first}s`, nth, ...rest].join('.'))
    : [path];
};
