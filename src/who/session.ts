import type { Context } from 'hono';
import { getCookie, setCookie } from 'hono/cookie';
import { LOCAL_CREW } from '../config.ts';
import type { DoorEnv, Doors } from '../doors.ts';
import { BODY_LIMIT_BYTES, bodyWithin } from '../http/limits.ts';
import { problem } from '../http/problem.ts';
import { bearerOf } from './keys.ts';
import { isOwnOrigin } from './local-only.ts';
import { COOKIE, COOKIE_AGE_S, cookieFor, crewOfCookie } from './session-cookie.ts';

type Given = Pick<Doors, 'config' | 'now'>;

/** The crew whose page this browser may see; null when it must give a key first. */
export async function crewOfPage(c: Context<DoorEnv>, { config, now }: Given): Promise<string | null> {
  if (config.keys.length === 0) return LOCAL_CREW;
  const cookie = getCookie(c, COOKIE);
  if (cookie === undefined || config.secret === null) return null;
  return crewOfCookie(config.secret, config.keys, cookie, now());
}

/** Takes the key a person typed into the page and keeps it as a cookie; null when it opens nothing. */
export async function keepKey(c: Context<DoorEnv>, { config, now }: Given): Promise<Response | null> {
  if (config.keys.length === 0 || config.secret === null)
    return problem('not-found', 'This server has no keys, so it asks for none.');
  const origin = c.req.header('origin');
  if (origin !== undefined && !isOwnOrigin(c.req.raw, origin))
    return problem('wrong-host', 'A key is taken only from this server’s own page.');
  const bytes = await bodyWithin(c.req.raw, BODY_LIMIT_BYTES);
  if (bytes === null) return problem('too-large', `A body may weigh ${BODY_LIMIT_BYTES} bytes at most.`);
  const key = new URLSearchParams(new TextDecoder().decode(bytes)).get('key')?.trim() ?? '';
  const held = await bearerOf(config.keys, key);
  if (!held) return null;
  setCookie(c, COOKIE, await cookieFor(config.secret, held, now()), {
    httpOnly: true,
    sameSite: 'Strict',
    path: '/',
    maxAge: COOKIE_AGE_S,
    secure: cameOverTls(c),
  });
  return c.redirect('/', 303);
}

/** A proxy that ends TLS says so; a client that lies about it only hardens its own cookie. */
function cameOverTls(c: Context<DoorEnv>): boolean {
  return new URL(c.req.url).protocol === 'https:' || c.req.header('x-forwarded-proto') === 'https';
}
