import type { LogLine } from './log-line.ts';

/**
 * Writes log lines as JSON, gathered over one pass of the event loop: one write a line would cost a turn
 * more than it tells. A killed process loses the last pass of its log, never of its ledger.
 */
export function logLines(write: (text: string) => void): (line: LogLine) => void {
  let waiting = '';
  return (line) => {
    if (waiting === '') setImmediate(flush);
    waiting += `${JSON.stringify(line)}\n`;
  };
  function flush(): void {
    write(waiting);
    waiting = '';
  }
}
