import { createServer } from 'node:net';
import { expect, test } from 'vitest';
import { contents } from './ledger/contents.ts';
import { tempFolder } from './ledger/temp-folder.ts';
import { started } from './started.ts';

const SECRET = { WALLHAND_SECRET: 'a secret of the tests, long enough' };

/** [what is set, environment, the sentence]; what each variable may hold is in `config.test.ts`. */
const REFUSED: [string, Record<string, string>, RegExp][] = [
  ['PORT=abc', { PORT: 'abc' }, /^PORT must be .* such as PORT=8080\.$/],
  [
    'HOST=0.0.0.0 without keys',
    { HOST: '0.0.0.0' },
    /^Without keys the server listens on this machine only, .*such as WALLHAND_KEYS=/,
  ],
  [
    'an empty secret',
    { WALLHAND_SECRET: '' },
    /^WALLHAND_SECRET is set but empty: .*such as WALLHAND_SECRET=/,
  ],
  [
    'an address this machine does not have',
    { HOST: '192.0.2.1', WALLHAND_KEYS: 'a:b', ...SECRET },
    /^HOST 192\.0\.2\.1 is no address of this machine: .*such as HOST=127\.0\.0\.1\.$/,
  ],
];

test.each(REFUSED)(
  'told to use %s the server says why not in one sentence, ends, and begins no ledger',
  async (_, env, sentence) => {
    const folder = tempFolder();
    const server = started('src/server.ts', { PORT: '0', WALLHAND_DATA: folder, ...env });
    expect(await server.ended).toBe(1);
    expect(server.err()).toMatch(/^[^\n]+\n$/);
    expect(server.err().trim()).toMatch(sentence);
    expect([server.out(), contents(folder)]).toEqual(['', []]);
  },
  30_000,
);

test('a port in use is said in one sentence, and no ledger is begun', async () => {
  const folder = tempFolder();
  const other = createServer().listen(0, '127.0.0.1');
  await new Promise((resolve) => other.once('listening', resolve));
  const address = other.address();
  const port = typeof address === 'object' ? String(address?.port) : '';
  const server = started('src/server.ts', { PORT: port, WALLHAND_DATA: folder });
  expect(await server.ended).toBe(1);
  expect(server.err()).toMatch(new RegExp(`^Port ${port} is in use: .*PORT=0 takes any that is free\\.\n$`));
  expect([server.out(), contents(folder)]).toEqual(['', []]);
  other.close();
}, 30_000);
