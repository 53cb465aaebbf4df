import { createServer, type Server } from 'node:http';
import { getRequestListener } from '@hono/node-server';
import { checkOf } from '../core/check.ts';
import { planOfAny } from '../core/plan-of-pieces.ts';
import { begin, resume, step } from '../flows/step.ts';
import { appOf } from './app.ts';
import { pageAssets } from './chat/page-assets.ts';
import { type Config, LOCAL_CREW, readConfig } from './config.ts';
import { openCrews } from './crews.ts';
import { logLines } from './http/log-lines.ts';
import { answerUnreadable, unreadableAddress } from './http/unreadable.ts';

/** After this, whoever is still in the middle of sending is let go: a stop should not hang on a sleeping phone. */
const LAST_ANSWERS_MS = 2000;

/** How often connections that have had their last answer are let go meanwhile. */
const LET_GO_MS = 50;

const read = await readConfig(process.env);
if (read.ok) start(read.config);
else refuse(read.refused);

function start(config: Config): void {
  const crews = openCrews(config.data, { begin, resume, step });
  const app = appOf({
    config,
    crewOf: crews.crewOf,
    planOf: planOfAny,
    checkOf,
    now: Date.now,
    log: logLines((text) => process.stdout.write(text)),
    asset: pageAssets(),
  });
  const { host: hostname, port } = config;
  const answer = getRequestListener(app.fetch, { hostname, errorHandler: unreadableAddress });
  const server = createServer((request, response) => {
    // Someone who talks without a pause would else keep a server that is told to stop.
    if (!server.listening) response.shouldKeepAlive = false;
    return answer(request, response);
  });
  server.on('clientError', answerUnreadable);
  server.on('error', (error) => refuse([whyNotListening(error, config)]));
  server.listen(port, hostname, () => {
    // After the port is ours, so that a start that fails on it leaves no ledger; and before the first
    // message, so that a ledger that can't be opened is said at once.
    try {
      for (const crew of crewsOf(config)) crews.crewOf(crew);
    } catch (error) {
      crews.close();
      refuse([error instanceof Error ? error.message : String(error)]);
    }
    for (const note of config.notes) console.error(note);
    const name = hostname.includes(':') ? `[${hostname}]` : hostname;
    console.log(`wallhand: the chat page is at http://${name}:${portOf(server)}`);
  });
  for (const signal of ['SIGTERM', 'SIGINT'] as const) process.once(signal, () => stop(server, crews.close));
}

/** PORT 0 takes any that is free. */
function portOf(server: Server): number {
  const address = server.address();
  return address === null || typeof address === 'string' ? 0 : address.port;
}

/** Answers who is waiting, takes nobody new, closes the ledgers. */
function stop(server: Server, closeLedgers: () => void): void {
  setTimeout(() => server.closeAllConnections(), LAST_ANSWERS_MS);
  setInterval(() => server.closeIdleConnections(), LET_GO_MS);
  server.close(() => {
    closeLedgers();
    process.exit(0);
  });
}

function crewsOf({ keys }: Config): Set<string> {
  return new Set(keys.length === 0 ? [LOCAL_CREW] : keys.map((key) => key.crew));
}

function whyNotListening(error: NodeJS.ErrnoException, { host, port }: Config): string {
  if (error.code === 'EADDRINUSE')
    return `Port ${port} is in use: if this server runs already, use that one; else take another; PORT=0 takes any that is free.`;
  if (error.code === 'EACCES')
    return `This user may not listen on port ${port}: take one from 1024 up, such as PORT=8080.`;
  if (error.code === 'EADDRNOTAVAIL' || error.code === 'ENOTFOUND' || error.code === 'EAI_AGAIN')
    return `HOST ${host} is no address of this machine: give one that is, such as HOST=127.0.0.1.`;
  return `The server could not listen on ${host}, port ${port}: ${error.message}.`;
}

function refuse(sentences: readonly string[]): never {
  for (const sentence of sentences) console.error(sentence);
  process.exit(1);
}
