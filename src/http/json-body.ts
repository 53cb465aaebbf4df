import type { Context } from 'hono';
import type { z } from 'zod';
import type { DoorEnv } from '../doors.ts';
import { refusalOf, sentenceOf } from '../schema/refusal.ts';
import { BODY_LIMIT_BYTES, bodyWithin } from './limits.ts';
import { problem } from './problem.ts';

/** `application/json`, and no other character set than the one JSON has (RFC 8259). */
const JSON_TYPE = /^application\/json\s*(;\s*charset\s*=\s*"?utf-8"?\s*)?$/i;

const strictUtf8 = new TextDecoder('utf-8', { fatal: true });

/** The body as the schema reads it, or the problem to answer with. */
export async function jsonBody<S extends z.ZodType>(
  c: Context<DoorEnv>,
  schema: S,
): Promise<z.output<S> | Response> {
  if (!JSON_TYPE.test(c.req.header('content-type') ?? '') || c.req.header('content-encoding'))
    return problem('not-json', 'Send application/json in UTF-8, not compressed.');
  const bytes = c.get('admitted').body ?? (await bodyWithin(c.req.raw, BODY_LIMIT_BYTES));
  if (bytes === null || bytes.byteLength > BODY_LIMIT_BYTES)
    return problem('too-large', `A body may weigh ${BODY_LIMIT_BYTES} bytes at most.`);
  const body = parsed(bytes);
  if (body === undefined) return problem('bad-json', 'The body is not JSON in UTF-8.');
  const read = schema.safeParse(body);
  if (read.success) return read.data;
  const errors = refusalOf(schema, read.error.issues, body);
  return problem('bad-field', sentenceOf(errors), { errors });
}

function parsed(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(strictUtf8.decode(bytes));
  } catch {
    return undefined;
  }
}
