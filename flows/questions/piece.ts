import type { JobSoFar } from '../../core/job.ts';
import { usualMass } from '../mass-by-size.ts';
import { choice, isAbsent, NOT_SURE, type Question } from './shape.ts';

export const kind: Question = {
  asks: 'What are you hanging? Add its weight and size, if you know them.',
  expects: 'choice',
  choices: [
    choice('mirror', 'Mirror'),
    choice('picture', 'Framed picture'),
    choice('canvas', 'Canvas'),
    choice('panel', 'Panel'),
  ],
  why: 'Glass, weight for its size and where it may hang all follow from what it is.',
  example: 'mirror',
  isMissing: ({ job }) => isAbsent(job.piece?.kind),
  ifUnknown: null,
  howTo:
    'Glass you see yourself in is a mirror; anything behind glass is a picture; bare cloth on a stretcher is a canvas; a board or slab is a panel.',
};

export const massKg: Question = {
  asks: 'How heavy is it, in kg? Weigh yourself with it and without it, or one end at a time on a hard floor and add.',
  expects: 'mass',
  choices: [],
  choicesFor: (job) => {
    const usual = usualMass(job);
    return usual === null
      ? []
      : [choice(`${usual.heavy} kg`, `Take ${usual.heavy} kg, the heavy end for its size`), NOT_SURE];
  },
  why: 'Every fixing is chosen for its share of the weight, and over 50 kg someone has to design and sign for it.',
  example: '24 kg',
  isMissing: ({ job }) => isAbsent(job.piece?.massKg) && isAbsent(job.piece?.build),
  ifUnknown: null,
  howTo:
    'Stand it on a bathroom scale on a hard floor, a helper steadying it with a fingertip. Or read one end on the scale, then the other, and add the two. Count the heavier reading.',
};

export const size: Question = {
  asks: sizeAsks,
  expects: 'size',
  choices: [],
  why: 'The frame has to fit the wall, and the marks are worked out from its edges.',
  example: '840 x 1120',
  isMissing: ({ job }) => isAbsent(job.piece?.widthMm) || isAbsent(job.piece?.heightMm),
  ifUnknown: null,
  howTo: 'Tape across the back of the frame, outside edge to outside edge: width first, then height.',
};

function sizeAsks({ piece }: JobSoFar): string {
  if (!isAbsent(piece?.widthMm) && isAbsent(piece?.heightMm))
    return 'And how high is it, outside edge to outside edge, in mm?';
  if (isAbsent(piece?.widthMm) && !isAbsent(piece?.heightMm))
    return 'And how wide is it, outside edge to outside edge, in mm?';
  return 'How big is it, width x height in mm? Outside edge to outside edge of the frame.';
}

export const depthMm: Question = {
  asks: 'How deep is it from the wall to its front, in mm?',
  expects: 'length',
  choices: [],
  why: 'A deep piece pulls its fixings outward as well as down.',
  example: '30 mm',
  isMissing: () => false,
  ifUnknown: { value: {}, says: 'Depth not known: I take a usual one and say so.' },
  howTo: 'Lay it face up on a table and measure from the table to the front of the frame.',
};

export const glass: Question = {
  asks: 'What glass is in it? Look for a stamp in a corner, or a film on the back.',
  expects: 'choice',
  choices: [
    choice('safety', 'Safety glass or film-backed'),
    choice('plain', 'Ordinary glass'),
    choice('acrylic', 'Acrylic'),
    choice('none', 'No glass'),
    NOT_SURE,
  ],
  why: 'Where people can fall against it or lie under it, ordinary glass is not good enough.',
  example: 'safety backed',
  isMissing: () => false,
  ifUnknown: {
    value: { piece: { glass: 'unknown' } },
    says: 'Glass not known: I count it as ordinary glass.',
  },
  howTo:
    'Safety glass carries a small stamp in a corner; a film shows as a sheet on the back; acrylic is warm to the touch and light.',
};

export const lit: Question = {
  asks: 'Does it light up or need mains?',
  expects: 'yes-no',
  choices: [choice('yes', 'Yes'), choice('no', 'No'), NOT_SURE],
  why: 'Wiring it in is a licensed electrician’s job.',
  example: 'no',
  isMissing: () => false,
  ifUnknown: { value: { piece: { lit: 'unknown' } }, says: 'Not known whether it needs mains.' },
  howTo: 'Look for a lead, a transformer or a switch on the back.',
};
