import type { JobSoFar } from '../../core/job.ts';
import { usualMass } from '../mass-by-size.ts';
import type { Choice } from '../reply.ts';
import { hangingIsWhole } from '../whole-job.ts';
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

export const hanging: Question = {
  asks: hangingAsks,
  expects: 'points',
  choices: [],
  choicesFor: hangingChoices,
  why: 'The screw goes where the hanger bears, so its place on the back decides each mark.',
  example: 'two rings, 95 in from each side and 240 down',
  isMissing: ({ job, unknown }) =>
    !hangingIsWhole(job.piece?.hanging) ||
    ((hooksAreOpen(job) || isOneSided(job)) && !unknown.has('piece.hanging')),
  ifUnknown: null,
  howTo:
    'Lay it face down. For each ring or slot: from the side of the frame in to its middle, and from the top of the frame down to where the hook will bear, ring pulled up tight. For a cord, pull it up hard with two fingers where the hooks will go.',
};

/** One hook or two puts the marks elsewhere; not known is reckoned as one. */
const hooksAreOpen = ({ piece }: JobSoFar): boolean =>
  piece?.hanging?.by === 'cord' && isAbsent(piece.hanging.hooksApartMm);

/** What is on the back first; then, of a whole cord, one hook. */
function hangingChoices(job: JobSoFar): readonly Choice[] {
  const known = job.piece?.hanging;
  if (known?.by === undefined && (known?.points ?? []).length === 0)
    return [
      choice('rings', 'Rings'),
      choice('keyholes', 'Keyholes'),
      choice('cord', 'A cord or wire'),
      choice('split batten', 'A split batten'),
      choice('clips', 'Clips'),
      NOT_SURE,
    ];
  return hangingIsWhole(known) && hooksAreOpen(job) ? [choice('one hook', 'One hook'), NOT_SURE] : [];
}

/** "The left ring is 95 in": the other one has not been told of. */
function isOneSided({ piece }: JobSoFar): boolean {
  const [only, other] = piece?.hanging?.points ?? [];
  return only !== undefined && other === undefined && isAbsent(only.fromCentreMm);
}

function hangingAsks({ piece }: JobSoFar): string {
  const known = piece?.hanging;
  if (piece && isOneSided({ piece }) && known?.points?.every(({ fromTopMm }) => !isAbsent(fromTopMm)))
    return 'And the other one: how far in from its own side, and how far down, in mm? If there is only one, say where from the middle it is.';
  switch (known?.by) {
    case 'cord':
      if (hangingIsWhole(known)) return 'One hook under that cord, or two and how far apart, in mm?';
      return (known.points?.length ?? 0) > 1
        ? 'How long is the cord, or how far above the rings does it pull up, in mm? And one hook, or two and how far apart?'
        : 'Where are the two ends of the cord, in from each side and down from the top, in mm? And how long is it, or how far does it pull up?';
    case 'batten':
      return 'The split batten: how far down from the top of the frame does it bear, and how long is it, in mm?';
    case 'rings':
      if (known.hanger === 'sawtooth')
        return 'The sawtooth: how far down from the top do its teeth bear, in mm? Or two rings put on instead: how far in and down?';
      return 'The rings: how far in from each side, and how far down from the top to where they bear, in mm?';
    case 'keyholes':
      return 'The keyholes: middle of each slot in from the side, and its narrow top end down from the top, in mm?';
    case 'clips':
      return 'The clips: how far in from each side and down from the top, in mm?';
    default:
      return 'How does it hang? Say what is on the back (rings, keyholes, cord, batten), how far in from each side and how far down from the top, in mm.';
  }
}

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
