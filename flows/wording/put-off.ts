import type { JobSoFar } from '../../core/job.ts';
import { kg } from '../../core/quantity.ts';
import { usualMass } from '../mass-by-size.ts';
import type { QuestionName } from '../question.ts';
import type { DisplayUnit } from '../reading.ts';
import { figure, length, mass } from './length.ts';

const MADE_OF =
  'Or tell me what it is made of, for example “4 mm mirror glass, 60 x 20 hardwood frame, 3 mm back”, and I reckon it.';

/** What helps beyond how to measure it: for a mass, what such a piece usually weighs. */
export function putOffAdvice(question: QuestionName, job: JobSoFar, unit: DisplayUnit): string[] {
  if (question !== 'piece.massKg') return [];
  const usual = usualMass(job);
  if (usual === null) return [MADE_OF];
  const { light, heavy, upTo } = usual;
  const like = `${figure(upTo.widthMm, unit)} x ${length(upTo.heightMm, unit)}`;
  const range =
    unit === 'in' ? `${mass(kg(light), unit)} to ${mass(kg(heavy), unit)}` : `${light} to ${heavy} kg`;
  return [
    `A ${job.piece?.kind} of up to ${like} usually weighs ${range}, common figures and no more. If you can’t weigh it, take the heavier end.`,
    MADE_OF,
  ];
}
