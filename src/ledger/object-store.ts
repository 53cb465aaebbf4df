import { refusePromise, type Store } from './store.ts';

/** The part of a Durable Object's storage that a ledger needs. */
export type ObjectStorage = {
  sql: { exec: (sql: string, ...params: unknown[]) => { toArray: () => unknown[] } };
  transactionSync: <T>(fn: () => T) => T;
};

/** The same statements over a Durable Object's own SQLite; its output gate holds every answer until the disk has it. */
export const objectStore = (storage: ObjectStorage): Store => ({
  all: <Row>(sql: string, ...params: unknown[]) => storage.sql.exec(sql, ...params).toArray() as Row[],
  run: (sql, ...params) => {
    storage.sql.exec(sql, ...params).toArray();
  },
  transaction: (fn) => storage.transactionSync(() => refusePromise(fn())),
});
