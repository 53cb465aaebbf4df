/** Contract, section 3: the most a body may weigh, in bytes, however it is sent. */
export const BODY_LIMIT_BYTES = 64 * 1024;

/** Contract, section 3: the most a message may say, in Unicode code points. */
export const TEXT_LIMIT_CODE_POINTS = 2000;

/**
 * A signature covers the whole body, so a signed body is read past the limit to tell a forgery (401)
 * from an honest one that is too large (413). Past this nothing is read, believed or told apart: 401.
 */
export const SIGNED_BODY_CEILING_BYTES = 1024 * 1024;

/** Reads a body up to a limit in bytes, counted as they come; null when there is more. */
export async function bodyWithin(request: Request, limitBytes: number): Promise<Uint8Array | null> {
  const declared = request.headers.get('content-length');
  if (Number(declared ?? 0) > limitBytes) return null;
  // What says how long it is can be taken whole: an HTTP parser hands on no more than was declared.
  if (declared !== null) return withinLimit(new Uint8Array(await request.arrayBuffer()), limitBytes);
  if (!request.body) return new Uint8Array();
  const chunks: Uint8Array[] = [];
  let size = 0;
  const reader = request.body.getReader();
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    size += part.value.byteLength;
    if (size > limitBytes) {
      await reader.cancel();
      return null;
    }
    chunks.push(part.value);
  }
  return joined(chunks, size);
}

const withinLimit = (bytes: Uint8Array, limitBytes: number): Uint8Array | null =>
  bytes.byteLength > limitBytes ? null : bytes;

function joined(chunks: readonly Uint8Array[], size: number): Uint8Array {
  const whole = new Uint8Array(size);
  let at = 0;
  for (const chunk of chunks) {
    whole.set(chunk, at);
    at += chunk.byteLength;
  }
  return whole;
}

/** Length as a person would count it, not as UTF-16 does. */
export function codePoints(text: string): number {
  let count = 0;
  for (const _ of text) count += 1;
  return count;
}
