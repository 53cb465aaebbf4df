import type { JobSoFar } from '../../core/job.ts';
import type { BaseMaterial } from '../../core/wall/wall.ts';
import { choice, isAbsent, NOT_SURE, type Question } from './shape.ts';

const MASONRY: readonly (BaseMaterial | undefined)[] = [
  'clay-brick',
  'concrete-block',
  'concrete',
  'aerated-concrete',
  'natural-stone',
];

export const cores: Question = {
  asks: 'Are the bricks or blocks solid, or do they have holes through them?',
  expects: 'choice',
  choices: [
    choice('solid', 'Solid'),
    choice('perforated', 'Small holes through them'),
    choice('hollow', 'Hollow'),
    NOT_SURE,
  ],
  why: 'A plug holds far less where it opens into a core, and hammer action breaks the webs.',
  example: 'solid',
  isMissing: () => false,
  ifUnknown: {
    value: { wall: { cores: 'unknown' } },
    says: 'Cores not known: I plan for holes, rotary only, and the first hole is the test.',
  },
  howTo: 'Look at a broken or spare unit. Before about 1965 they are more often solid. Sound does not tell.',
};

export const finish: Question = {
  asks: finishAsks,
  expects: 'text',
  choices: [
    choice('bare', 'Bare or just painted'),
    choice('plaster', 'Plaster'),
    choice('render', 'Cement render'),
    choice('tile', 'Tiles'),
    NOT_SURE,
  ],
  why: 'Finish carries nothing: the plug starts behind it, and the screw bends over its thickness.',
  example: '12 mm plaster',
  isMissing: ({ job }) => MASONRY.includes(job.wall?.baseMaterial) && isAbsent(job.wall?.finish?.kind),
  ifUnknown: {
    value: { wall: { finish: { kind: 'unknown' } } },
    says: 'Finish not known: I reckon with plaster and say how thick.',
  },
  howTo:
    'Look at the edge of a socket box from outside, a doorway or an old hole. Do not take a cover plate off.',
};

function finishAsks({ wall }: JobSoFar): string {
  const over = wall?.baseMaterial === 'clay-brick' ? 'the brick' : 'it';
  return `What is over ${over}: bare, plaster, render or tiles? With its thickness in mm if you can see an edge.`;
}
