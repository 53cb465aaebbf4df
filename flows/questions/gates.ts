import type { JobSoFar } from '../../core/job.ts';
import { choice, isAbsent, NOT_SURE, type Question } from './shape.ts';

type Gate = readonly [words: string, isKnown: (job: JobSoFar) => boolean];

const GATES: readonly Gate[] = [
  ['a bathroom or shower wall', ({ wall }) => !isAbsent(wall?.wet)],
  ['a textured coating', ({ wall }) => !isAbsent(wall?.coating)],
  ['crumbling, damp or cracked plaster', ({ wall }) => !isAbsent(wall?.condition)],
  ['a listed building', ({ building }) => !isAbsent(building?.heritage)],
  ['a wall shared with a neighbour', ({ wall }) => !isAbsent(wall?.separating)],
  ['a piece that needs mains', ({ piece }) => !isAbsent(piece?.lit)],
];

/** What was told already is not asked. */
function hazardsAsks(job: JobSoFar): string {
  const open = GATES.filter(([, isKnown]) => !isKnown(job)).map(([words]) => words);
  const list = open.join('; ');
  return `Is any of these so? ${list.charAt(0).toUpperCase()}${list.slice(1)}.`;
}

/** All yes-or-no gates at once; "none of these" answers them all. */
export const hazards: Question = {
  asks: hazardsAsks,
  expects: 'choice',
  choices: [
    choice('none', 'None of these'),
    choice('bathroom', 'Bathroom wall'),
    choice('shower', 'Shower or bath surround'),
    choice('textured', 'Textured coating'),
    choice('poor', 'Crumbling, damp or cracked'),
    choice('heritage', 'Listed building'),
    choice('separating', 'Shared or fire wall'),
    choice('lit', 'It needs mains'),
    NOT_SURE,
  ],
  why: 'Each of these can stop the job or change how it is done, wherever on the wall it goes.',
  example: 'none of these',
  // Another material drops what was said of the old coating, so that gate opens again.
  isMissing: ({ answered, job }) =>
    GATES.some(([, isKnown]) => !isKnown(job)) && (!answered.has('hazards') || isAbsent(job.wall?.coating)),
  ifUnknown: {
    value: {
      wall: { wet: 'unknown', coating: 'unknown', condition: 'unknown', separating: 'unknown' },
      building: { heritage: 'unknown' },
      piece: { lit: 'unknown' },
    },
    says: 'Not known: I keep to the careful side and say so.',
  },
  howTo: 'Look at the wall in slanting light and press it with your palm; the owner knows the rest.',
};

export const confirm: Question = {
  asks: 'Is that right?',
  expects: 'yes-no',
  choices: [choice('yes', 'Yes, that’s right'), choice('no', 'No, something is off')],
  why: 'Some of it I took from your words or assumed, and nothing is guessed quietly.',
  example: 'yes, or: make that 28 kg',
  isMissing: () => false,
  ifUnknown: null,
  howTo: 'Read it through. Say what differs in your own words, for example “make that 28 kg”.',
};

export const acknowledge: Question = {
  asks: 'Have you read the warnings and will you keep to them?',
  expects: 'yes-no',
  choices: [choice('yes', 'Yes, understood'), choice('no', 'Not yet')],
  why: 'The steps at the wall wait until you have said that you read the warnings; that is logged once.',
  example: 'yes, understood',
  isMissing: () => false,
  ifUnknown: null,
  howTo: 'Read each one above. Ask “why” about any of them, or change the job so that it falls away.',
};
