import { whereIs } from '../wording/unplaced.ts';
import { choice, isAbsent, NOT_SURE, type Question } from './shape.ts';

const SUSPECT_CLEARED = 'A laboratory result clears it; nothing you can see does.';

const WHAT_IS_THERE =
  'What is on the wall: sockets, switches, lights, taps, pipes, heaters? Look on both faces. For each: from the left end and up from the floor, in mm.';

export const accessories: Question = {
  asks: ({ wall }, unit) => whereIs(wall?.unplaced ?? [], unit) ?? WHAT_IS_THERE,
  expects: 'accessories',
  choices: [choice('none', 'Nothing on either face'), NOT_SURE],
  // "Nothing on either face" is no answer to where a fitting is.
  choicesFor: ({ wall }) =>
    accessories.choices.filter(({ value }) => value !== 'none' || (wall?.unplaced ?? []).length === 0),
  why: 'Cables and pipes run straight up, down and sideways from them, so no hole goes in line with one.',
  example: 'one socket on this side, 600 from the left and 300 up',
  isMissing: ({ job }) => isAbsent(job.wall?.accessories) || (job.wall?.unplaced ?? []).length > 0,
  ifUnknown: {
    value: { wall: { accessories: 'unknown' } },
    says: 'Not looked at yet.',
  },
  howTo:
    'Walk round to the other side too. A blank plate counts. Measure to the middle of each plate. Leave every cover plate on.',
};

export const farSide: Question = {
  asks: 'Have you looked at the other side of the wall? Tell me what is there and where, or that nothing is.',
  expects: 'yes-no',
  choices: [choice('seen', 'Looked: nothing there'), NOT_SURE],
  why: 'In a thin wall what is on the far side counts as if it were on this one.',
  example: 'yes',
  isMissing: () => false,
  ifUnknown: { value: { wall: { farSide: 'unknown' } }, says: 'Far side not looked at.' },
  howTo: 'Walk round and look at the same spot from behind.',
};

export const asbestos: Question = {
  asks: 'Has a laboratory tested that sheet or coating for asbestos?',
  expects: 'choice',
  choices: [choice('tested-clear', 'Tested, it came back clear'), choice('not-tested', 'Not tested')],
  why: SUSPECT_CLEARED,
  example: 'tested clear',
  isMissing: () => false,
  ifUnknown: { value: { wall: { asbestos: 'unknown' } }, says: 'Not tested, then.' },
  howTo:
    'A competent person takes the sample and a laboratory reads it. Do not scrape, pin or drill it yourself.',
};

export const coating: Question = {
  asks: 'Is there a textured coating on it?',
  expects: 'choice',
  choices: [choice('none', 'No'), choice('textured', 'Yes, textured'), NOT_SURE],
  why: 'Old textured coatings can hold asbestos.',
  example: 'no',
  isMissing: () => false,
  ifUnknown: { value: { wall: { coating: 'unknown' } }, says: 'Coating not known.' },
  howTo:
    'Look along it with a torch held flat: swirls, stipple or peaks are a textured coating. Do not scrape it.',
};

export const tensioned: Question = {
  asks: 'Can there be tensioned steel in that concrete, and has it been scanned for?',
  expects: 'choice',
  choices: [
    choice('no', 'No tensioned steel, says the building'),
    choice('scanned', 'Scanned and marked'),
    choice('possible', 'Possible'),
    NOT_SURE,
  ],
  why: 'A cut tendon lets go with tonnes behind it; nobody drills until it is scanned.',
  example: 'scanned',
  isMissing: ({ job }) =>
    job.wall?.baseMaterial === 'concrete' &&
    !isAbsent(job.building?.kind) &&
    job.building?.kind !== 'house' &&
    isAbsent(job.wall?.tensioned),
  ifUnknown: { value: { wall: { tensioned: 'unknown' } }, says: 'Not known.' },
  howTo: 'Ask the building’s manager or engineer.',
};

export const wet: Question = {
  asks: 'Is it a bathroom wall, or a shower or bath surround?',
  expects: 'choice',
  choices: [
    choice('no', 'No'),
    choice('bathroom', 'Bathroom'),
    choice('shower', 'Shower or bath surround'),
    NOT_SURE,
  ],
  why: 'A hole through the waterproofing lets water into the wall.',
  example: 'no',
  isMissing: () => false,
  ifUnknown: { value: { wall: { wet: 'unknown' } }, says: 'Not known.' },
  howTo: 'Anything that gets sprayed is a shower wall.',
};

export const separating: Question = {
  asks: 'Is it a wall shared with a neighbour, or a fire wall?',
  expects: 'yes-no',
  choices: [choice('yes', 'Yes'), choice('no', 'No'), NOT_SURE],
  why: 'Such a wall holds back fire and sound; it is not yours alone.',
  example: 'no',
  isMissing: () => false,
  ifUnknown: { value: { wall: { separating: 'unknown' } }, says: 'Not known.' },
  howTo: 'Think what is behind it: another home, a corridor, a shaft or a garage.',
};

export const condition: Question = {
  asks: 'Is the wall sound: no crumbling, damp, bulges or wide cracks?',
  expects: 'choice',
  choices: [choice('sound', 'Sound'), choice('poor', 'Crumbling, damp or cracked'), NOT_SURE],
  why: 'Nothing holds in a wall that is coming apart.',
  example: 'sound',
  isMissing: () => false,
  ifUnknown: { value: { wall: { condition: 'unknown' } }, says: 'Not known.' },
  howTo: 'Press it with your palm and knock: plaster that moves or sounds loose is not sound.',
};
