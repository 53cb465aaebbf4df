import type { QuestionName } from '../../question.ts';
import { QUESTIONS } from '../../questions/all.ts';
import type { Refusal } from '../../reading.ts';

/** What an answer to each question is, for saying so when something else came. */
const EXPECTED: Partial<Record<QuestionName, string>> = {
  'piece.kind': 'what sort of piece it is',
  'piece.massKg': 'a weight in kg or pounds',
  'piece.size': 'a width and a height',
  'piece.depthMm': 'a depth in mm',
  'piece.hanging': 'where the hangers are on the back',
  'piece.glass': 'what the front is made of',
  'wall.baseMaterial': 'what the wall is made of',
  'wall.cores': 'solid, or with holes',
  'wall.finish': 'what is on the wall, and how thick',
  'wall.studs': 'the spacing of the studs',
  'wall.widthMm': 'the width of the wall',
  'wall.heightMm': 'the height of the wall',
  'wall.thicknessMm': 'the thickness of the wall',
  'wall.accessories': 'what is on the wall and where, or none',
  'wall.asbestos': 'whether a laboratory tested it, and that it came back clear',
  'wall.tensioned': 'no, possible, or scanned',
  'wall.coating': 'whether it is textured or plain',
  'wall.wet': 'a bathroom wall, a shower surround, or neither',
  'wall.condition': 'sound, or what is wrong with it',
  'wall.datum': 'a height above the floor',
  'place.across': 'a place along the wall, measured from an end, or centred',
  'place.up': 'a height, measured from the floor, the mantel, the furniture or the ceiling',
  'place.below': 'what is under it',
  'building.country': 'a country',
  'building.yearBuilt': 'a year or a decade',
  'building.rewiredYear': 'a year or a decade',
  'building.tenure': 'owner, tenant, or a client',
  'building.kind': 'a house, a flat or a public building',
  'crew.people': 'a number of people',
  hazards: 'which of these apply, or none of these',
};

/** A few plain words, which may be what a wall is sold as. */
const A_NAME =
  /^(?!(?:yes|yeah|yep|no|nope|none|nothing)\b)\p{L}[\p{L}\p{N}'’-]*(?: [\p{L}\p{N}'’-]+){0,3}$/iu;

/** Nothing in the words answers the open question: what was expected, with an example. */
export function notAnAnswer(question: QuestionName, said: string): Refusal | null {
  if (question === 'confirm' || question === 'acknowledge') return null;
  const expected = EXPECTED[question] ?? 'a yes or a no';
  if (question === 'wall.baseMaterial' && A_NAME.test(said.trim())) {
    const because = `“${said.trim()}” is no wall I know, and a maker’s name says little; tell me what it is: board on studs or dabs, brick, block, concrete, stone, timber, or lath and plaster`;
    return { question, because, example: QUESTIONS[question].example };
  }
  return { question, because: `I expected ${expected}`, example: QUESTIONS[question].example };
}
