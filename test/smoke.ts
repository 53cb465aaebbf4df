import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A smoke run of `npm start`: the server comes up, the page is served, one turn is answered, it goes down. */
const PORT = '18080';
const base = `http://127.0.0.1:${PORT}`;
const data = mkdtempSync(join(tmpdir(), 'wallhand-smoke-'));
const server = spawn('npm', ['start'], {
  env: { ...process.env, PORT, WALLHAND_DATA: data },
  stdio: ['ignore', 'inherit', 'inherit'],
  detached: true,
});

try {
  await comesUp();
  const page = await (await fetch(`${base}/`)).text();
  if (!page.includes('<title>')) throw new Error('GET / is not a page');
  const answer = await fetch(`${base}/v1/messages`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify({
      id: 'smoke-1',
      conversation: 'smoke',
      author: { id: 'u1', role: 'apprentice' },
      text: 'hanging a 24 kg mirror on a plastered brick wall',
    }),
  });
  const turn = (await answer.json()) as {
    turn?: number;
    awaiting?: string | null;
    known?: { piece?: { massKg?: number } };
  };
  if (answer.status !== 200 || turn.turn !== 1 || turn.known?.piece?.massKg !== 24 || !turn.awaiting) {
    throw new Error(`the first turn is not answered: ${answer.status} ${JSON.stringify(turn)}`);
  }
  console.log(`smoke: the server answers and asks for ${turn.awaiting}`);
} finally {
  if (server.pid) process.kill(-server.pid, 'SIGTERM');
  await new Promise((gone) => (server.exitCode !== null ? gone(null) : server.once('exit', gone)));
  rmSync(data, { recursive: true, force: true });
}

async function comesUp(): Promise<void> {
  for (let tries = 0; tries < 150; tries += 1) {
    if (server.exitCode !== null) throw new Error(`npm start ended with ${server.exitCode}`);
    try {
      if ((await fetch(`${base}/healthz`)).ok) return;
    } catch {
      // Not listening yet: the loop tries again, and the last try throws.
    }
    await new Promise((later) => setTimeout(later, 200));
  }
  throw new Error('npm start did not listen within 30 s');
}
