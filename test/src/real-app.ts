import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { checkOf } from '../../core/check.ts';
import { planOfAny } from '../../core/plan-of-pieces.ts';
import { begin, resume, step } from '../../flows/step.ts';
import { appOf } from '../../src/app.ts';
import { readConfig } from '../../src/config.ts';
import { openCrews } from '../../src/crews.ts';
import { answerSchema } from '../../src/schema/reply.ts';
import { posted } from './app-under-test.ts';

/** The app as the Node server has it, over ledgers in a folder of its own. */
export type RealApp = { request: (path: string, init?: RequestInit) => Promise<Response>; close: () => void };

export type Body = {
  turn: number;
  awaiting: string | null;
  known: unknown;
  plan: string | null;
  replies: ({ text: string } & { [field in 'kind' | 'id' | 'severity' | 'verdict']?: string })[];
};

export async function realApp(): Promise<RealApp> {
  const read = await readConfig({});
  if (!read.ok) throw new Error(read.refused.join(' '));
  const folder = mkdtempSync(join(tmpdir(), 'wallhand-app-'));
  const crews = openCrews(folder, { begin, resume, step });
  const { config } = read;
  const app = appOf({
    ...{ config, crewOf: crews.crewOf, planOf: planOfAny, checkOf, now: Date.now },
    log: () => {},
    asset: async () => '',
  });
  return {
    request: async (path, init) => app.request(path, init),
    close: () => {
      crews.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** One person in one conversation: every answer is checked against its description on the way. */
export function speaker(app: RealApp, conversation: string): (said: string | object) => Promise<Body> {
  let sent = 0;
  return async (said) => {
    const words = typeof said === 'string' ? { text: said } : said;
    sent += 1;
    const message = { id: `m${sent}`, conversation, author: { id: 'u7', role: 'apprentice' }, ...words };
    const response = await app.request('/v1/messages', posted(message));
    const body = await response.json();
    if (response.status !== 200) throw new Error(JSON.stringify(body));
    const issues = answerSchema.safeParse(body).error?.issues;
    if (issues) throw new Error(`not as described: ${JSON.stringify(issues)}`);
    return body;
  };
}
