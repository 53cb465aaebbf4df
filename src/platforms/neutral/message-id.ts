import { messageId } from '../../schema/message.ts';

/**
 * The id that makes a message idempotent: the signed `webhook-id` where there is a signature, else the
 * body's, else the Idempotency-Key header. Null when there is none, or when a header's can't be one.
 */
export function idOf(
  signedId: string | null,
  inBody: string | undefined,
  header: string | undefined,
): string | null {
  if (signedId === null && inBody !== undefined) return inBody;
  const read = messageId.safeParse(signedId ?? (header === undefined ? undefined : unquoted(header)));
  return read.success ? read.data : null;
}

/** An RFC 8941 string in quotes; bare too, since that is what people type at a prompt. */
function unquoted(header: string): string {
  const quoted = /^"((?:[^"\\]|\\["\\])*)"$/.exec(header.trim())?.[1];
  return quoted === undefined ? header.trim() : quoted.replace(/\\(["\\])/g, '$1');
}
