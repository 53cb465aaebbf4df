import { describe, test } from 'vitest';
import { expectHeard, hear, type Row } from '../as-said.ts';

const year = (yearBuilt: number) => ({ 'building.yearBuilt': yearBuilt });
const people = (count: number) => ({ 'crew.people': count });

/** Invented by us. Of a span the oldest year counts, since old walls hide more; an age has no calendar here. */
const YEARS: Row[] = [
  ['building.yearBuilt', '1974ish', year(1974)],
  ['building.yearBuilt', '1974 ish', year(1974)],
  ['building.yearBuilt', '82', year(1982)],
  ['building.yearBuilt', "'68", year(1968)],
  ['building.yearBuilt', '82ish', year(1982)],
  ['building.yearBuilt', 'built 82', year(1982)],
  ['building.yearBuilt', 'early 70s', year(1970)],
  ['building.yearBuilt', 'late sixties', year(1965)],
  ['building.yearBuilt', 'late 1970s i think', year(1975)],
  ['building.yearBuilt', 'mid 1980s', year(1984)],
  ['building.yearBuilt', 'between 1960 and 1970', year(1960)],
  ['building.yearBuilt', 'about 40 years old', 'ask'],
  ['building.yearBuilt', 'forty odd years old', 'ask'],
  ['building.yearBuilt', 'over a hundred years old', 'ask'],
  ['building.yearBuilt', 'turn of the century', 'ask'],
  [null, 'built 82, brick', { ...year(1982), 'wall.baseMaterial': 'clay-brick' }],
  [null, 'US house from 1995', { ...year(1995), 'building.country': 'US' }],
  [
    null,
    'mirror 900x1200 in a US house from 1995',
    { ...year(1995), 'building.country': 'US', 'piece.widthMm': 900, 'piece.heightMm': 1200 },
  ],
];

/** Invented by us. Of two figures the smaller: fewer hands are the careful reading. */
const PEOPLE: Row[] = [
  ['crew.people', 'me n dave', people(2)],
  ['crew.people', 'me & my brother', people(2)],
  ['crew.people', 'me + 1', people(2)],
  ['crew.people', 'me and the missus', people(2)],
  ['crew.people', 'the wife and I', people(2)],
  ['crew.people', 'dave and me', people(2)],
  ['crew.people', 'me, dave and tom', people(3)],
  ['crew.people', 'me and two mates', people(3)],
  ['crew.people', 'two lads and me', people(3)],
  ['crew.people', '2 of us plus an apprentice', people(3)],
  ['crew.people', 'we are four', people(4)],
  ['crew.people', 'four strong lads', people(4)],
  ['crew.people', 'just me', people(1)],
  ['crew.people', 'on my tod', people(1)],
  ['crew.people', 'nobody, just me', people(1)],
  ['crew.people', 'just the two of us', people(2)],
  ['crew.people', '2 or 3', people(2)],
  [null, 'just me doing it, 24kg mirror', { ...people(1), 'piece.massKg': 24 }],
  [null, 'two of us, 24kg mirror on brick', { ...people(2), 'piece.massKg': 24 }],
  [null, 'picture for me and the wife, 8kg', { 'crew.people': undefined, 'piece.massKg': 8 }],
];

const TENURE: Row[] = [
  ['building.tenure', 'my house', { 'building.tenure': 'owner' }],
  ['building.tenure', 'I rent', { 'building.tenure': 'tenant' }],
  ['building.tenure', "client's place", { 'building.tenure': 'client' }],
  [null, 'mirror 24kg at my house, brick', { 'building.tenure': 'owner', 'piece.massKg': 24 }],
  [null, "mirror for my client's house", { 'building.tenure': 'client' }],
  [null, 'my rented house', { 'building.tenure': 'tenant' }],
  [null, 'I rent, picture 8kg', { 'building.tenure': 'tenant', 'piece.massKg': 8 }],
];

describe('years, people and whose it is', () => {
  test.each([...YEARS, ...PEOPLE, ...TENURE])('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });
});
