import type { JobSoFar } from '../../core/job.ts';
import { MASS_BY_SIZE } from '../mass-by-size.ts';
import type { QuestionName } from '../question.ts';
import type { DisplayUnit } from '../reading.ts';

/** What helps beyond how to measure it: for a mass, what such a piece usually weighs. */
export function putOffAdvice(question: QuestionName, job: JobSoFar, _unit: DisplayUnit): string[] {
  if (question !== 'piece.massKg') return [];
  const { kind, widthMm, heightMm, glass } = job.piece ?? {};
  if (kind === undefined || widthMm === undefined || heightMm === undefined) return [];
  const row = MASS_BY_SIZE.find((each) => widthMm * heightMm <= each.upTo.widthMm * each.upTo.heightMm);
  if (row === undefined || kind === 'panel') return [];
  const column =
    kind === 'picture' ? (glass === 'acrylic' || glass === 'none' ? 'acrylic' : 'picture') : kind;
  const [light, heavy] = row.kg[column];
  const like = `${row.upTo.widthMm} x ${row.upTo.heightMm} mm`;
  return [
    `A ${kind} of up to ${like} usually weighs ${light} to ${heavy} kg, common figures and no more. If you can’t weigh it, give the heavier end.`,
  ];
}
