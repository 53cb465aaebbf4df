import type { Duplex } from 'node:stream';
import { PROBLEM_MEDIA_TYPE, problem } from './problem.ts';

/** What Node's parser refuses before there is a request, by its code (RFC 9110, RFC 6585). */
const REFUSALS: Partial<Record<string, [status: number, title: string]>> = {
  HPE_HEADER_OVERFLOW: [431, 'Request Header Fields Too Large'],
  ERR_HTTP_REQUEST_TIMEOUT: [408, 'Request Timeout'],
};

/** Bytes that are no HTTP request get a problem too, and the connection ends: nothing after them can be trusted. */
export function answerUnreadable(error: NodeJS.ErrnoException, socket: Duplex): void {
  if (error.code === 'ECONNRESET' || !socket.writable) {
    socket.destroy();
    return;
  }
  const [status, title] = REFUSALS[error.code ?? ''] ?? [400, 'Bad Request'];
  const body = JSON.stringify({ type: 'about:blank', title, status });
  const head = [
    `HTTP/1.1 ${status} ${title}`,
    `Content-Type: ${PROBLEM_MEDIA_TYPE}`,
    `Content-Length: ${body.length}`,
    'Connection: close',
  ];
  socket.end(`${head.join('\r\n')}\r\n\r\n${body}`);
}

/** A request whose address can't be made of its path and its Host header. */
export function unreadableAddress(): Response {
  return problem(
    'wrong-host',
    'The address of this request can’t be read: see its path and its Host header.',
  );
}
