import { bytesOfBase64, bytesOfHex, hexOf, sameDigest, sha256 } from './digest.ts';

/** A key as it is held: a bearer key only as its hash, a webhook secret (which must sign) as it is. */
export type HeldKey =
  | { kind: 'bearer'; crew: string; digest: Uint8Array }
  | { kind: 'webhook'; crew: string; secret: Uint8Array };

/** Contract, section 1. */
const CREW_NAME = /^[a-z0-9-]{1,40}$/;

/** Standard Webhooks 1.0.0: 24 to 64 bytes. */
const SECRET_BYTES = { least: 24, most: 64 };
const HASHED = /^sha256:([0-9a-f]{64})$/i;

/** Reads one `crew:key`; a sentence when it can't be one. The key itself is never part of the sentence. */
export async function heldKey(entry: string): Promise<HeldKey | string> {
  const colon = entry.indexOf(':');
  const crew = entry.slice(0, Math.max(colon, 0)).trim();
  const key = entry.slice(colon + 1).trim();
  if (colon < 0 || !CREW_NAME.test(crew))
    return 'WALLHAND_KEYS takes crew:key, comma-separated, such as WALLHAND_KEYS=harbour:a-long-key; a crew is 1 to 40 of a-z, 0-9 and the hyphen.';
  if (key === '')
    return `WALLHAND_KEYS gives crew ${crew} an empty key: it takes crew:key, such as ${crew}:a-long-key.`;
  if (/\s/.test(key))
    return `WALLHAND_KEYS: the key of crew ${crew} has a space in it, which no header can carry: leave it out, such as ${crew}:a-long-key.`;
  if (key.startsWith('whsec_')) {
    const secret = bytesOfBase64(key.slice('whsec_'.length));
    if (!secret || secret.byteLength < SECRET_BYTES.least || secret.byteLength > SECRET_BYTES.most)
      return `WALLHAND_KEYS: the whsec_ key of crew ${crew} must be base64 of 24 to 64 bytes, as "openssl rand -base64 32" gives it.`;
    return { kind: 'webhook', crew, secret };
  }
  const hashed = HASHED.exec(key)?.[1];
  if (!hashed && key.startsWith('sha256:'))
    return `WALLHAND_KEYS: the sha256: key of crew ${crew} must be 64 hexadecimal digits, as sha256sum prints them.`;
  return { kind: 'bearer', crew, digest: hashed ? bytesOfHex(hashed.toLowerCase()) : await sha256(key) };
}

/** Names the crews that share a key, which would let one open the other's ledger; null when none do. */
export function sharedBetween(keys: readonly HeldKey[]): string | null {
  const owner = new Map<string, string>();
  for (const key of keys) {
    const print = hexOf(key.kind === 'bearer' ? key.digest : key.secret);
    const other = owner.get(print);
    if (other !== undefined && other !== key.crew) return `${other} and ${key.crew}`;
    owner.set(print, key.crew);
  }
  return null;
}

/** The bearer key that a presented token is; every key is compared, so that time tells nothing. */
export async function bearerOf(
  keys: readonly HeldKey[],
  token: string,
): Promise<{ crew: string; digest: Uint8Array } | null> {
  const presented = await sha256(token);
  let found: { crew: string; digest: Uint8Array } | null = null;
  for (const key of keys) if (key.kind === 'bearer' && sameDigest(key.digest, presented)) found ??= key;
  return found;
}

/** The token of an `Authorization: Bearer` header (RFC 6750); null when it is anything else. */
export function bearerToken(header: string): string | null {
  return /^Bearer +(\S+) *$/i.exec(header)?.[1] ?? null;
}
