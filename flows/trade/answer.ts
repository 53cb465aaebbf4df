import type { Open } from '../open.ts';
import { says, type Turn } from '../turns/turn.ts';
import { TRADE_ANSWERS } from './answers.ts';

/** A question of the trade, answered without losing the place; null for one that has no answer here yet. */
export function tradeAnswer(said: string, open: Open): Turn | null {
  const text = said.toLowerCase();
  for (const { asks, answer } of TRADE_ANSWERS) {
    if (!asks.every((form) => form.test(text))) continue;
    const line = answer(text, open.folded.job);
    if (line !== null) return says(line);
  }
  return null;
}
