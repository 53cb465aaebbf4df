import { bytesOfBase64, hmacSha256, sameDigest } from './digest.ts';
import type { HeldKey } from './keys.ts';

/** Standard Webhooks 1.0.0: how far a timestamp may lie from our clock, either way. */
const TOLERANCE_S = 300;
/** A header may list several signatures while a key is changed; more than this is not a key change. */
const SIGNATURES_READ = 16;

export type Signed = { id: string; timestamp: string; signatures: string };

/** The three headers; null when any is missing. `.` in an id would let id and timestamp be cut elsewhere. */
export function signedHeaders(headers: Headers): Signed | null {
  const id = headers.get('webhook-id');
  const timestamp = headers.get('webhook-timestamp');
  const signatures = headers.get('webhook-signature');
  if (!id || id.includes('.') || !timestamp || !/^\d{1,12}$/.test(timestamp) || !signatures) return null;
  return { id, timestamp, signatures };
}

/**
 * True when one of the `v1` signatures is HMAC-SHA256(secret, id.timestamp.body) under one of the crew's
 * secrets and the timestamp is within 300 s of `nowMs`. Other versions (`v1a`, `v2`) are passed over.
 */
export async function isSignedBy(
  keys: readonly HeldKey[],
  crew: string,
  signed: Signed,
  body: Uint8Array,
  nowMs: number,
): Promise<boolean> {
  if (Math.abs(Math.floor(nowMs / 1000) - Number(signed.timestamp)) > TOLERANCE_S) return false;
  const head = new TextEncoder().encode(`${signed.id}.${signed.timestamp}.`);
  const content = new Uint8Array(head.byteLength + body.byteLength);
  content.set(head);
  content.set(body, head.byteLength);
  const given = signed.signatures.split(' ').slice(0, SIGNATURES_READ).flatMap(versionOne);
  let matches = false;
  for (const key of keys) {
    if (key.kind !== 'webhook' || key.crew !== crew) continue;
    const expected = await hmacSha256(key.secret, content);
    for (const signature of given) if (sameDigest(expected, signature)) matches = true;
  }
  return matches;
}

function versionOne(listed: string): Uint8Array[] {
  if (!listed.startsWith('v1,')) return [];
  const bytes = bytesOfBase64(listed.slice('v1,'.length));
  return bytes ? [bytes] : [];
}
