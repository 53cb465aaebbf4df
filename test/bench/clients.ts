import { createHmac } from 'node:crypto';
import { Agent, request } from 'node:http';

/** Signed messages made before the clock starts, sent over kept-alive connections by so many clients at once. */
export type Signed = { body: string; headers: Record<string, string | number> };

/** What an apprentice types, a job from nothing to a plan and over again. Invented. */
export const SCRIPT = [
  'hanging a 24 kg mirror 840 x 1120 on a brick wall',
  'australia, 2010, I own it',
  '12 mm plaster',
  'wall is 2.7 m wide',
  'two rings 95 in and 240 down',
  'centred',
  'bottom 900 off the floor',
  'start over',
];

/** The `n`th message of one client's conversation, signed by Standard Webhooks. */
export function message(secret: string, conversation: string, n: number, run: string): Signed {
  const id = `${run}-${conversation}-${n}`;
  const timestamp = Math.floor(Date.now() / 1000);
  const body = JSON.stringify({
    conversation,
    author: { id: 'u1', role: 'apprentice' },
    text: SCRIPT[n % SCRIPT.length],
  });
  const key = Buffer.from(secret.replace('whsec_', ''), 'base64');
  const signature = createHmac('sha256', key).update(`${id}.${timestamp}.${body}`).digest('base64');
  return {
    body,
    headers: {
      'content-type': 'application/json',
      'content-length': Buffer.byteLength(body),
      'webhook-id': id,
      'webhook-timestamp': String(timestamp),
      'webhook-signature': `v1,${signature}`,
    },
  };
}

/** Sends each client's messages one after the other, all clients at once; milliseconds for the lot. */
export async function timed(url: string, perClient: readonly (readonly Signed[])[]): Promise<number> {
  const agent = new Agent({ keepAlive: true, maxSockets: perClient.length });
  const started = performance.now();
  await Promise.all(
    perClient.map(async (messages) => {
      for (const each of messages) await post(url, agent, each);
    }),
  );
  const took = performance.now() - started;
  agent.destroy();
  return took;
}

function post(url: string, agent: Agent, { body, headers }: Signed): Promise<void> {
  return new Promise((done, fail) => {
    const sent = request(url, { method: 'POST', agent, headers }, (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.on('end', () =>
        response.statusCode === 200
          ? done()
          : fail(new Error(`${response.statusCode} ${Buffer.concat(chunks)}`)),
      );
    });
    sent.on('error', fail);
    sent.end(body);
  });
}
