import { DatabaseSync, type StatementSync } from 'node:sqlite';
import { LedgerError, refusePromise, type Store } from './store.ts';

/** A crew's file on Node. Turns of one pass of the event loop share a commit, each in its own savepoint. */
export type NodeStore = Store & {
  /** Resolves once everything written so far is on disk; rejects when it could not be kept. */
  durable: () => Promise<void>;
  close: () => void;
};

type Pass = { done: Promise<void>; resolve: () => void; reject: (error: Error) => void; broken?: unknown };

const SQLITE_BUSY = 5;

const isBusy = (error: unknown): boolean =>
  error instanceof Error && 'errcode' in error && error.errcode === SQLITE_BUSY;

const openDatabase = (file: string): DatabaseSync => {
  const db = new DatabaseSync(file);
  try {
    // EXCLUSIVE before WAL: no shared-memory file, and no second writer for as long as this process lives.
    db.exec('PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL');
    db.exec('BEGIN IMMEDIATE; COMMIT');
  } catch (error) {
    db.close();
    if (isBusy(error))
      throw new LedgerError(
        `The ledger ${file} is in use by another process. One ledger has one writer: stop the other one first.`,
        { cause: error },
      );
    throw error;
  }
  return db;
};

const newPass = (): Pass => {
  const { promise, resolve, reject } = Promise.withResolvers<void>();
  promise.catch(() => undefined);
  return { done: promise, resolve, reject };
};

/** Opens a ledger's file. `lost` is called when a commit fails, before anybody waiting hears of it. */
export const openNodeStore = (file: string, lost: () => void): NodeStore => {
  const db = openDatabase(file);
  const prepared = new Map<string, StatementSync>();
  let pass: Pass | null = null;

  const prepare = (sql: string): StatementSync => {
    let statement = prepared.get(sql);
    if (!statement) {
      statement = db.prepare(sql);
      prepared.set(sql, statement);
    }
    return statement;
  };

  const commit = (ending: Pass): void => {
    if (pass !== ending) return;
    pass = null;
    try {
      if (!db.isTransaction) throw ending.broken ?? new Error('the transaction is gone');
      db.exec('COMMIT');
    } catch (error) {
      if (db.isTransaction) db.exec('ROLLBACK');
      lost();
      ending.reject(new LedgerError('The ledger could not be written; nothing changed.', { cause: error }));
      return;
    }
    ending.resolve();
  };

  const join = (): Pass => {
    if (!pass) {
      db.exec('BEGIN IMMEDIATE');
      const opened = newPass();
      pass = opened;
      setImmediate(() => commit(opened));
    } else if (!db.isTransaction)
      throw new LedgerError('The ledger could not be written; nothing changed.', { cause: pass.broken });
    return pass;
  };

  return {
    all: <Row>(sql: string, ...params: (string | number | null | Uint8Array)[]) =>
      prepare(sql).all(...params) as Row[],
    run: (sql, ...params) => {
      prepare(sql).run(...params);
    },
    transaction: (fn) => {
      const joined = join();
      db.exec('SAVEPOINT turn');
      try {
        const result = refusePromise(fn());
        db.exec('RELEASE turn');
        return result;
      } catch (error) {
        // A full disk makes SQLite roll back the whole transaction, the turns before this one included.
        if (db.isTransaction) db.exec('ROLLBACK TO turn; RELEASE turn');
        else joined.broken = error;
        throw error;
      }
    },
    durable: () => pass?.done ?? Promise.resolve(),
    close: () => {
      if (pass) commit(pass);
      db.close();
    },
  };
};
