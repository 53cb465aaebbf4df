import { randomBytes } from 'node:crypto';
import { chmodSync, mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from 'node:sqlite';
import { expect, test } from 'vitest';
import { openCrews } from '../../../src/crews.ts';
import { LedgerError } from '../../../src/ledger/store.ts';
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

/** [what is there, made in a folder, which gives the one to keep ledgers in; the sentence] */
const REFUSED: [string, (folder: string) => string, RegExp][] = [
  [
    'a ledger of random bytes',
    (folder) => {
      writeFileSync(join(folder, 'local.sqlite'), randomBytes(8192));
      return folder;
    },
    /local\.sqlite is damaged or is no ledger .*left as it is: put a sound copy/,
  ],
  [
    'a ledger with a damaged first page',
    (folder) => {
      damagedLedger(folder, (whole) => whole.fill(7, 100, 4000));
      return folder;
    },
    /local\.sqlite is damaged or is no ledger/,
  ],
  [
    'a ledger cut short',
    (folder) => {
      damagedLedger(folder, (whole) => whole.subarray(0, 5000));
      return folder;
    },
    /local\.sqlite is damaged or is no ledger/,
  ],
  [
    'a ledger of a newer program',
    (folder) => {
      const db = new DatabaseSync(damagedLedger(folder));
      db.exec('UPDATE schema SET version = 99');
      db.close();
      return folder;
    },
    /schema 99, written by a newer program/,
  ],
  [
    'a folder where the ledger should be',
    (folder) => {
      mkdirSync(join(folder, 'local.sqlite'));
      return folder;
    },
    /local\.sqlite can't be opened .*WALLHAND_DATA=\.\/data/,
  ],
  [
    'a file where the folder should be',
    (folder) => {
      writeFileSync(join(folder, 'data'), 'mine');
      return join(folder, 'data');
    },
    /ledgers can't be kept in .*data.*WALLHAND_DATA=\.\/data/,
  ],
  [
    'a file above the folder',
    (folder) => {
      writeFileSync(join(folder, 'data'), 'mine');
      return join(folder, 'data', 'deep', 'down');
    },
    /ledgers can't be kept in .*down.*WALLHAND_DATA=\.\/data/,
  ],
  [
    'a link to a disk that is not there',
    (folder) => {
      symlinkSync(join(folder, 'unplugged', 'disk'), join(folder, 'data'));
      return join(folder, 'data');
    },
    /ledgers can't be kept in .*data.*WALLHAND_DATA=\.\/data/,
  ],
];

/** Opens the crew `local`, and gives the sentence it is refused with. */
function refusal(folder: string): string {
  const crews = openCrews(folder, tinyFlow);
  try {
    crews.crewOf('local');
  } catch (error) {
    return error instanceof LedgerError ? error.message : `not a sentence: ${error}`;
  } finally {
    crews.close();
  }
  return 'opened';
}

test.each(REFUSED)('%s is refused in one sentence, and left as it is', (_, prepared, sentence) => {
  const folder = tempFolder();
  const data = prepared(folder);
  const before = contents(folder);
  expect(refusal(data)).toMatch(sentence);
  expect(contents(folder)).toEqual(before);
});

test.skipIf(process.platform !== 'linux')(
  'a folder that takes nothing is refused, and not tried for ever',
  () => {
    expect(refusal('/proc/wallhand')).toMatch(/^The ledgers can't be kept in \/proc\/wallhand .*such as/);
  },
);

test('a folder this user may not write to is refused in one sentence', () => {
  const folder = tempFolder();
  chmodSync(folder, 0o555);
  expect(asNobody(() => refusal(folder))).toMatch(
    /local\.sqlite can't be opened .*WALLHAND_DATA=\.\/data\.$/,
  );
});

/** Root may write anywhere, so where the tests run as root this part runs as the user "nobody". */
function asNobody<T>(act: () => T): T {
  if (process.getuid?.() !== 0) return act();
  process.seteuid?.(65534);
  try {
    return act();
  } finally {
    process.seteuid?.(0);
  }
}

test('a server whose ledger is damaged says so in one sentence, ends, and leaves it as it is', async () => {
  const folder = tempFolder();
  writeFileSync(join(folder, 'local.sqlite'), randomBytes(8192));
  const before = contents(folder);
  const server = started('src/server.ts', { PORT: '0', WALLHAND_DATA: folder });
  expect(await server.ended).toBe(1);
  expect(server.err()).toMatch(/^The ledger .*local\.sqlite is damaged [^\n]*\n$/);
  expect([server.out(), contents(folder)]).toEqual(['', before]);
}, 30_000);

test.skipIf(process.platform === 'win32')(
  'a disk without room is said in one sentence',
  async () => {
    const server = started('src/server.ts', { PORT: '0', WALLHAND_DATA: tempFolder() }, [], 0);
    expect(await server.ended).toBe(1);
    expect(server.err()).toMatch(/^The ledger .*local\.sqlite can't be opened .* with room .*\n$/);
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
