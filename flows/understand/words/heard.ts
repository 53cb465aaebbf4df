import type { JobSoFar } from '../../../core/job.ts';
import { MM_PER_INCH } from '../../../core/quantity.ts';
import type { QuestionName } from '../../question.ts';
import type { AskBack, Fact, Refusal } from '../../reading.ts';
import type { Token } from './token.ts';

/**
 * What a reader of quantities made of a message. `rest` is what it did not use, so that the next reader
 * does not read it again. Null: nothing in it was for this reader.
 */
export type Heard =
  | { kind: 'facts'; facts: Fact[]; rest: Token[] }
  | { kind: 'ask'; ask: AskBack; rest: Token[] }
  | { kind: 'refused'; refusal: Refusal; rest: Token[] }
  | null;

/** A stretch of tokens, `to` exclusive. */
export type Span = { from: number; to: number };

/** What to type instead, by question. */
const EXAMPLES: Partial<Record<QuestionName, string>> = {
  'piece.massKg': '24 kg',
  'piece.size': '900 x 1200 mm, width first',
  'piece.hanging': 'two rings, 95 in from each side and 240 down',
  'piece.depthMm': '30 mm',
  'wall.widthMm': '3.4 m',
  'wall.heightMm': '2.4 m',
  'wall.thicknessMm': '110 mm',
  'wall.boardMm': '13 mm',
  'wall.datum': '1100 mm',
  'wall.voidMm': '50 mm',
};

export function refused(question: QuestionName, because: string, rest: Token[]): Heard {
  return { kind: 'refused', refusal: { question, because, example: EXAMPLES[question] ?? '30 mm' }, rest };
}

export function asked(
  question: QuestionName,
  text: string,
  readings: AskBack['readings'],
  rest: Token[],
): Heard {
  return { kind: 'ask', ask: { question, text, readings }, rest };
}

export function fact(question: QuestionName, value: JobSoFar, said: string, inferred: boolean): Fact {
  return inferred ? { question, value, said, inferred: true } : { question, value, said };
}

const GAP: Token = { kind: 'mark', text: ',', glued: false };

/** The tokens outside the spans; a comma stays where something was taken. */
export function outside(all: readonly Token[], spans: readonly Span[]): Token[] {
  const taken = new Set<number>();
  for (const span of spans) for (let at = span.from; at < span.to; at += 1) taken.add(at);
  const kept: Token[] = [];
  all.forEach((token, at) => {
    if (!taken.has(at)) kept.push(token);
    else if (kept.at(-1) !== GAP) kept.push(GAP);
  });
  return kept;
}

const toTenths = (value: number) => Math.round(value * 10) / 10;

/** A length as a label of a reading: in the unit it would have, and in millimetres. */
export function lengthLabel(valueMm: number, unit: string): string {
  const millimetres = `${toTenths(valueMm)} mm`;
  if (unit === 'mm') return millimetres;
  if (unit === 'in') return `${Math.round((valueMm / MM_PER_INCH) * 100) / 100} in (${millimetres})`;
  if (unit === 'ft') return `${feet(valueMm)} (${millimetres})`;
  if (unit === 'cm') return `${toTenths(valueMm / 10)} cm (${millimetres})`;
  if (unit === 'm') return `${Math.round(valueMm) / 1000} m (${millimetres})`;
  return millimetres;
}

function feet(valueMm: number): string {
  const inches = valueMm / MM_PER_INCH;
  const whole = Math.floor(inches / 12 + 1e-9);
  const left = Math.round((inches - whole * 12) * 100) / 100;
  return left > 0 ? `${whole} ft ${left} in` : `${whole} ft`;
}
