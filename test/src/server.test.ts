import { mkdtempSync, rmSync } from 'node:fs';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { freePort } from './crew/running-server.ts';
import { type Started, started } from './started.ts';

const SERVER = 'src/server.ts';
const HELLO = { id: 'm1', conversation: 'c', author: { id: 'u7' }, text: 'a 24 kg mirror on brick' };

let data: string;
let running: Started[];

beforeEach(() => {
  data = mkdtempSync(join(tmpdir(), 'wallhand-server-'));
  running = [];
});

afterEach(async () => {
  for (const { child } of running) child.kill('SIGKILL');
  await Promise.all(running.map(({ ended }) => ended));
  rmSync(data, { recursive: true, force: true });
});

function server(env: Record<string, string>): Started {
  const one = started(SERVER, { WALLHAND_DATA: data, ...env });
  running.push(one);
  return one;
}

const post = (url: string, body: unknown) =>
  fetch(`${url}/v1/messages`, {
    method: 'POST',
    headers: { 'content-type': 'application/json' },
    body: JSON.stringify(body),
  });

/** Bytes as they are on a socket, and all that comes back until it closes. */
async function sent(port: number, bytes: string): Promise<string> {
  const socket = connect(port, '127.0.0.1').setEncoding('utf8');
  socket.write(bytes);
  let answer = '';
  for await (const part of socket) answer += part;
  return answer;
}

test('the server prints where the chat page is, answers there, and ends quietly when told to', async () => {
  const port = await freePort();
  const one = server({ PORT: String(port) });
  const url = `http://127.0.0.1:${port}`;
  await one.wrote(new RegExp(`the chat page is at ${url}`));
  expect(await (await fetch(url)).text()).toContain('<title>wallhand</title>');
  const answer = await post(url, HELLO);
  expect(await answer.json()).toMatchObject({ turn: 1, known: { piece: { massKg: 24 } } });
  one.child.kill('SIGTERM');
  expect(await one.ended).toBe(0);
  const lines = one
    .out()
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => JSON.parse(line));
  expect(lines.map(({ method, route, status }) => [method, route, status])).toEqual([
    ['GET', '/', 200],
    ['POST', '/v1/messages', 200],
  ]);
  expect(one.out()).not.toContain('mirror');
}, 30_000);

test('a message that was answered is answered the same after the server was stopped and started', async () => {
  const port = await freePort();
  const url = `http://127.0.0.1:${port}`;
  const first = server({ PORT: String(port) });
  await first.wrote(/chat page/);
  const before = await (await post(url, HELLO)).text();
  first.child.kill('SIGTERM');
  await first.ended;
  const second = server({ PORT: String(port) });
  await second.wrote(/chat page/);
  expect(await (await post(url, HELLO)).text()).toBe(before);
}, 30_000);

test.each([
  ['no HTTP at all', 'asdf\r\n\r\n', 400],
  [
    'a header of 20,000 letters',
    `GET / HTTP/1.1\r\nHost: 127.0.0.1\r\nX: ${'a'.repeat(20_000)}\r\n\r\n`,
    431,
  ],
  ['a Host with a user in it', 'GET / HTTP/1.1\r\nHost: a@127.0.0.1\r\nConnection: close\r\n\r\n', 403],
])(
  '%s is a problem too, and the server goes on',
  async (_, bytes, status) => {
    const port = await freePort();
    await server({ PORT: String(port) }).wrote(/chat page/);
    const answer = await sent(port, bytes);
    expect(answer).toMatch(new RegExp(`^HTTP/1.1 ${status} `));
    expect(answer.toLowerCase()).toContain('content-type: application/problem+json');
    expect((await fetch(`http://127.0.0.1:${port}/healthz`)).status).toBe(200);
  },
  30_000,
);
