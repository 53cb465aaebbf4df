import type { JobSoFar } from '../core/job.ts';
import type { Caution } from '../core/plan-shape.ts';
import type { QuestionName } from './question.ts';

/** The question whose answer could clear a stop, by the caution's id; what is not here no answer clears. */
const CLEARED_BY: Readonly<Record<string, QuestionName>> = {
  'C-AB-1': 'wall.asbestos',
  'C-AB-2': 'wall.asbestos',
  'C-SV-1': 'place.across',
  'C-SV-4': 'wall.accessories',
  'C-SV-6': 'place.across',
  'C-WL-1': 'wall.baseMaterial',
  'C-GT-1': 'wall.tensioned',
  'C-GT-2': 'building.consent',
  'C-GT-6': 'building.consent',
  'C-GL-2': 'piece.glass',
  'C-MH-2': 'crew.lifter',
  'C-MH-3': 'crew.people',
  'C-FL-2': 'place.below',
  'C-WL-5': 'wall.condition',
  'C-WA-1': 'wall.wet',
  'C-AC-1': 'place.up',
  'C-FP-1': 'place.up',
  'C-AC-2': 'place.up',
  'C-SV-8': 'piece.lit',
  'C-GT-3': 'building.heritage',
  'C-HG-3': 'piece.hanging',
  hangerOutside: 'piece.hanging',
  impossibleCord: 'piece.hanging',
  tooManyScrews: 'piece.hanging',
  belowDatum: 'place.up',
  throughCeiling: 'place.up',
  heightNotSaid: 'wall.heightMm',
  overOpening: 'place.across',
  pastTheEnd: 'place.across',
  tooWideBetween: 'place.across',
  widerThanWall: 'wall.widthMm',
  notALength: 'piece.size',
};

/** The first question that could clear what stops the job; null when none could. */
export function questionThatClears(stops: readonly Caution[], job: JobSoFar): QuestionName | null {
  for (const { id } of stops) {
    const question = Object.hasOwn(CLEARED_BY, id) ? CLEARED_BY[id] : undefined;
    if (question !== undefined) return id === 'C-SV-4' && oneFaceSeen(job) ? 'wall.farSide' : question;
  }
  return stops.some(isForAPublicPlace) && job.building?.kind === 'public' ? 'building.kind' : null;
}

/** This face was listed, so only the other is open. */
const oneFaceSeen = ({ wall }: JobSoFar): boolean =>
  Array.isArray(wall?.accessories) && (wall.unplaced ?? []).length === 0;

/** C-GT-9 stops for several reasons; that the place is public may only have been read from a word. */
const isForAPublicPlace = ({ id }: Caution): boolean => id === 'C-GT-9';
