import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { onTestFinished } from 'vitest';

/** Bytes a unit of `ulimit -f` (POSIX, sh). */
const ULIMIT_BLOCK = 512;

/** A process of ours with what it wrote, for as long as the test that started it. */
export type Started = {
  child: ChildProcess;
  out: () => string;
  err: () => string;
  /** Resolves with the exit code. */
  ended: Promise<number | null>;
  /** Resolves once what it wrote matches. */
  wrote: (words: RegExp) => Promise<void>;
};

/** `mostBytes` is the largest file it may write: what a disk with no more room does to it, without one. */
export function started(
  file: string,
  env: Record<string, string>,
  args: string[] = [],
  mostBytes?: number,
): Started {
  const command = [process.execPath, file, ...args];
  const limited = ['sh', '-c', `ulimit -f ${(mostBytes ?? 0) / ULIMIT_BLOCK}; exec "$0" "$@"`, ...command];
  const [program = '', ...given] = mostBytes === undefined ? command : limited;
  const child = spawn(program, given, { env: { PATH: process.env.PATH ?? '', ...env } });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  let [out, err] = ['', ''];
  child.stdout?.setEncoding('utf8').on('data', (text) => {
    out += text;
  });
  child.stderr?.setEncoding('utf8').on('data', (text) => {
    err += text;
  });
  const ended = once(child, 'close').then(([code]) => (typeof code === 'number' ? code : null));
  return {
    child,
    out: () => out,
    err: () => err,
    ended,
    wrote: async (words) => {
      while (!words.test(out)) {
        if (child.exitCode !== null) throw new Error(`it ended with ${child.exitCode}: ${err}`);
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
    },
  };
}
