/** A question of the trade: every form in `asks` must match; `answer` is null when the figures in it are not ours. */
export type TradeAnswer = { asks: readonly RegExp[]; answer: (text: string) => string | null };

export const TRADE_ANSWERS: readonly TradeAnswer[] = [];
