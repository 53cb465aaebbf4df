import type { QuestionName } from '../question.ts';
import * as building from './building.ts';
import * as crew from './crew.ts';
import * as gates from './gates.ts';
import { hanging } from './hanging.ts';
import * as masonry from './masonry.ts';
import * as piece from './piece.ts';
import * as place from './place.ts';
import * as services from './services.ts';
import type { Question } from './shape.ts';
import * as wall from './wall.ts';

/** Every question by its name. The order in which they are asked is the machine's. */
export const QUESTIONS: Readonly<Record<QuestionName, Question>> = {
  'piece.kind': piece.kind,
  'piece.massKg': piece.massKg,
  'piece.size': piece.size,
  'piece.depthMm': piece.depthMm,
  'piece.hanging': hanging,
  'piece.glass': piece.glass,
  'piece.lit': piece.lit,
  'wall.baseMaterial': wall.baseMaterial,
  'wall.cores': masonry.cores,
  'wall.finish': masonry.finish,
  'wall.studs': wall.studs,
  'wall.widthMm': wall.widthMm,
  'wall.heightMm': wall.heightMm,
  'wall.thicknessMm': wall.thicknessMm,
  'wall.boardMm': wall.boardMm,
  'wall.voidMm': wall.voidMm,
  'wall.accessories': services.accessories,
  'wall.farSide': services.farSide,
  'wall.asbestos': services.asbestos,
  'wall.coating': services.coating,
  'wall.tensioned': services.tensioned,
  'wall.wet': services.wet,
  'wall.separating': services.separating,
  'wall.condition': services.condition,
  'wall.datum': place.datum,
  'place.across': place.across,
  'place.up': place.up,
  'place.below': place.below,
  'building.country': building.country,
  'building.yearBuilt': building.yearBuilt,
  'building.rewiredYear': building.rewiredYear,
  'building.tenure': building.tenure,
  'building.consent': building.consent,
  'building.heritage': building.heritage,
  'building.kind': building.kind,
  'crew.people': crew.people,
  'crew.dustExtraction': crew.dustExtraction,
  'crew.lifter': crew.lifter,
  'proof.packetRatingN': crew.packetRatingN,
  'proof.pullTestN': crew.pullTestN,
  hazards: gates.hazards,
  confirm: gates.confirm,
  acknowledge: gates.acknowledge,
};

/** True for a name the contract or this flow knows. */
export function isQuestionName(name: string): name is QuestionName {
  return Object.hasOwn(QUESTIONS, name);
}
