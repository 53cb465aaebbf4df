import { base64Of, hexOf, hmacSha256, sameDigest } from './digest.ts';
import type { HeldKey } from './keys.ts';

/** The cookie that keeps one crew's key after it was typed once; it holds the crew, never the key. */
export const COOKIE = 'wallhand';

/** Half a year: a phone on site should not ask again mid-season. */
export const COOKIE_AGE_S = 180 * 24 * 60 * 60;

/** Enough of the key's hash to tell that this key is still among the keys: a withdrawn key ends its cookies. */
const PRINT_DIGITS = 16;

export async function cookieFor(
  secret: string,
  key: { crew: string; digest: Uint8Array },
  nowMs: number,
): Promise<string> {
  const expires = Math.floor(nowMs / 1000) + COOKIE_AGE_S;
  const said = `${key.crew}.${hexOf(key.digest).slice(0, PRINT_DIGITS)}.${expires}`;
  return `${said}.${await signature(secret, said)}`;
}

/** The crew a cookie opens; null when it is forged, run out, or its key was withdrawn. */
export async function crewOfCookie(
  secret: string,
  keys: readonly HeldKey[],
  cookie: string,
  nowMs: number,
): Promise<string | null> {
  const cut = cookie.lastIndexOf('.');
  const said = cookie.slice(0, Math.max(cut, 0));
  const [crew, print, expires] = said.split('.');
  const given = bytes(cookie.slice(cut + 1));
  if (!sameDigest(given, bytes(await signature(secret, said)))) return null;
  if (!crew || !(Number(expires) > nowMs / 1000)) return null;
  const still = keys.some(
    (key) => key.kind === 'bearer' && key.crew === crew && hexOf(key.digest).slice(0, PRINT_DIGITS) === print,
  );
  return still ? crew : null;
}

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

/** `cookie.` keeps this use of the secret apart from signed links. */
async function signature(secret: string, said: string): Promise<string> {
  const mac = await hmacSha256(bytes(secret), bytes(`cookie.${said}`));
  return base64Of(mac).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}
