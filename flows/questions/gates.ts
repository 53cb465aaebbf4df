import { choice, NOT_SURE, type Question } from './shape.ts';

/** All yes-or-no gates at once; "none of these" answers them all. */
export const hazards: Question = {
  asks: 'Is any of these so? A bathroom or shower wall; a textured coating; crumbling, damp or cracked plaster; a listed building; a wall shared with a neighbour; a piece that needs mains.',
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
  isMissing: ({ answered }) => !answered.has('hazards'),
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
