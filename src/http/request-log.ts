import type { MiddlewareHandler } from 'hono';
import { routePath } from 'hono/route';
import type { DoorEnv } from '../doors.ts';
import type { LogLine } from './log-line.ts';
import { PROBLEM_MEDIA_TYPE } from './problem.ts';

export function requestLog(now: () => number, log: (line: LogLine) => void): MiddlewareHandler<DoorEnv> {
  return async (c, next) => {
    const began = now();
    await next();
    const ended = now();
    const admitted = c.get('admitted');
    log({
      at: new Date(began).toISOString(),
      method: c.req.method,
      route: routePath(c, -1),
      status: c.res.status,
      ms: ended - began,
      ...(admitted && { crew: admitted.crew }),
      ...(c.res.headers.get('content-type') === PROBLEM_MEDIA_TYPE && { problem: true }),
      ...(c.error && { fault: faultOf(c.error) }),
    });
  };
}

/** An error's message may quote what a person said, so only its name, its code and the frames are kept. */
function faultOf(error: Error): string {
  const frames = (error.stack ?? '').split('\n').filter((line) => line.trim().startsWith('at '));
  const code = codeOf(error) ?? codeOf(error.cause);
  return [error.name, ...(code ? [code] : []), ...frames.slice(0, 4).map((line) => line.trim())].join(' | ');
}

/** SQLite's word for its result code ("database or disk is full"), or the system's code: from a fixed list, either. */
function codeOf(error: unknown): string | null {
  if (!(error instanceof Error)) return null;
  const named = error as { errstr?: unknown; code?: unknown };
  const code = named.errstr ?? named.code;
  return typeof code === 'string' ? code : null;
}
