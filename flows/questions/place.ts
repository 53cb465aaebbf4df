import type { JobSoFar } from '../../core/job.ts';
import { usualHeight } from '../usual-height.ts';
import { choice, isAbsent, NOT_SURE, type Question } from './shape.ts';

export const across: Question = {
  asks: 'Where does it go across the wall: centred, or an edge or its middle so many mm from the left or right end? Add how high, if you know it.',
  expects: 'place',
  choices: [choice('centre', 'Centred on the wall')],
  why: 'The marks are measured from the ends of the wall.',
  example: 'centre',
  isMissing: ({ job }) => isAbsent(job.place?.across),
  ifUnknown: null,
  usual: () => ({
    value: { place: { across: { by: 'centre' } } },
    says: 'Then I take it centred on the wall; say so if it goes elsewhere.',
  }),
  howTo:
    'Hold up a sheet of paper or a helper’s arms where it should go, then measure from the left end to its left edge.',
};

export const up: Question = {
  asks: 'How high? Its bottom, middle or top, so many mm above the floor, the mantel or the furniture, or down from the ceiling.',
  expects: 'place',
  choices: [],
  why: 'The height of each screw is worked out from it, the hanger’s drop taken off.',
  choicesFor: (job, unit) => {
    const usual = usualHeight(job, unit);
    return usual === null ? [] : [choice(usual.words, `${usual.label}, as is usual`), NOT_SURE];
  },
  example: 'centre at 1500 above the floor',
  isMissing: ({ job }) => isAbsent(job.place?.up?.by) || isAbsent(job.place?.up?.mm),
  ifUnknown: null,
  usual: (job, unit) => {
    const usual = usualHeight(job, unit);
    return (
      usual && {
        value: usual.value,
        says: `Then I take ${usual.words}, as is usual; say so if it goes elsewhere.`,
      }
    );
  },
  howTo:
    'The middle of a picture commonly goes at 1450 to 1550 mm, a convention. Above furniture, 150 to 250 mm of gap; above a mantel 100 mm or more.',
};

export const datum: Question = {
  asks: datumAsks,
  expects: 'length',
  choices: [NOT_SURE],
  why: 'Sockets, glass and lifting heights are reckoned from the floor, your marks from there.',
  example: '1100 off the floor',
  isMissing: ({ job }) => {
    const known = job.wall?.datum;
    return (known?.kind === 'mantel' || known?.kind === 'furniture') && isAbsent(known.aboveFloorMm);
  },
  ifUnknown: { value: {}, says: 'Not measured: I give the floor heights to keep out of instead.' },
  howTo: 'Tape straight up from the floor to its top, below where the piece goes.',
};

function datumAsks({ wall }: JobSoFar): string {
  const what = wall?.datum?.kind === 'mantel' ? 'the mantel' : 'the top of the furniture';
  return `How high is ${what} above the floor, in mm?`;
}

export const below: Question = {
  asks: ({ wall }) =>
    wall?.datum?.kind === 'mantel'
      ? 'The fireplace under that mantel: is it used, or never used?'
      : 'What is under the place where it hangs?',
  expects: 'choice',
  choices: [
    choice('nothing', 'Nothing'),
    choice('bed', 'Bed'),
    choice('sofa', 'Sofa'),
    choice('cot', 'Cot'),
    choice('basin', 'Basin'),
    choice('fireplace', 'Fireplace in use'),
    choice('fireplace-unused', 'Fireplace never used'),
    choice('walkway', 'People walk there'),
    NOT_SURE,
  ],
  why: 'If it ever falls, it matters who or what is there; over a cot nothing hangs.',
  example: 'nothing below it',
  isMissing: ({ job }) => isAbsent(job.place?.below),
  ifUnknown: { value: { place: { below: 'unknown' } }, says: 'Not known what is below.' },
  howTo: 'Think of the room when it is furnished.',
};
