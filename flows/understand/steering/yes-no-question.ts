import type { JobSoFar } from '../../../core/job.ts';
import type { QuestionName } from '../../question.ts';
import type { Fact } from '../../reading.ts';
import { fact } from '../words/found.ts';

/** What a plain yes or no says to each question that can be answered so. */
const YES: Partial<Record<QuestionName, JobSoFar>> = {
  'building.heritage': { building: { heritage: true } },
  'building.consent': { building: { consent: true } },
  'crew.dustExtraction': { crew: { dustExtraction: true } },
  'crew.lifter': { crew: { lifter: true } },
  'piece.lit': { piece: { lit: true } },
  'wall.separating': { wall: { separating: true } },
  'wall.tensioned': { wall: { tensioned: 'possible' } },
  'wall.coating': { wall: { coating: 'textured' } },
  'wall.condition': { wall: { condition: 'sound' } },
  'wall.farSide': { wall: { farSide: 'seen' } },
};

const NO: Partial<Record<QuestionName, JobSoFar>> = {
  'building.heritage': { building: { heritage: false } },
  'building.consent': { building: { consent: false } },
  'crew.dustExtraction': { crew: { dustExtraction: false } },
  'crew.lifter': { crew: { lifter: false } },
  'piece.lit': { piece: { lit: false } },
  'piece.glass': { piece: { glass: 'none' } },
  'wall.separating': { wall: { separating: false } },
  'wall.tensioned': { wall: { tensioned: 'no' } },
  'wall.coating': { wall: { coating: 'none' } },
  'wall.wet': { wall: { wet: 'no' } },
  'wall.asbestos': { wall: { asbestos: 'not-tested' } },
  'wall.farSide': { wall: { farSide: 'unknown' } },
  'place.below': { place: { below: 'nothing' } },
};

/** The part of a job that a yes or a no sets, or null where neither is an answer. */
export function yesNoValue(question: QuestionName, said: 'yes' | 'no'): JobSoFar | null {
  return (said === 'yes' ? YES : NO)[question] ?? null;
}

/** The fact that a plain yes or no is in answer to a question; none where neither answers it. */
export function yesNoAnswer(question: QuestionName, said: 'yes' | 'no', words: string): Fact[] {
  const value = yesNoValue(question, said);
  return value === null ? [] : [fact(question, value, words)];
}
