import { BOARD_ANSWERS } from './board.ts';
import { BRICK_ANSWERS } from './brick.ts';
import { GAUGE_ANSWERS } from './gauges.ts';
import { PRACTICE_ANSWERS } from './practice.ts';
import { SERVICE_ANSWERS } from './services.ts';
import type { TradeAnswer } from './trade-answer.ts';

/** Questions of the trade that can be answered; the first whose forms all match is taken. */
export const TRADE_ANSWERS: readonly TradeAnswer[] = [
  ...SERVICE_ANSWERS,
  ...BOARD_ANSWERS,
  ...BRICK_ANSWERS,
  ...GAUGE_ANSWERS,
  ...PRACTICE_ANSWERS,
];
