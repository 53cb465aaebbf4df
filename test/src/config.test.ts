import { expect, test } from 'vitest';
import { readConfig } from '../../src/config.ts';

const SECRET = { WALLHAND_SECRET: 'a secret of the tests, long enough' };
const key = (bytes: number) => `whsec_${btoa('x'.repeat(bytes))}`;

/** [what is set, environment, a word of the refusal] */
const REFUSED: [string, Record<string, string>, RegExp][] = [
  ['an address of the network and no key', { HOST: '0.0.0.0' }, /WALLHAND_KEYS/],
  ['every address and no key', { HOST: '::' }, /WALLHAND_KEYS/],
  ['an empty address', { HOST: ' ' }, /HOST is set but empty/],
  ['a port that is a word', { PORT: 'http' }, /PORT/],
  ['a port of 65536', { PORT: '65536' }, /PORT/],
  ['an empty port', { PORT: '' }, /PORT/],
  ['a port of -1', { PORT: '-1' }, /PORT/],
  ['an empty folder', { WALLHAND_DATA: '' }, /WALLHAND_DATA/],
  ['an empty list of keys', { WALLHAND_KEYS: '', ...SECRET }, /WALLHAND_KEYS is set but empty/],
  ['a gap in the list of keys', { WALLHAND_KEYS: 'a:1,,b:2', ...SECRET }, /WALLHAND_KEYS is set but empty/],
  ['an empty secret', { WALLHAND_SECRET: '' }, /WALLHAND_SECRET is set but empty/],
  ['an empty platform secret', { SLACK_SIGNING_SECRET: '' }, /SLACK_SIGNING_SECRET is set but empty/],
  ['keys without a secret', { WALLHAND_KEYS: 'a:1' }, /WALLHAND_SECRET is needed/],
  ['a key without a crew', { WALLHAND_KEYS: 'abc', ...SECRET }, /crew:key/],
  ['a crew in capitals', { WALLHAND_KEYS: 'Harbour:1', ...SECRET }, /a-z/],
  ['a crew that climbs', { WALLHAND_KEYS: '../a:1', ...SECRET }, /a-z/],
  ['a crew of 41 letters', { WALLHAND_KEYS: `${'a'.repeat(41)}:1`, ...SECRET }, /1 to 40/],
  ['an empty key', { WALLHAND_KEYS: 'a:', ...SECRET }, /empty key/],
  ['a key with a space in it', { WALLHAND_KEYS: 'a:long key', ...SECRET }, /a space in it/],
  ['a workspace without a crew', { WALLHAND_CREWS: 'slack/T0123' }, /slack\/TEAM=crew/],
  ['a workspace of a platform nobody knows', { WALLHAND_CREWS: 'post/T0123=harbour' }, /slack\/TEAM=crew/],
  ['a workspace whose crew is in capitals', { WALLHAND_CREWS: 'slack/T0123=Harbour' }, /a-z/],
  ['a gap in the list of workspaces', { WALLHAND_CREWS: 'slack/T0123=a,' }, /slack\/TEAM=crew/],
  ['a hash that is short', { WALLHAND_KEYS: 'a:sha256:abc', ...SECRET }, /64 hexadecimal/],
  ['a signing secret of 23 bytes', { WALLHAND_KEYS: `a:${key(23)}`, ...SECRET }, /24 to 64 bytes/],
  ['a signing secret of 65 bytes', { WALLHAND_KEYS: `a:${key(65)}`, ...SECRET }, /24 to 64 bytes/],
  ['a signing secret that is not base64', { WALLHAND_KEYS: 'a:whsec_***', ...SECRET }, /base64/],
  ['one key for two crews', { WALLHAND_KEYS: 'a:same,b:same', ...SECRET }, /a and b have the same key/],
  [
    'one key for two crews, once as its hash',
    // printf %s abc | sha256sum: the example of FIPS 180-2, appendix B.1
    {
      WALLHAND_KEYS: 'a:abc,b:sha256:ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
      ...SECRET,
    },
    /same key/,
  ],
];

test.each(REFUSED)('with %s the server does not start, and says why', async (_, env, sentence) => {
  const read = await readConfig(env);
  expect(read.ok).toBe(false);
  if (read.ok) return;
  expect(read.refused).toHaveLength(1);
  expect(read.refused[0]).toMatch(sentence);
  // One sentence, with an example of what would do.
  expect(read.refused[0]).toMatch(/^[^\n]*(such as|as sha256sum|as "openssl)[^\n]*\.$/);
});

test('with nothing set the server listens on this machine only, without keys', async () => {
  const read = await readConfig({});
  expect(read).toMatchObject({
    ok: true,
    config: { host: '127.0.0.1', port: 8080, data: './data', keys: [] },
  });
});

test.each(['127.0.0.1', 'localhost', '::1', '[::1]'])(
  'without keys the server may listen on %s',
  async (HOST) => {
    expect((await readConfig({ HOST })).ok).toBe(true);
  },
);

test('with keys the server may listen on any address, and a crew may have several', async () => {
  const keys = `a:one,a:two, b:${key(24)}, c:${key(64)}`;
  const read = await readConfig({ HOST: '0.0.0.0', WALLHAND_KEYS: keys, ...SECRET });
  expect(read.ok && read.config.keys.map(({ kind, crew }) => [kind, crew])).toEqual([
    ['bearer', 'a'],
    ['bearer', 'a'],
    ['webhook', 'b'],
    ['webhook', 'c'],
  ]);
  expect(JSON.stringify(read)).not.toContain('"one"');
});

test('workspaces may be given to crews before their door is there', async () => {
  const WALLHAND_CREWS = 'slack/T0123AB=harbour, discord/81384788765712384=hill';
  expect((await readConfig({ WALLHAND_CREWS })).ok).toBe(true);
});

test('a short secret is used, and remarked on', async () => {
  const read = await readConfig({ WALLHAND_SECRET: 'short' });
  expect(read.ok && read.config.notes.join()).toMatch(/under 16 characters/);
});

test('what else is in the environment is nobody’s business, bindings of an engine too', async () => {
  expect((await readConfig({ PATH: '/bin', CREW: { get: () => null } })).ok).toBe(true);
});
