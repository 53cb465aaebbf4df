import type { Open } from '../open.ts';
import { says, type Turn } from '../turns/turn.ts';
import { TRADE_ANSWERS } from './answers.ts';

/** A question of the trade, answered without losing the place; what is not known yet is said to be so. */
export function tradeAnswer(said: string, open: Open): Turn {
  const text = said.toLowerCase();
  for (const { asks, answer } of TRADE_ANSWERS) {
    if (!asks.every((form) => form.test(text))) continue;
    const line = answer(text, open.folded.job);
    if (line !== null) return says(line);
  }
  return says('That one I can’t answer yet, and I won’t guess.');
}
