/** What SQLite on both platforms binds. Not boolean, not undefined: the Durable Object refuses them. */
type Bound = string | number | null | Uint8Array;

/**
 * One crew's SQLite, as both platforms can give it. Everything is synchronous: a turn is never interleaved
 * with another. A Durable Object refuses BEGIN and SAVEPOINT, so a transaction belongs to the adapter.
 */
export type Store = {
  /** Every row, read to the end: an unread cursor breaks a Durable Object's commit. */
  all: <Row>(sql: string, ...params: Bound[]) => Row[];
  run: (sql: string, ...params: Bound[]) => void;
  /** All of `fn` or nothing. `fn` is synchronous; what it throws is thrown on. Not nested. */
  transaction: <T>(fn: () => T) => T;
};

/** The ledger cannot be opened or written; the message is a sentence for whoever runs the program. */
export class LedgerError extends Error {
  override name = 'LedgerError';
}

/** `transactionSync` takes an async function and loses what follows its first await, so both adapters refuse it. */
export const refusePromise = <T>(result: T): T => {
  if (result !== null && typeof result === 'object' && 'then' in result)
    throw new LedgerError('A transaction takes a synchronous function only.');
  return result;
};
