import { choicesNow } from './choices-now.ts';
import { awaitingIn, type Open, stateOf } from './open.ts';
import { QUESTIONS } from './questions/all.ts';
import type { DisplayUnit } from './reading.ts';
import type { Reply } from './reply.ts';
import { readingValue } from './turns/picked.ts';
import { summaryOf } from './wording/summary.ts';

/** The one question that is open, as a reply; none when nothing is asked. */
export function questionReply(open: Open, otherWords?: string): Reply[] {
  const question = awaitingIn(open);
  if (question === null) return [];
  if (open.offered !== null && stateOf(open) === 'askedBack') {
    const { text, readings } = open.offered.ask;
    const choices = readings.map(({ label }, index) => ({ value: readingValue(index), label }));
    return [{ kind: 'question', question, text, expects: 'choice', choices }];
  }
  const { asks, expects } = QUESTIONS[question];
  const text = inTheirUnit(
    otherWords ?? (typeof asks === 'string' ? asks : asks(open.folded.job, open.folded.unit)),
    open.folded.unit,
  );
  const whole = question === 'confirm' && otherWords === undefined ? `${summaryOf(open)}\n${text}` : text;
  return [{ kind: 'question', question, text: whole, expects, choices: [...choicesNow(question, open)] }];
}

const UNIT: Readonly<Record<DisplayUnit, string>> = { mm: 'mm', cm: 'cm', m: 'metres', in: 'inches' };

/** Questions are written in mm and kg; they are asked in the unit the conversation speaks. */
function inTheirUnit(text: string, unit: DisplayUnit): string {
  if (unit === 'mm') return text;
  const inUnit = text.replace(/\b(in|many) mm\b/g, `$1 ${UNIT[unit]}`);
  return unit === 'in' ? inUnit.replace(/\bin kg\b/, 'in pounds or kg') : inUnit;
}
