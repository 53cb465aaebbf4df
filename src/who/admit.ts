import type { Context, MiddlewareHandler } from 'hono';
import { getCookie } from 'hono/cookie';
import { LOCAL_CREW } from '../config.ts';
import type { Admitted, DoorEnv, Doors } from '../doors.ts';
import { bodyWithin, SIGNED_BODY_CEILING_BYTES } from '../http/limits.ts';
import { problem } from '../http/problem.ts';
import { bearerOf, bearerToken } from './keys.ts';
import { isOwnOrigin } from './local-only.ts';
import { COOKIE, crewOfCookie } from './session-cookie.ts';
import { isSignedBy, signedHeaders } from './webhook-signature.ts';

type Given = Pick<Doors, 'config' | 'now'>;

/**
 * Finds the one crew a request may speak for: by signature, by bearer key, by the chat page's cookie; on a
 * server without keys there is only `local`. Runs before the body is judged: 401 whatever the body.
 */
export function admit(given: Given): MiddlewareHandler<DoorEnv> {
  return async (c, next) => {
    const admitted = await admittedOf(c, given);
    if (!admitted) return unauthorised();
    const named = c.req.query('crew');
    if (named !== undefined && named !== admitted.crew) return unauthorised();
    c.set('admitted', admitted);
    return next();
  };
}

async function admittedOf(c: Context<DoorEnv>, given: Given): Promise<Admitted | null> {
  const plain = { signedId: null, body: undefined };
  if (given.config.keys.length === 0) return { crew: LOCAL_CREW, ...plain };
  const authorization = c.req.header('authorization');
  const byKey = authorization === undefined ? undefined : await crewByKey(given, authorization);
  if (byKey === null) return null;
  if (c.req.header('webhook-signature') !== undefined) {
    const signed = await bySignature(c, given);
    return signed && (byKey === undefined || byKey === signed.crew) ? signed : null;
  }
  const crew = byKey ?? (await crewByCookie(c, given));
  return crew === null ? null : { crew, ...plain };
}

async function crewByKey(given: Given, authorization: string): Promise<string | null> {
  const token = bearerToken(authorization);
  return token === null ? null : ((await bearerOf(given.config.keys, token))?.crew ?? null);
}

async function bySignature(c: Context<DoorEnv>, given: Given): Promise<Admitted | null> {
  const signed = signedHeaders(c.req.raw.headers);
  const crew = c.req.query('crew');
  if (!signed || crew === undefined) return null;
  const body = await bodyWithin(c.req.raw, SIGNED_BODY_CEILING_BYTES);
  if (body === null) return null;
  const valid = await isSignedBy(given.config.keys, crew, signed, body, given.now());
  return valid ? { crew, signedId: signed.id, body } : null;
}

/** A cookie comes by itself with whatever another site makes a browser send, so the origin must be ours. */
async function crewByCookie(c: Context<DoorEnv>, { config, now }: Given): Promise<string | null> {
  const cookie = getCookie(c, COOKIE);
  if (cookie === undefined || config.secret === null) return null;
  const reads = c.req.method === 'GET' || c.req.method === 'HEAD';
  const origin = c.req.header('origin');
  if (origin === undefined ? !reads : !isOwnOrigin(c.req.raw, origin)) return null;
  return crewOfCookie(config.secret, config.keys, cookie, now());
}

function unauthorised(): Response {
  const detail =
    'Send a key of this crew as "Authorization: Bearer …", or sign by Standard Webhooks and name the crew in ?crew=.';
  return problem('unauthorised', detail, { headers: { 'www-authenticate': 'Bearer realm="wallhand"' } });
}
