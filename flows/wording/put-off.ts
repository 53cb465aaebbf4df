import type { JobSoFar } from '../../core/job.ts';
import { mm } from '../../core/quantity.ts';
import { MASS_BY_SIZE } from '../mass-by-size.ts';
import type { QuestionName } from '../question.ts';
import type { DisplayUnit } from '../reading.ts';
import { figure, length } from './length.ts';

const MADE_OF =
  'Or tell me what it is made of, for example “4 mm mirror glass, 60 x 20 hardwood frame, 3 mm back”, and I reckon it.';

/** What helps beyond how to measure it: for a mass, what such a piece usually weighs. */
export function putOffAdvice(question: QuestionName, job: JobSoFar, unit: DisplayUnit): string[] {
  if (question !== 'piece.massKg') return [];
  const { kind, widthMm, heightMm, glass } = job.piece ?? {};
  if (kind === undefined || widthMm === undefined || heightMm === undefined) return [MADE_OF];
  const row = MASS_BY_SIZE.find((each) => widthMm * heightMm <= each.upTo.widthMm * each.upTo.heightMm);
  if (row === undefined || kind === 'panel') return [MADE_OF];
  const column =
    kind === 'picture' ? (glass === 'acrylic' || glass === 'none' ? 'acrylic' : 'picture') : kind;
  const [light, heavy] = row.kg[column];
  const like =
    unit === 'in'
      ? `${figure(mm(row.upTo.widthMm), unit)} x ${length(mm(row.upTo.heightMm), unit)}`
      : `${row.upTo.widthMm} x ${row.upTo.heightMm} mm`;
  return [
    `A ${kind} of up to ${like} usually weighs ${light} to ${heavy} kg, common figures and no more. If you can’t weigh it, give the heavier end.`,
    MADE_OF,
  ];
}
