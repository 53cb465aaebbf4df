import type { QuestionName } from '../question.ts';
import { QUESTIONS } from '../questions/all.ts';
import type { DisplayUnit } from '../reading.ts';

/** Examples for who measures in inches, where the plain one is a length or a mass. */
const IN_INCHES: Partial<Record<QuestionName, string>> = {
  'piece.massKg': '53 lb',
  'piece.size': '33 x 44',
  'piece.depthMm': '1-1/4',
  'piece.hanging': 'two rings, 3-3/4 in from each side and 9-1/2 down',
  'wall.finish': '1/2 in plaster',
  'wall.studs': 'first at 8, then every 16',
  'wall.widthMm': '106',
  'wall.heightMm': '96',
  'wall.thicknessMm': '4-1/2',
  'wall.boardMm': '1/2',
  'wall.voidMm': '2-3/4',
  'wall.accessories': 'one outlet on this side, 24 from the left and 12 up',
  'wall.datum': '43 off the floor',
  'place.up': 'centre at 58 above the floor',
  'proof.packetRatingN': '55 lb',
};

/** How an answer may look, in the unit the conversation speaks. */
export function exampleOf(
  question: QuestionName,
  unit: DisplayUnit,
  plain = QUESTIONS[question].example,
): string {
  return unit === 'in' ? (IN_INCHES[question] ?? plain) : plain;
}
