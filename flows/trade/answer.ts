import type { Open } from '../open.ts';
import { says, type Turn } from '../turns/turn.ts';
import { TRADE_ANSWERS } from './answers.ts';

/** A question of the trade, answered without losing the place; null for one that has no answer here yet. */
export function tradeAnswer(said: string, open: Open): Turn | null {
  const text = said.toLowerCase();
  for (const { asks, answer } of TRADE_ANSWERS) {
    if (!asks.every((form) => form.test(text))) continue;
    const line = answer(text, open.folded.job);
    if (line !== null) return says(open.folded.unit === 'in' && IN_METRIC.test(text) ? inFull(line) : line);
  }
  return null;
}

/** Who asks for millimetres is told millimetres, whatever the tape reads; spelled out, they are not put into inches. */
const IN_METRIC = /\bmm\b|\bmil\b|metric|millim/;
const inFull = (line: string): string => line.replace(/ mm\b/g, ' millimetres');
