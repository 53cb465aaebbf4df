import { DatabaseSync, type StatementSync } from 'node:sqlite';
import { LedgerError, refusePromise, type Store } from './store.ts';
import { whyNotOpened } from './why-not-opened.ts';

/** A crew's file on Node. Turns of one pass of the event loop share a commit, each in its own savepoint. */
export type NodeStore = Store & {
  /** Resolves once everything written so far is on disk; rejects when it could not be kept. */
  durable: () => Promise<void>;
  /** Commits now what the open pass has written, and throws when it could not be kept. */
  flush: () => void;
  close: () => void;
};

type Pass = {
  done: Promise<void>;
  resolve: () => void;
  reject: (error: Error) => void;
  soon: NodeJS.Immediate;
  /** What made SQLite give up the transaction before its commit. */
  broken?: unknown;
};

/** 16 MB: a page written again within one log is copied to the file once. A quarter more turns a second than SQLite's 1,000. */
const CHECKPOINT_PAGES = 4_000;

const openDatabase = (file: string): DatabaseSync => {
  const db = new DatabaseSync(file, { open: false });
  try {
    db.open();
    // EXCLUSIVE before WAL: no shared-memory file, and no second writer for as long as this process lives.
    db.exec('PRAGMA locking_mode = EXCLUSIVE; PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL');
    db.exec(`PRAGMA wal_autocheckpoint = ${CHECKPOINT_PAGES}`);
    db.exec('BEGIN IMMEDIATE; COMMIT');
  } catch (error) {
    if (db.isOpen) db.close();
    throw whyNotOpened(file, error);
  }
  return db;
};

const newPass = (soon: NodeJS.Immediate): Pass => {
  const { promise, resolve, reject } = Promise.withResolvers<void>();
  promise.catch(() => undefined);
  return { done: promise, resolve, reject, soon };
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

  const commit = (): void => {
    if (!pass) return;
    const ending = pass;
    pass = null;
    clearImmediate(ending.soon);
    try {
      if (!db.isTransaction) throw ending.broken ?? new Error('the transaction is gone');
      prepare('COMMIT').run();
      ending.resolve();
    } catch (cause) {
      if (db.isTransaction) db.exec('ROLLBACK');
      lost();
      const error = new LedgerError('The ledger could not be written; nothing changed.', { cause });
      ending.reject(error);
      throw error;
    }
  };

  const commitSoon = (): void => {
    try {
      commit();
    } catch {
      // Everybody who waits for this pass has been told by its rejection.
    }
  };

  const join = (): Pass => {
    if (!pass) {
      prepare('BEGIN IMMEDIATE').run();
      pass = newPass(setImmediate(commitSoon));
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
      prepare('SAVEPOINT turn').run();
      try {
        const result = refusePromise(fn());
        prepare('RELEASE turn').run();
        return result;
      } catch (error) {
        // A full disk makes SQLite roll back the whole transaction, the turns before this one included.
        if (db.isTransaction) db.exec('ROLLBACK TO turn; RELEASE turn');
        else joined.broken = error;
        throw error;
      }
    },
    durable: () => pass?.done ?? Promise.resolve(),
    flush: commit,
    close: () => {
      commitSoon();
      db.close();
    },
  };
};
