import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { type Row, spreadOf } from './rounds.ts';

/** Workers' limits for a compressed bundle (free plan) and for start-up. From memory, not read. */
const FREE_BUNDLE_BYTES = 3 * 1024 * 1024;
const START_UP_MS = 1000;
const START_UPS = 3;

/** The Worker's bundle, compressed, and the processor time of its start-up in local workerd. */
export function sizeBench(): Row[] {
  const folder = mkdtempSync(join(tmpdir(), 'wallhand-size-'));
  try {
    wrangler('deploy', '--dry-run', '--outdir', folder);
    const scripts = readdirSync(folder).filter((name) => /\.(?:js|mjs|wasm|ttf)$/.test(name));
    if (scripts.length === 0) throw new Error('the dry run wrote no script');
    const zipped = scripts.reduce(
      (total, name) => total + gzipSync(readFileSync(join(folder, name))).length,
      0,
    );
    const starts = spreadOf(
      Array.from({ length: START_UPS }, () => startUp(join(folder, 'start.cpuprofile'))),
    );
    return [
      {
        bench: 'size, the Worker compressed',
        measured: `${(zipped / 1024).toFixed(0)} KiB`,
        ratio: `${(zipped / FREE_BUNDLE_BYTES).toFixed(2)} of the limit`,
        aim: 'under 1',
      },
      {
        bench: 'size, the Worker’s start-up, processor time',
        measured: `${starts.median.toFixed(0)} ms (${starts.low.toFixed(0)} to ${starts.high.toFixed(0)})`,
        ratio: `${(starts.median / START_UP_MS).toFixed(2)} of the limit`,
        aim: 'under 1',
      },
    ];
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

type Profile = {
  nodes: { id: number; callFrame: { functionName: string } }[];
  samples: number[];
  timeDeltas: number[];
};

/** Milliseconds of a start-up in which something ran, by the processor profile of local workerd. */
function startUp(file: string): number {
  wrangler('check', 'startup', '--outfile', file);
  const profile = JSON.parse(readFileSync(file, 'utf8')) as Profile;
  const idle = new Set(
    profile.nodes.filter(({ callFrame }) => callFrame.functionName === '(idle)').map(({ id }) => id),
  );
  const busy = profile.samples.reduce(
    (total, node, at) => (idle.has(node) ? total : total + (profile.timeDeltas[at] ?? 0)),
    0,
  );
  return busy / 1000;
}

function wrangler(...args: string[]): void {
  const { status, stdout, stderr } = spawnSync('wrangler', args, {
    encoding: 'utf8',
    env: { ...process.env, WRANGLER_SEND_METRICS: 'false', CI: 'true' },
  });
  if (status !== 0) throw new Error(`wrangler ${args.join(' ')}: ${stderr || stdout}`);
}
