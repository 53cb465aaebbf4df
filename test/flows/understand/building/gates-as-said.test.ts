import { describe, expect, test } from 'vitest';
import type { QuestionName } from '../../../../flows/question.ts';
import { expectHeard, hear, type Row } from '../as-said.ts';

const country = (code: string) => ({ 'building.country': code });
const year = (built: number) => ({ 'building.yearBuilt': built });
const tenure = (of: string) => ({ 'building.tenure': of });
const people = (count: number) => ({ 'crew.people': count });
const glass = (kind: string) => ({ 'piece.glass': kind });
const NO_GATE = {
  'wall.wet': 'no',
  'wall.coating': 'none',
  'wall.condition': 'sound',
  'wall.separating': false,
  'building.heritage': false,
  'piece.lit': false,
};

/** Invented by us. A span of years counts from its oldest, which is the careful one. */
const ROWS: Row[] = [
  ['building.country', 'Oz, australia', country('AU')],
  ['building.country', 'oz', country('AU')],
  ['building.country', 'down under', country('AU')],
  ['building.tenure', 'us, 1995, mine', { ...country('US'), ...year(1995), ...tenure('owner') }],
  ['building.country', 'australia, 2010, I own it', { ...country('AU'), ...year(2010), ...tenure('owner') }],
  [
    null,
    '840 x 1120, built 2010, Australia',
    { ...year(2010), 'piece.widthMm': 840, 'piece.heightMm': 1120 },
  ],
  ['piece.massKg', 'mid 20s', 'ask'],
  ['building.kind', 'office', 'ask'],
  ['building.kind', 'foyer', 'ask'],
  [null, 'hanging a mirror in the office', { 'piece.kind': 'mirror', 'building.kind': undefined }],
  ['building.country', 'austrailia', country('AU')],
  ['building.country', 'Queensland', country('AU')],
  ['building.country', 'NSW', country('AU')],
  ['building.country', 'england', country('UK')],
  ['building.country', 'Northern Ireland', country('UK')],
  ['building.country', 'scotland', country('UK')],
  ['building.country', 'Ireland', country('IE')],
  ['building.country', 'US', country('US')],
  ['building.country', 'the States', country('US')],
  ['building.country', 'Ohio', country('US')],
  ['building.country', 'new zealand', country('NZ')],
  ['building.country', 'canada', country('CA')],
  ['building.country', 'germany', country('EU')],
  ['building.country', 'Norway', country('other')],
  ['building.country', 'near the beach', 'reject'],
  ['building.yearBuilt', '2010', year(2010)],
  ['building.yearBuilt', 'about 1960', year(1960)],
  ['building.yearBuilt', 'seventies', year(1970)],
  ['building.yearBuilt', "the '60s", year(1960)],
  ['building.yearBuilt', '1890s', year(1890)],
  ['building.yearBuilt', 'built in 1926', year(1926)],
  ['building.yearBuilt', '60s or 70s', year(1960)],
  ['building.yearBuilt', 'between 1950 and 1965', year(1950)],
  ['building.yearBuilt', 'victorian', year(1837)],
  ['building.yearBuilt', 'edwardian terrace', year(1901)],
  ['building.yearBuilt', '20th century', year(1900)],
  ['building.yearBuilt', 'old', 'reject'],
  ['building.yearBuilt', 'no idea, before my time', 'dont-know'],
  ['building.tenure', 'I own it', tenure('owner')],
  ['building.tenure', 'mine', tenure('owner')],
  ['building.tenure', 'our own place', tenure('owner')],
  ['building.tenure', 'we rent', tenure('tenant')],
  ['building.tenure', "it's rented", tenure('tenant')],
  ['building.tenure', 'council house', tenure('tenant')],
  ['building.tenure', "client's house", tenure('client')],
  ['building.tenure', 'a customer', tenure('client')],
  ['building.consent', 'yes, in writing', { 'building.consent': true }],
  ['building.consent', 'landlord said its fine', { 'building.consent': true }],
  ['building.consent', 'not yet', { 'building.consent': false }],
  ['building.consent', 'no', { 'building.consent': false }],
  ['building.kind', 'semi', { 'building.kind': 'house' }],
  ['building.kind', 'an apartment', { 'building.kind': 'flat' }],
  ['building.kind', 'a shop', { 'building.kind': 'public' }],
  ['building.heritage', 'no', { 'building.heritage': false }],
  ['building.heritage', 'grade ii listed', { 'building.heritage': true }],
  ['building.rewiredYear', '1995', { 'building.rewiredYear': 1995 }],
  ['crew.people', 'two of us', people(2)],
  ['crew.people', 'just me', people(1)],
  ['crew.people', 'me and the wife', people(2)],
  ['crew.people', '3', people(3)],
  ['crew.people', 'four lads', people(4)],
  ['crew.people', 'on my own', people(1)],
  ['crew.people', 'loads', 'reject'],
  ['crew.dustExtraction', 'yes, vacuum', { 'crew.dustExtraction': true }],
  ['crew.dustExtraction', 'no vaccum', { 'crew.dustExtraction': false }],
  ['crew.dustExtraction', 'nah', { 'crew.dustExtraction': false }],
  ['crew.dustExtraction', 'm class extractor', { 'crew.dustExtraction': true }],
  ['crew.lifter', 'yes, a panel lift', { 'crew.lifter': true }],
  ['crew.lifter', 'no', { 'crew.lifter': false }],
  ['piece.glass', 'safety backed', glass('safety')],
  ['piece.glass', 'toughened', glass('safety')],
  ['piece.glass', 'ordinary glass', glass('plain')],
  ['piece.glass', 'not safety glass', glass('plain')],
  ['piece.glass', 'no glass', glass('none')],
  ['piece.glass', 'none', glass('none')],
  ['piece.glass', 'acrylic', glass('acrylic')],
  ['piece.glass', 'couldnt tell you', 'dont-know'],
  ['piece.kind', 'mirror', { 'piece.kind': 'mirror' }],
  ['piece.kind', 'a big old mirrer', { 'piece.kind': 'mirror' }],
  ['piece.kind', 'oil painting', { 'piece.kind': 'picture' }],
  ['piece.kind', 'framed print', { 'piece.kind': 'picture' }],
  ['piece.kind', 'canvas print', { 'piece.kind': 'canvas' }],
  ['piece.kind', 'acoustic panel', { 'piece.kind': 'panel' }],
  ['piece.kind', 'framed mirror', { 'piece.kind': 'mirror' }],
  ['piece.kind', 'a thing', 'reject'],
  ['hazards', 'none of these', NO_GATE],
  ['hazards', 'nope none', NO_GATE],
  ['hazards', 'no', NO_GATE],
  ['hazards', 'nah none of them apply mate', NO_GATE],
  ['hazards', 'none', NO_GATE],
  ['hazards', "it's a bathroom", { 'wall.wet': 'bathroom' }],
  ['hazards', 'shower wall', { 'wall.wet': 'shower' }],
  ['hazards', 'textured coating', { 'wall.coating': 'textured' }],
  ['hazards', 'only the listed building one', { ...NO_GATE, 'building.heritage': true }],
  ['hazards', 'party wall', { 'wall.separating': true }],
  ['hazards', 'the plaster is crumbling', { 'wall.condition': 'poor' }],
  ['hazards', 'it lights up', { 'piece.lit': true }],
  ['hazards', 'not listed but its a bathroom', { 'wall.wet': 'bathroom', 'building.heritage': false }],
  ['hazards', 'bathroom, dont know about the rest', { 'wall.wet': 'bathroom', 'wall.condition': 'unknown' }],
  ['hazards', 'yes', 'ask'],
  ['hazards', "don't know", 'dont-know'],
  ['hazards', 'not yet', 'dont-know'],
  [null, 'mirror for an old bathroom', { 'wall.wet': 'bathroom', 'piece.kind': 'mirror' }],
  [
    null,
    'picture in our rented flat in London',
    { ...country('UK'), ...tenure('tenant'), 'building.kind': 'flat' },
  ],
  [null, 'mirror for a 1926 house in Victoria', { ...country('AU'), ...year(1926) }],
  [null, 'mirror, 2 stone 4', { 'piece.kind': 'mirror', 'wall.baseMaterial': undefined }],
];

describe('gates, building and crew, as said', () => {
  test.each(ROWS)('%s: "%s" (invented)', (awaiting, say, want) => {
    expectHeard(hear(say, awaiting), want);
  });

  test('"not a bathroom" leaves the other gates open', () => {
    const reading = hear('not a bathroom', 'hazards');
    expect(reading.facts.map((fact) => fact.question)).toEqual(['wall.wet']);
  });

  test('a gate picked out of the list leaves the others to be confirmed', () => {
    expect(hear("it's a bathroom", 'hazards').facts[0]?.inferred).toBe(true);
  });

  const DANGERS: QuestionName[] = [
    'hazards',
    'wall.accessories',
    'wall.wet',
    'wall.separating',
    'wall.coating',
    'place.below',
    'building.heritage',
    'wall.tensioned',
  ];
  test.each(
    DANGERS.flatMap((question) =>
      ["haven't", 'not yet', 'no idea', 'not sure', "don't think so", 'never checked'].map(
        (say) => [question, say] as const,
      ),
    ),
  )('%s: "%s" clears nothing', (question, say) => {
    expect(hear(say, question).facts).toEqual([]);
    expect(['dont-know', 'not-understood']).toContain(hear(say, question).intent);
  });
});
