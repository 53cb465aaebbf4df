import { LedgerError, type Store } from './store.ts';

/**
 * One list of statements per schema version, oldest first; never edited once released, only added to.
 * A turn is one row in one table with one index: four tables a turn cost twice as much (tried).
 */
export const MIGRATIONS: readonly (readonly string[])[] = [
  [
    `CREATE TABLE turn (
      conversation TEXT NOT NULL,
      n INTEGER NOT NULL,
      id TEXT NOT NULL,
      author TEXT NOT NULL,
      message TEXT,
      entries TEXT NOT NULL,
      reply TEXT,
      awaiting TEXT,
      plan TEXT,
      at TEXT NOT NULL
    ) STRICT`,
    'CREATE UNIQUE INDEX turn_once ON turn (conversation, id)',
    `CREATE TABLE plan (
      id TEXT PRIMARY KEY,
      conversation TEXT NOT NULL,
      n INTEGER NOT NULL,
      verdict TEXT NOT NULL,
      body TEXT NOT NULL,
      at TEXT NOT NULL
    ) STRICT, WITHOUT ROWID`,
  ],
  ['CREATE TABLE remembered (what TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID'],
];

/** Brings a ledger to the newest schema, all or nothing. The version is a table: a Durable Object has no `user_version`. */
export const migrate = (store: Store, migrations: readonly (readonly string[])[] = MIGRATIONS): void => {
  store.transaction(() => {
    store.run('CREATE TABLE IF NOT EXISTS schema (version INTEGER NOT NULL) STRICT');
    const [row] = store.all<{ version: number }>('SELECT version FROM schema');
    const version = row?.version ?? 0;
    if (version > migrations.length)
      throw new LedgerError(
        `This ledger has schema ${version}, written by a newer program than this one, which knows ${migrations.length}.`,
      );
    if (version === migrations.length) return;
    for (const statements of migrations.slice(version)) for (const sql of statements) store.run(sql);
    store.run(
      row ? 'UPDATE schema SET version = ?' : 'INSERT INTO schema (version) VALUES (?)',
      migrations.length,
    );
  });
};
