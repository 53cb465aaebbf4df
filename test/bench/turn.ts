import { type ChildProcess, spawn } from 'node:child_process';
import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { message, timed } from './clients.ts';
import { paired, type Row, ratioText } from './rounds.ts';

/** One turn through HTTP, signature, machine and a durable commit, against the floor at the same number of clients. */
const OURS = 18181;
const FLOOR = 18182;
const CLIENTS: [clients: number, turnsEach: number, aim: string][] = [
  [1, 160, 'at most 1.5'],
  [8, 48, 'under 1'],
  [64, 16, 'under 1'],
];

/** A server runs for weeks, so both sides are timed once their code is compiled: ours is at rest after so many turns. */
const WARM_UP_TURNS = 4000;

export async function turnBench(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'wallhand-bench-'));
  const secret = `whsec_${randomBytes(24).toString('base64')}`;
  const floor = start(['test/bench/floor.ts', String(FLOOR), join(folder, 'floor.db'), secret], {});
  const ours = start(['src/server.ts'], {
    PORT: String(OURS),
    WALLHAND_DATA: folder,
    WALLHAND_KEYS: `bench:${secret}`,
    WALLHAND_SECRET: randomBytes(24).toString('base64'),
  });
  try {
    await Promise.all([
      up(floor, `http://127.0.0.1:${FLOOR}/`),
      up(ours, `http://127.0.0.1:${OURS}/healthz`),
    ]);
    const rows: Row[] = [];
    let run = 0;
    for (const [clients, turns, aim] of CLIENTS) {
      const send = (url: string) => (): Promise<number> => {
        run += 1;
        const perClient = Array.from({ length: clients }, (_, client) =>
          Array.from({ length: turns }, (__, n) => message(secret, `c${clients}-${client}`, n, `r${run}`)),
        );
        return timed(url, perClient);
      };
      const own = send(`http://127.0.0.1:${OURS}/v1/messages?crew=bench`);
      const bare = send(`http://127.0.0.1:${FLOOR}/v1/messages`);
      for (let done = 0; done < WARM_UP_TURNS; done += clients * turns) {
        await own();
        await bare();
      }
      const result = await paired(own, bare);
      const each = (result.oursMs / (clients * turns)).toFixed(2);
      rows.push({
        bench: `turn, ${clients} client${clients > 1 ? 's' : ''}`,
        measured: `${each} ms a turn`,
        ratio: ratioText(result),
        aim: `${aim} times the floor`,
      });
    }
    return rows;
  } finally {
    await Promise.all([down(ours), down(floor)]);
    rmSync(folder, { recursive: true, force: true });
  }
}

function start(args: string[], env: Record<string, string>): ChildProcess {
  return spawn(process.execPath, args, {
    env: { ...process.env, ...env },
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}

async function up(server: ChildProcess, url: string): Promise<void> {
  for (let tries = 0; tries < 100; tries += 1) {
    if (server.exitCode !== null) throw new Error(`${url} ended with ${server.exitCode}`);
    const answered = await fetch(url).then(
      () => true,
      () => false,
    );
    if (answered) return;
    await new Promise((later) => setTimeout(later, 100));
  }
  throw new Error(`${url} did not come up in 10 s`);
}

async function down(server: ChildProcess): Promise<void> {
  if (server.exitCode !== null) return;
  const gone = new Promise((done) => server.once('exit', done));
  server.kill('SIGTERM');
  await gone;
}
