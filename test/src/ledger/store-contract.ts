import { expect } from 'vitest';
import { MIGRATIONS, migrate } from '../../../src/ledger/migrations.ts';
import type { Store } from '../../../src/ledger/store.ts';

/** What every storage under a ledger does: run over node:sqlite here, and over a Durable Object in workerd. */
export type Claim = { claim: string; holds: (store: Store) => void };

const notes = (store: Store): Store => {
  store.run('CREATE TABLE note (n INTEGER PRIMARY KEY, words TEXT) STRICT');
  return store;
};
const words = (store: Store): string[] =>
  store.all<{ words: string }>('SELECT words FROM note ORDER BY n').map((row) => row.words);
const write = (store: Store, ...said: string[]): void => {
  for (const one of said) store.run('INSERT INTO note (words) VALUES (?)', one);
};

export const storeContract: Claim[] = [
  {
    claim: 'gives back strings, whole numbers, fractions and null as they went in',
    holds: (store) => {
      store.run('CREATE TABLE kept (a TEXT, b INTEGER, c REAL, d TEXT) STRICT');
      store.run('INSERT INTO kept VALUES (?, ?, ?, ?)', 'ħ “½” 🖼 \u0000 end', 2_700_000_000, 0.1, null);
      expect(store.all('SELECT a, b, c, d FROM kept')[0]).toEqual({
        ...{ a: 'ħ “½” 🖼 \u0000 end', b: 2_700_000_000, c: 0.1, d: null },
      });
    },
  },
  {
    claim: 'binds what people type, and never runs it',
    holds: (store) => {
      write(notes(store), "'); DROP TABLE note; --");
      expect(words(store)).toEqual(["'); DROP TABLE note; --"]);
    },
  },
  {
    claim: 'keeps all of a transaction, and gives what it returns',
    holds: (store) => {
      notes(store);
      const done = store.transaction(() => {
        write(store, 'one', 'two');
        return 'done';
      });
      expect(done).toBe('done');
      expect(words(store)).toEqual(['one', 'two']);
    },
  },
  {
    claim: 'keeps nothing of a transaction that throws, and everything of the ones around it',
    holds: (store) => {
      notes(store);
      store.transaction(() => write(store, 'before'));
      expect(() =>
        store.transaction(() => {
          write(store, 'half');
          throw new Error('on purpose');
        }),
      ).toThrow('on purpose');
      store.transaction(() => write(store, 'after'));
      expect(words(store)).toEqual(['before', 'after']);
    },
  },
  {
    claim: 'keeps nothing of a transaction that breaks a constraint',
    holds: (store) => {
      store.run('CREATE TABLE once (id TEXT PRIMARY KEY) STRICT');
      const twice = () => {
        store.run('INSERT INTO once VALUES (?)', 'a');
        store.run('INSERT INTO once VALUES (?)', 'a');
      };
      expect(() => store.transaction(twice)).toThrow(/UNIQUE/);
      expect(store.all('SELECT id FROM once')).toEqual([]);
    },
  },
  {
    claim: 'refuses a transaction that would go on later',
    holds: (store) => {
      notes(store);
      expect(() => store.transaction(async () => write(store, 'later'))).toThrow(/synchronous/);
      expect(words(store)).toEqual([]);
    },
  },
  {
    claim: 'reads what the open transaction has written',
    holds: (store) => {
      notes(store);
      const seen = store.transaction(() => {
        write(store, 'mine');
        return words(store);
      });
      expect(seen).toEqual(['mine']);
    },
  },
  {
    claim: 'brings a ledger of every older schema to the newest, with its turns',
    holds: (store) => {
      migrate(store, MIGRATIONS.slice(0, 1));
      store.run("INSERT INTO turn VALUES ('neutral:a', 1, 'm1', 'u1', '{}', '[]', '{}', NULL, NULL, 'then')");
      migrate(store);
      migrate(store);
      expect(store.all('SELECT version FROM schema')).toEqual([{ version: MIGRATIONS.length }]);
      expect(store.all('SELECT id FROM turn')).toEqual([{ id: 'm1' }]);
    },
  },
  {
    claim: 'leaves an older schema as it was when a migration fails',
    holds: (store) => {
      migrate(store);
      const failing = [
        ...MIGRATIONS,
        ['CREATE TABLE extra (a TEXT) STRICT', 'INSERT INTO nowhere VALUES (1)'],
      ];
      expect(() => migrate(store, failing)).toThrow(/nowhere/);
      expect(store.all('SELECT version FROM schema')).toEqual([{ version: MIGRATIONS.length }]);
      expect(store.all("SELECT name FROM sqlite_master WHERE name = 'extra'")).toEqual([]);
    },
  },
  {
    claim: 'refuses a ledger of a newer program with a sentence, and leaves it alone',
    holds: (store) => {
      migrate(store, [...MIGRATIONS, ['CREATE TABLE future (a TEXT) STRICT']]);
      expect(() => migrate(store)).toThrow(/written by a newer program/);
      expect(store.all('SELECT version FROM schema')).toEqual([{ version: MIGRATIONS.length + 1 }]);
    },
  },
];
