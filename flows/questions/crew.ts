import { choice, NOT_SURE, type Question } from './shape.ts';

export const people: Question = {
  asks: 'How many of you lift it?',
  expects: 'number',
  choices: [choice('1', 'Just me'), choice('2', 'Two'), choice('3', 'Three'), choice('4', 'Four')],
  why: 'What one may lift at arm’s length is less than most people think.',
  example: 'two of us',
  isMissing: () => false,
  ifUnknown: { value: { crew: { people: 'unknown' } }, says: 'Not known: I judge the lift for one.' },
  howTo: 'Count who will have hands on it.',
};

export const dustExtraction: Question = {
  asks: 'Have you dust extraction at the drill?',
  expects: 'yes-no',
  choices: [choice('yes', 'Yes'), choice('no', 'No')],
  why: 'Masonry dust harms lungs.',
  example: 'yes, vacuum',
  isMissing: () => false,
  ifUnknown: { value: { crew: { dustExtraction: 'unknown' } }, says: 'Taken as no extraction.' },
  howTo: 'A shroud or nozzle at the bit and a vacuum with a fine filter.',
};

export const lifter: Question = {
  asks: 'Have you a lifter, a stand or a ledge that takes the weight?',
  expects: 'yes-no',
  choices: [choice('yes', 'Yes'), choice('no', 'No'), NOT_SURE],
  why: 'Too heavy to offer up by hand.',
  example: 'yes',
  isMissing: () => false,
  ifUnknown: { value: { crew: { lifter: 'unknown' } }, says: 'Not known.' },
  howTo: 'A temporary batten screwed under it does the same.',
};

export const packetRatingN: Question = {
  asks: 'What working load is printed on the packet, per fixing, for this wall?',
  expects: 'number',
  choices: [],
  why: 'A printed rating beats a cap of common practice.',
  example: '25 kg',
  isMissing: () => false,
  ifUnknown: { value: {}, says: 'No packet: I keep to the cap of common practice.' },
  howTo: 'Look for a working load and the wall it is for, not a breaking load.',
};

export const pullTestN: Question = {
  asks: 'What did the pull tests read, five or more, in kN?',
  expects: 'text',
  choices: [],
  why: 'A fifth of their mean is what one may carry.',
  example: '1.9 2.1 2.3 2.0 2.2 kN',
  isMissing: () => false,
  ifUnknown: { value: {}, says: 'No test.' },
  howTo: 'Same plug, same wall, away from the final holes, pulled until it lets go.',
};
