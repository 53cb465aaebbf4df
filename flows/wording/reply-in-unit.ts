import type { DisplayUnit } from '../reading.ts';
import type { Reply } from '../reply.ts';
import { inInches } from './in-inches.ts';

/** Whatever still speaks in millimetres is said in inches to who measures in inches. */
export function replyInUnit(reply: Reply, unit: DisplayUnit): Reply {
  if (unit !== 'in') return reply;
  const text = inInches(reply.text);
  switch (reply.kind) {
    case 'question':
      return {
        ...reply,
        text,
        choices: reply.choices.map(({ value, label }) => ({ value, label: inInches(label) })),
      };
    case 'table':
      return { ...reply, text, rows: reply.rows.map((row) => row.map(inInches)) };
    default:
      return { ...reply, text };
  }
}
