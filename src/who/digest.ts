import type { KeyObject } from 'node:crypto';

const utf8 = new TextEncoder();

/** Web Crypto hands each signature to a thread and waits: on Node six times the cost of signing here (measured). */
const node = globalThis.process?.getBuiltinModule?.('node:crypto');

/** SHA-256 of text (UTF-8). */
export async function sha256(text: string): Promise<Uint8Array> {
  if (node) return new Uint8Array(node.createHash('sha256').update(text).digest());
  return new Uint8Array(await crypto.subtle.digest('SHA-256', utf8.encode(text)));
}

const prepared = new WeakMap<Uint8Array, KeyObject>();
const imported = new WeakMap<Uint8Array, Promise<CryptoKey>>();

/** HMAC-SHA256 (RFC 2104) of bytes under a key. A key that is held is made ready once: most of the cost. */
export async function hmacSha256(key: Uint8Array, message: Uint8Array): Promise<Uint8Array> {
  if (node) {
    const ready = prepared.get(key) ?? node.createSecretKey(key);
    prepared.set(key, ready);
    return new Uint8Array(node.createHmac('sha256', ready).update(message).digest());
  }
  const held = imported.get(key) ?? importKey(key);
  imported.set(key, held);
  return new Uint8Array(await crypto.subtle.sign('HMAC', await held, new Uint8Array(message)));
}

function importKey(key: Uint8Array): Promise<CryptoKey> {
  const algorithm = { name: 'HMAC', hash: 'SHA-256' };
  return crypto.subtle.importKey('raw', new Uint8Array(key), algorithm, false, ['sign']);
}

/** Compares digests of one length without telling by its time where they differ. */
export function sameDigest(one: Uint8Array, other: Uint8Array): boolean {
  if (one.byteLength !== other.byteLength) return false;
  let differing = 0;
  for (let at = 0; at < one.byteLength; at += 1) differing |= (one[at] ?? 0) ^ (other[at] ?? 0);
  return differing === 0;
}

export const hexOf = (bytes: Uint8Array): string =>
  Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');

export const bytesOfHex = (hex: string): Uint8Array =>
  Uint8Array.from(hex.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16));

/** Bytes of standard base64; null when it is not base64. */
export function bytesOfBase64(text: string): Uint8Array | null {
  try {
    return Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
  } catch {
    return null;
  }
}

export const base64Of = (bytes: Uint8Array): string => btoa(String.fromCharCode(...bytes));
