import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, onTestFinished, test } from 'vitest';
import { type NodeStore, openNodeStore } from '../../../src/ledger/node-store.ts';
import { crewContract } from '../crew/crew-contract.ts';
import { keepingContract } from '../crew/keeping-contract.ts';
import { storeContract } from './store-contract.ts';
import { tempFolder } from './temp-folder.ts';

const openTemp = (lost = () => {}): NodeStore & { file: string } => {
  const file = join(tempFolder(), 'crew.sqlite');
  const store = openNodeStore(file, lost);
  onTestFinished(() => store.close());
  return { ...store, file };
};

test.each(storeContract)('on node:sqlite a store $claim', ({ holds }) => holds(openTemp()));
test.each([...crewContract, ...keepingContract])('on node:sqlite a crew $claim', ({ holds }) =>
  holds(openTemp()),
);

test('the file is written ahead, with full sync, by one process only', () => {
  const store = openTemp();
  expect(store.all('PRAGMA journal_mode')).toEqual([{ journal_mode: 'wal' }]);
  expect(store.all('PRAGMA synchronous')).toEqual([{ synchronous: 2 }]);
  expect(store.all('PRAGMA locking_mode')).toEqual([{ locking_mode: 'exclusive' }]);
  expect(() => openNodeStore(store.file, () => {})).toThrow(/in use by another process/);
  const other = new DatabaseSync(store.file);
  expect(() => other.prepare('SELECT * FROM sqlite_master').all()).toThrow(/locked/);
  other.close();
});

test('turns of one pass of the event loop are on disk together, and not before', async () => {
  const store = openTemp();
  store.run('CREATE TABLE note (words TEXT) STRICT');
  let kept = 0;
  const add = async (words: string) => {
    store.transaction(() => store.run('INSERT INTO note VALUES (?)', words));
    await store.durable();
    kept++;
  };
  const adding = ['a', 'b', 'c'].map(add);
  await Promise.resolve();
  expect(kept).toBe(0);
  await Promise.all(adding);
  expect(kept).toBe(3);
});

test('a turn that throws does not take the others of its pass with it', async () => {
  const store = openTemp();
  store.run('CREATE TABLE note (words TEXT) STRICT');
  store.transaction(() => store.run("INSERT INTO note VALUES ('first')"));
  expect(() =>
    store.transaction(() => {
      store.run("INSERT INTO note VALUES ('half')");
      throw new Error('on purpose');
    }),
  ).toThrow('on purpose');
  store.transaction(() => store.run("INSERT INTO note VALUES ('last')"));
  await store.durable();
  expect(store.all('SELECT words FROM note')).toEqual([{ words: 'first' }, { words: 'last' }]);
});

test('everybody waiting hears of a commit that fails, after the caches are dropped, and the next one works', async () => {
  let lost = 0;
  const store = openTemp(() => lost++);
  // A deferred foreign key is checked at COMMIT, so this commit fails for real.
  store.run('CREATE TABLE parent (id INTEGER PRIMARY KEY)');
  store.run('CREATE TABLE child (id INTEGER REFERENCES parent (id) DEFERRABLE INITIALLY DEFERRED)');
  const heard: string[] = [];
  const wait = () => store.durable().catch((error: Error) => heard.push(`${error.message} ${lost}`));
  store.transaction(() => store.run('INSERT INTO parent VALUES (1)'));
  const first = wait();
  store.transaction(() => store.run('INSERT INTO child VALUES (99)'));
  await Promise.all([first, wait()]);
  expect(heard).toEqual(Array(2).fill('The ledger could not be written; nothing changed. 1'));
  expect(store.all('SELECT id FROM parent')).toEqual([]);
  store.transaction(() => store.run('INSERT INTO parent VALUES (2)'));
  await store.durable();
  expect(store.all('SELECT id FROM parent')).toEqual([{ id: 2 }]);
});

test('closing keeps what was written in the pass still open', () => {
  const file = join(tempFolder(), 'crew.sqlite');
  const store = openNodeStore(file, () => {});
  store.run('CREATE TABLE note (words TEXT) STRICT');
  store.transaction(() => store.run("INSERT INTO note VALUES ('kept')"));
  store.close();
  const again = openNodeStore(file, () => {});
  expect(again.all('SELECT words FROM note')).toEqual([{ words: 'kept' }]);
  again.close();
});
