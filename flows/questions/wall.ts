import type { BaseMaterial } from '../../core/wall/wall.ts';
import { THIN_WALL } from '../../core/wall/zones.ts';
import { SOUNDS } from '../sounds.ts';
import { choice, isAbsent, NOT_SURE, type Question } from './shape.ts';

const ON_STUDS: readonly (BaseMaterial | undefined)[] = [
  'plasterboard-on-timber-studs',
  'plasterboard-on-steel-studs',
  'lath-and-plaster',
  'fibre-cement-on-studs',
];

export const baseMaterial: Question = {
  asks: ({ wall }) =>
    wall?.baseMaterial === 'unknown'
      ? 'Knock along it with a knuckle, in a dozen places at chest height. How does it sound?'
      : 'What is the wall itself made of, behind the paint or plaster? Add what is over it, if you know: plaster, render, tiles or nothing.',
  expects: 'choice',
  choices: [
    choice('clay-brick', 'Clay brick'),
    choice('concrete-block', 'Concrete block'),
    choice('concrete', 'Concrete'),
    choice('aerated-concrete', 'Aerated block'),
    choice('natural-stone', 'Stone'),
    choice('plasterboard-on-timber-studs', 'Plasterboard on timber studs'),
    choice('plasterboard-on-steel-studs', 'Plasterboard on steel studs'),
    choice('plasterboard-on-dabs', 'Plasterboard on dabs'),
    choice('lath-and-plaster', 'Lath and plaster'),
    choice('fibre-cement-on-studs', 'Fibre cement sheet'),
    choice('timber', 'Solid timber'),
    NOT_SURE,
  ],
  choicesFor: ({ wall }) =>
    wall?.baseMaterial === 'unknown'
      ? [...SOUNDS.map(({ label }) => choice(label, label)), NOT_SURE]
      : baseMaterial.choices,
  why: 'The base material decides the bit, the plug and whether anything holds at all; an old sheet may not be drilled.',
  example: 'brick',
  isMissing: ({ job }) => isAbsent(job.wall?.baseMaterial),
  ifUnknown: {
    value: { wall: { baseMaterial: 'unknown' } },
    says: 'Not known: then let’s find out before anything is drilled.',
  },
  howTo:
    'Knock along it: dull everywhere is solid, a drum with firm lines is board on studs, a drum with random firm spots is board on dabs. A magnet that catches in vertical lines of dots finds the screws in studs. Say how it sounds and how old the house is. No pin and no probe hole where an old sheet or coating is possible.',
};

export const studs: Question = {
  asks: 'Where are the studs? First stud’s centre from the left end and the spacing, in mm. A magnet finds the screws.',
  expects: 'text',
  choices: [NOT_SURE],
  why: 'A screw in a stud carries several times what the sheet does, so I say which marks fall on timber.',
  example: 'first at 200, then every 450',
  isMissing: ({ job }) => ON_STUDS.includes(job.wall?.baseMaterial) && isAbsent(job.wall?.studs),
  ifUnknown: {
    value: { wall: { studs: 'unknown' } },
    says: 'Studs not found: I reckon with the sheet alone.',
  },
  howTo:
    'Slide a magnet sideways till it catches, then up and down: dots in a line are a stud. Socket boxes hang on the side of one.',
};

export const widthMm: Question = {
  asks: 'How wide is the wall, in mm? Tape along it from end to end, or between the two corners it hangs between.',
  expects: 'length',
  choices: [],
  why: 'Each mark is given from both ends of the wall, so one measure checks the other.',
  example: '2700',
  isMissing: ({ job }) => isAbsent(job.wall?.widthMm),
  ifUnknown: null,
  howTo: 'Hook the tape in the left corner at mark height and read it at the right one.',
};

export const heightMm: Question = {
  asks: 'How high is the wall from the floor to the ceiling, in mm?',
  expects: 'length',
  choices: [],
  why: 'You set it down from the ceiling, and the marks have to be found from the floor too.',
  example: '2400',
  isMissing: ({ job }) => job.place?.up?.by === 'below-ceiling' && isAbsent(job.wall?.heightMm),
  ifUnknown: { value: {}, says: 'Height not known: the marks are given down from the ceiling.' },
  howTo: 'Tape up the corner, bent into the ceiling: read where it touches.',
};

export const thicknessMm: Question = {
  asks: `How thick is the wall, in mm? Measure in a doorway. Or look at the other side and tell me what is there: in a wall over ${THIN_WALL.value} mm it matters less.`,
  expects: 'length',
  choices: [NOT_SURE],
  why: 'In a thin wall a socket on the far side counts as if it were on this one.',
  example: '110',
  isMissing: ({ job: { wall } }) =>
    Array.isArray(wall?.accessories) && wall.farSide === 'unknown' && isAbsent(wall.thicknessMm),
  ifUnknown: { value: {}, says: 'Thickness not known: I count it as thin.' },
  howTo: 'Measure across the wall in a doorway or window opening.',
};

export const boardMm: Question = {
  asks: 'How thick is the board, in mm?',
  expects: 'length',
  choices: [],
  why: 'Board anchors are made for a thickness of sheet.',
  example: '13',
  isMissing: () => false,
  ifUnknown: { value: {}, says: 'Board not known: I take the usual one and say so.' },
  howTo: 'Look at the edge of the sheet at an access panel or an old hole.',
};

export const voidMm: Question = {
  asks: 'How deep is the clear space behind the sheet, in mm?',
  expects: 'length',
  choices: [],
  why: 'A toggle needs room to open.',
  example: '70',
  isMissing: () => false,
  ifUnknown: { value: {}, says: 'Space behind not known.' },
  howTo: 'Through an old hole, with a bent wire, unless the sheet is suspect.',
};
