import { z } from 'zod';
import { type HeldKey, heldKey, sharedBetween } from './who/keys.ts';

/** What the environment settles before anything is served. */
export type Config = {
  host: string;
  port: number;
  /** Folder of the ledgers on Node. */
  data: string;
  /** Empty: loopback only, one crew, no key. */
  keys: readonly HeldKey[];
  /** Signs links and cookies. */
  secret: string | null;
  /** Said once at the start; nothing is wrong enough to refuse. */
  notes: string[];
};

/** The crew of a server without keys. */
export const LOCAL_CREW = 'local';

/** Below this a secret can be tried out; we say so and go on, since the choice is the owner's. */
const SHORT_SECRET = 16;

const LOOPBACK_HOSTS: readonly string[] = ['127.0.0.1', 'localhost', '::1', '[::1]'];

/** Secrets of doors that open only when they are set; here only so that an empty one is refused. */
const PLATFORM_SECRETS = [
  'SLACK_SIGNING_SECRET',
  'SLACK_CLIENT_SECRET',
  'DISCORD_PUBLIC_KEY',
  'DISCORD_BOT_TOKEN',
] as const;

/** Contract, section 1: a workspace's or server's id and the crew it is. No door reads it yet; a slip is told at once. */
const PLATFORM_CREW = /^(slack|discord)\/[A-Za-z0-9]+=[a-z0-9-]{1,40}$/;
const CREWS_WANTED =
  'WALLHAND_CREWS takes slack/TEAM=crew and discord/GUILD=crew, comma-separated, such as WALLHAND_CREWS=slack/T0123=harbour; a crew is 1 to 40 of a-z, 0-9 and the hyphen.';

const isGiven = (value: string): boolean => value.trim() !== '';
const empty = (name: string, example: string): string =>
  `${name} is set but empty: give it a value such as ${name}=${example}, or unset it.`;
const given = (name: string, example: string) => z.string().trim().min(1, empty(name, example));
const listed = (name: string, example: string) =>
  z
    .string()
    .refine((value) => value.split(',').every(isGiven), empty(name, example))
    .optional();

const PORT_WANTED = 'PORT must be a whole number from 0 to 65535, such as PORT=8080.';

const environment = z.object({
  HOST: given('HOST', '127.0.0.1').default('127.0.0.1'),
  PORT: z
    .string()
    .regex(/^\d{1,5}$/, PORT_WANTED)
    .transform(Number)
    .refine((port) => port <= 65535, PORT_WANTED)
    .default(8080),
  WALLHAND_DATA: given('WALLHAND_DATA', './data').default('./data'),
  WALLHAND_KEYS: listed('WALLHAND_KEYS', 'harbour:a-long-key'),
  WALLHAND_CREWS: z
    .string()
    .refine((value) => value.split(',').every((entry) => PLATFORM_CREW.test(entry.trim())), CREWS_WANTED)
    .optional(),
  WALLHAND_SECRET: z
    .string()
    .refine(isGiven, empty('WALLHAND_SECRET', 'forty-or-so-random-letters'))
    .optional(),
  ...Object.fromEntries(PLATFORM_SECRETS.map((name) => [name, listed(name, 'as-the-platform-gives-it')])),
});

export type ConfigRead = { ok: true; config: Config } | { ok: false; refused: string[] };

/** Reads and checks the environment. Refusals are sentences for whoever starts the server, and hold no secret. */
export async function readConfig(env: Record<string, unknown>): Promise<ConfigRead> {
  const known = Object.keys(environment.shape).filter((name) => typeof env[name] === 'string');
  const read = environment.safeParse(Object.fromEntries(known.map((name) => [name, env[name]])));
  if (!read.success) return { ok: false, refused: read.error.issues.map((issue) => issue.message) };
  const { HOST: host, PORT: port, WALLHAND_DATA: data } = read.data;
  const secretSet = read.data.WALLHAND_SECRET ?? null;
  const entries = read.data.WALLHAND_KEYS?.split(',') ?? [];
  const held = await Promise.all(entries.map((entry) => heldKey(entry)));
  const refused = held.filter((each) => typeof each === 'string');
  const keys = held.filter((each) => typeof each !== 'string');
  const shared = sharedBetween(keys);
  if (shared)
    refused.push(
      `WALLHAND_KEYS: ${shared} have the same key, and each crew needs its own, such as WALLHAND_KEYS=a:one-key,b:another.`,
    );
  if (entries.length > 0 && secretSet === null)
    refused.push(
      'With WALLHAND_KEYS set, WALLHAND_SECRET is needed too, to sign the cookie of the chat page, such as WALLHAND_SECRET=forty-or-so-random-letters.',
    );
  if (entries.length === 0 && !LOOPBACK_HOSTS.includes(host))
    refused.push(
      `Without keys the server listens on this machine only, not on ${host}: set keys, such as WALLHAND_KEYS=harbour:a-long-key, or leave HOST at 127.0.0.1.`,
    );
  if (refused.length > 0) return { ok: false, refused };
  const notes = secretSet !== null && secretSet.length < SHORT_SECRET ? [SHORT_SECRET_NOTE] : [];
  return { ok: true, config: { host: bare(host), port, data, keys, secret: secretSet, notes } };
}

const SHORT_SECRET_NOTE = `WALLHAND_SECRET is under ${SHORT_SECRET} characters; a longer one is harder to guess.`;

const bare = (host: string): string => host.replace(/^\[(.*)\]$/, '$1');
