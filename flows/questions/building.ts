import { choice, isAbsent, NOT_SURE, type Question } from './shape.ts';

export const country: Question = {
  asks: ({ building }) => {
    const also = [
      ...(isAbsent(building?.yearBuilt) ? ['the year it was built'] : []),
      ...(isAbsent(building?.tenure) ? ['whether it is yours, rented or a client’s'] : []),
    ];
    return `Which country is the wall in?${also.length === 0 ? '' : ` Add ${also.join(' and ')}, if you know.`}`;
  },
  expects: 'choice',
  choices: [
    choice('AU', 'Australia'),
    choice('NZ', 'New Zealand'),
    choice('UK', 'United Kingdom'),
    choice('IE', 'Ireland'),
    choice('US', 'United States'),
    choice('CA', 'Canada'),
    choice('EU', 'Elsewhere in Europe'),
    choice('other', 'Another'),
  ],
  why: 'The rules for cables, old sheet and paint, and the screws on the shelf differ by country.',
  example: 'Australia',
  isMissing: ({ job }) => isAbsent(job.building?.country),
  ifUnknown: {
    value: { building: { country: 'unknown' } },
    says: 'Country not known: I keep to the strictest.',
  },
  howTo: 'The country you are standing in.',
};

export const yearBuilt: Question = {
  asks: ({ building }) =>
    `What year was it built, roughly?${isAbsent(building?.tenure) ? ' Add whether it is yours, rented or a client’s.' : ''}`,
  expects: 'year',
  choices: [NOT_SURE],
  why: 'Age tells whether a sheet or coating can hold asbestos, the paint lead, and how far to trust the wiring.',
  example: '1974',
  isMissing: ({ job }) => isAbsent(job.building?.yearBuilt),
  ifUnknown: {
    value: { building: { yearBuilt: 'unknown' } },
    says: 'Year not known: I count it as old.',
  },
  howTo: 'The decade will do: ask the owner, or look at the meter box, the deeds or the street.',
};

export const rewiredYear: Question = {
  asks: 'When was it last rewired?',
  expects: 'year',
  choices: [NOT_SURE],
  why: 'Old wiring may run any way it likes.',
  example: '1995',
  isMissing: () => false,
  ifUnknown: { value: { building: { rewiredYear: 'unknown' } }, says: 'Not known.' },
  howTo: 'Look for a date on the switchboard.',
};

export const tenure: Question = {
  asks: 'Whose wall is it?',
  expects: 'choice',
  choices: [choice('owner', 'Mine'), choice('tenant', 'I rent'), choice('client', 'A client’s'), NOT_SURE],
  why: 'A tenant needs a yes before anyone drills.',
  example: 'I own it',
  isMissing: ({ job }) => isAbsent(job.building?.tenure),
  ifUnknown: { value: { building: { tenure: 'unknown' } }, says: 'Not known whose it is.' },
  howTo: 'Owner, tenant, or working for a client who asked for it.',
};

export const consent: Question = {
  asks: 'Has the landlord said yes, in writing?',
  expects: 'yes-no',
  choices: [choice('yes', 'Yes, in writing'), choice('no', 'No'), NOT_SURE],
  why: 'Without a yes the hole is not yours to drill.',
  example: 'yes',
  isMissing: ({ job }) => job.building?.tenure === 'tenant' && isAbsent(job.building?.consent),
  ifUnknown: { value: { building: { consent: 'unknown' } }, says: 'No yes yet, then.' },
  howTo: 'Ask in writing, say what hangs where; a short message is enough.',
};

export const heritage: Question = {
  asks: 'Is it a listed or heritage building?',
  expects: 'yes-no',
  choices: [choice('yes', 'Yes'), choice('no', 'No'), NOT_SURE],
  why: 'Holes in old fabric can need consent.',
  example: 'no',
  isMissing: () => false,
  ifUnknown: { value: { building: { heritage: 'unknown' } }, says: 'Not known.' },
  howTo: 'The council’s list says; the owner knows.',
};

export const kind: Question = {
  asks: 'Is it a house, a flat or a public building?',
  expects: 'choice',
  choices: [choice('house', 'House'), choice('flat', 'Flat'), choice('public', 'Public building'), NOT_SURE],
  why: 'Concrete in flats and public buildings may hold tensioned steel.',
  example: 'a house',
  isMissing: ({ job }) => job.wall?.baseMaterial === 'concrete' && isAbsent(job.building?.kind),
  ifUnknown: { value: { building: { kind: 'unknown' } }, says: 'Not known.' },
  howTo: 'Flats share walls, floors or a roof with other homes.',
};
