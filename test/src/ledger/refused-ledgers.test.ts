import { randomBytes } from 'node:crypto';
import { chmodSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { openCrews } from '../../../src/crews.ts';
import { tinyFlow } from '../crew/tiny-flow.ts';
import { started } from '../started.ts';
import { contents } from './contents.ts';
import { tempFolder } from './temp-folder.ts';

/** A ledger as the program makes it, then damaged. */
function damagedLedger(folder: string, damaged: (whole: Buffer) => Uint8Array = (whole) => whole): string {
  const crews = openCrews(folder, tinyFlow);
  crews.crewOf('local');
  crews.close();
  const file = join(folder, 'local.sqlite');
  writeFileSync(file, damaged(readFileSync(file)));
  return file;
}

type Start = {
  what: string;
  /** Prepares a folder and gives the environment. */
  env: (folder: string) => Record<string, string>;
  sentence: RegExp;
};

const REFUSED: Start[] = [
  {
    what: 'a ledger of random bytes',
    env: (folder) => {
      writeFileSync(join(folder, 'local.sqlite'), randomBytes(8192));
      return {};
    },
    sentence: /local\.sqlite is damaged or is no ledger .*left as it is: put a sound copy/,
  },
  {
    what: 'a ledger with a damaged first page',
    env: (folder) => {
      damagedLedger(folder, (whole) => whole.fill(7, 100, 4000));
      return {};
    },
    sentence: /local\.sqlite is damaged or is no ledger/,
  },
  {
    what: 'a ledger cut short',
    env: (folder) => {
      damagedLedger(folder, (whole) => whole.subarray(0, 5000));
      return {};
    },
    sentence: /local\.sqlite is damaged or is no ledger/,
  },
  {
    what: 'a ledger of a newer program',
    env: (folder) => {
      const db = new DatabaseSync(damagedLedger(folder));
      db.exec('UPDATE schema SET version = 99');
      db.close();
      return {};
    },
    sentence: /schema 99, written by a newer program/,
  },
  {
    what: 'a folder where the ledger should be',
    env: (folder) => {
      mkdirSync(join(folder, 'local.sqlite'));
      return {};
    },
    sentence: /local\.sqlite can't be opened .*WALLHAND_DATA=\.\/data/,
  },
  {
    what: 'a file where the folder should be',
    env: (folder) => {
      writeFileSync(join(folder, 'data'), 'mine');
      return { WALLHAND_DATA: join(folder, 'data') };
    },
    sentence: /ledgers can't be kept in .*data.*WALLHAND_DATA=\.\/data/,
  },
  {
    what: 'a file above the folder',
    env: (folder) => {
      writeFileSync(join(folder, 'data'), 'mine');
      return { WALLHAND_DATA: join(folder, 'data', 'deep', 'down') };
    },
    sentence: /ledgers can't be kept in .*down.*WALLHAND_DATA=\.\/data/,
  },
  {
    what: 'a link to a disk that is not there',
    env: (folder) => {
      symlinkSync(join(folder, 'unplugged', 'disk'), join(folder, 'data'));
      return { WALLHAND_DATA: join(folder, 'data') };
    },
    sentence: /ledgers can't be kept in .*data.*WALLHAND_DATA=\.\/data/,
  },
];

test.each(REFUSED)(
  'told to use $what the server says so in one sentence, ends, and touches nothing',
  async ({ env, sentence }) => {
    const folder = tempFolder();
    const prepared = env(folder);
    const before = contents(folder);
    const server = started('src/server.ts', { PORT: '0', WALLHAND_DATA: folder, ...prepared });
    expect(await server.ended).toBe(1);
    expect(server.err()).toMatch(/^[^\n]+\n$/);
    expect(server.err().trim()).toMatch(sentence);
    expect([server.out(), contents(folder)]).toEqual(['', before]);
  },
  30_000,
);

test.skipIf(process.platform !== 'linux')(
  'a folder that nobody may make anything in is said in one sentence, and the start does not hang',
  async () => {
    const server = started('src/server.ts', { PORT: '0', WALLHAND_DATA: '/proc/wallhand' });
    expect(await server.ended).toBe(1);
    expect(server.err()).toMatch(
      /^The ledgers can't be kept in \/proc\/wallhand .*WALLHAND_DATA=\.\/data\.\n$/,
    );
  },
  30_000,
);

test.skipIf(process.platform === 'win32')(
  'a disk without room is said in one sentence',
  async () => {
    const server = started('src/server.ts', { PORT: '0', WALLHAND_DATA: tempFolder() }, [], 0);
    expect(await server.ended).toBe(1);
    expect(server.err()).toMatch(/^The ledger .*local\.sqlite can't be opened .* with room .*\n$/);
  },
  30_000,
);

// Root may write anywhere.
test.skipIf(process.getuid?.() === 0)(
  'a folder this user may not write to is said in one sentence',
  async () => {
    const folder = tempFolder();
    chmodSync(folder, 0o555);
    const server = started('src/server.ts', { PORT: '0', WALLHAND_DATA: folder });
    expect(await server.ended).toBe(1);
    expect(server.err()).toMatch(/^The ledger .*local\.sqlite can't be opened .*WALLHAND_DATA=\.\/data\.\n$/);
    expect([server.out(), contents(folder)]).toEqual(['', []]);
  },
  30_000,
);

test('a ledger that another process holds is said in one sentence', async () => {
  const folder = tempFolder();
  const env = { PORT: '0', WALLHAND_DATA: folder };
  await started('src/server.ts', env).wrote(/chat page/);
  const two = started('src/server.ts', env);
  expect(await two.ended).toBe(1);
  expect(two.err()).toMatch(/^The ledger .*local\.sqlite is in use by another process.*\n$/);
}, 30_000);
