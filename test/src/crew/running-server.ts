import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { createServer } from 'node:net';
import { join } from 'node:path';

/** A real server in a process of its own, so that it can be killed between any two instructions. */
export type Running = { url: string; kill: (signal?: 'SIGKILL' | 'SIGTERM') => Promise<void> };

/** A port that was free a moment ago. */
export const freePort = async (): Promise<number> => {
  const server = createServer().listen(0, '127.0.0.1');
  await once(server, 'listening');
  const address = server.address();
  server.close();
  await once(server, 'close');
  if (address === null || typeof address === 'string') throw new Error('no port');
  return address.port;
};

const answers = async (url: string, child: ChildProcess): Promise<void> => {
  for (;;) {
    if (child.exitCode !== null) throw new Error(`the server ended with ${child.exitCode}`);
    try {
      await (await fetch(`${url}/healthz`)).arrayBuffer();
      return;
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 25));
    }
  }
};

/** Starts the server over the ledgers in `data` and waits until it answers. */
export const startServer = async (data: string, port: number): Promise<Running> => {
  const child = spawn(process.execPath, ['src/server.ts'], {
    env: {
      PATH: process.env.PATH ?? '',
      PORT: String(port),
      WALLHAND_DATA: data,
      // A restart takes a quarter of the time once a server that was stopped has left its compiled modules.
      NODE_COMPILE_CACHE: join(data, 'compiled'),
    },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  let errors = '';
  child.stderr?.on('data', (chunk) => {
    errors += chunk;
  });
  const url = `http://127.0.0.1:${port}`;
  try {
    await answers(url, child);
  } catch (error) {
    throw new Error(`${error}: ${errors}`);
  }
  return {
    url,
    kill: async (signal = 'SIGKILL') => {
      child.kill(signal);
      if (child.exitCode === null && child.signalCode === null) await once(child, 'exit');
    },
  };
};
