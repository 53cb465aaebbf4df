import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import reference from '../fixtures/reference/dialogues.json' with { type: 'json' };
import { freePort, type Running, startServer } from '../src/crew/running-server.ts';
import { started } from '../src/started.ts';
import { launched } from './launched.ts';
import { answered, axeFindings, tapped, tapTargets, typed } from './page.ts';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');
const data = mkdtempSync(join(tmpdir(), 'wallhand-page-'));
let browser: Browser;
let server: Running;

beforeAll(async () => {
  [browser, server] = await Promise.all([launched(), startServer(data, await freePort())]);
}, 120_000);

afterAll(async () => {
  await browser?.close();
  await server?.kill();
  rmSync(data, { recursive: true, force: true });
});

/** One of the published dialogues, whose marks are worked out by hand in the row. */
const dialogue = reference.dialogues.find(({ id }) => id === 'mantel-mirror');
const answers: Record<string, string> = { ...dialogue?.answers };

const NARROW = { width: 360, height: 740 };
const DESK = { width: 1280, height: 900 };

async function opened(viewport: typeof DESK, colorScheme: 'light' | 'dark', hasTouch = false) {
  const context = await browser.newContext({ viewport, colorScheme, hasTouch, reducedMotion: 'reduce' });
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  await page.goto(server.url);
  await page.locator('#send:enabled').waitFor();
  return { context, page, complaints };
}

async function shot(page: Page, name: string): Promise<void> {
  await page.screenshot({ path: `test/browser/shots/${name}.png` });
}

async function planIsShown(page: Page, name: string): Promise<void> {
  const card = page.getByRole('article');
  await card.waitFor();
  await shot(page, `${name}-end`);
  await card.evaluate((node) => node.scrollIntoView());
  await shot(page, `${name}-plan`);
  const rows = await card.locator('tbody tr').allInnerTexts();
  const marks = rows.map((row) => row.split(/\s+/).map(Number)).map(([, left, , up]) => [left, up]);
  expect(marks).toEqual(dialogue?.expect.marks);
  expect(await card.locator('svg circle').count()).toBe(2);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(wide).toBeLessThanOrEqual(0);
}

const LOOKS: [string, typeof DESK, 'light' | 'dark'][] = [
  ['at 360 px in the dark', NARROW, 'dark'],
  ['at a desk in the light', DESK, 'light'],
];

test.each(LOOKS)(
  '%s a whole conversation is held by keyboard alone, without a complaint of axe',
  async (look, viewport, scheme) => {
    const { context, page, complaints } = await opened(viewport, scheme);
    expect(await axeFindings(page, axe)).toEqual([]);
    await page.locator('#words').focus();
    let heard = await answered(page, () => typed(page, dialogue?.open ?? ''));
    for (let turn = 0; heard.awaiting !== null && turn < 40; turn += 1) {
      if (turn === 3) await shot(page, `keyboard-${viewport.width}-asked`);
      const words = answers[heard.awaiting] ?? "don't know";
      heard = await answered(page, () => typed(page, words));
      expect(await page.evaluate(() => document.activeElement?.id), look).toBe('words');
    }
    expect(heard.plan).not.toBeNull();
    await planIsShown(page, `keyboard-${viewport.width}`);
    await page.locator('summary').first().focus();
    await page.keyboard.press('Enter');
    expect(await page.locator('details[open]').count()).toBe(1);
    expect(await axeFindings(page, axe)).toEqual([]);
    expect(complaints).toEqual([]);
    await context.close();
  },
  120_000,
);

const TAPPED: [string, typeof DESK, 'light' | 'dark'][] = [
  ['at 360 px in the light', NARROW, 'light'],
  ['at a desk in the dark', DESK, 'dark'],
];

test.each(TAPPED)(
  '%s a whole conversation is held by tapping, with a button for each choice',
  async (_, viewport, scheme) => {
    const { context, page, complaints } = await opened(viewport, scheme, true);
    const picks = ['Clay brick', 'Australia', 'Mine', 'None of these', 'Solid', 'Yes'];
    let taps = 0;
    let heard = await answered(page, () => tapped(page, dialogue?.open ?? ''));
    for (let turn = 0; heard.awaiting !== null && turn < 40; turn += 1) {
      const pick = heard.choices.find(({ label }) => picks.some((each) => label.startsWith(each)));
      const small = (await tapTargets(page)).filter(({ least }) => least < 44);
      expect(small, 'what is too small for a thumb').toEqual([]);
      if (pick) {
        taps += 1;
        heard = await answered(page, () => page.getByRole('button', { name: pick.label, exact: true }).tap());
      } else {
        const words = answers[heard.awaiting] ?? "don't know";
        heard = await answered(page, () => tapped(page, words));
      }
    }
    expect(taps).toBeGreaterThanOrEqual(4);
    await planIsShown(page, `tapping-${viewport.width}`);
    expect(await axeFindings(page, axe)).toEqual([]);
    expect(complaints).toEqual([]);
    await context.close();
  },
  120_000,
);

/** The answers that the ledger gave to the ids this page sent, in order. */
async function ids(context: BrowserContext, sends: () => Promise<void>): Promise<string[]> {
  const sent: string[] = [];
  context.on('request', (request) => {
    if (request.method() === 'POST') sent.push(request.postDataJSON().id);
  });
  await sends();
  return sent;
}

test('a message written without a signal waits in sight, goes out by itself when there is one, and counts once', async () => {
  const { context, page } = await opened(NARROW, 'light');
  const first = await answered(page, () =>
    page
      .locator('#words')
      .fill('a 24 kg mirror')
      .then(() => page.keyboard.press('Enter')),
  );
  await context.setOffline(true);
  const sent = await ids(context, async () => {
    await page.locator('#words').fill('plastered brick');
    await page.keyboard.press('Enter');
    await page.locator('.turn.late').waitFor();
    expect(await page.getByRole('status').textContent()).toMatch(/Not sent yet/);
    await shot(page, 'no-signal');
    const heard = await answered(page, () => context.setOffline(false));
    expect(heard.turn).toBe(first.turn + 1);
  });
  expect(sent.length).toBeGreaterThan(1);
  expect(new Set(sent).size).toBe(1);
  expect(await page.locator('.late').count()).toBe(0);
  await context.close();
}, 60_000);

test('an answer lost on its way is asked for again with the same id, and is the same answer', async () => {
  const { context, page } = await opened(NARROW, 'light');
  let lost = 0;
  await page.route('**/v1/messages', async (route) => {
    const response = await route.fetch();
    if (lost++ === 0) return route.abort();
    return route.fulfill({ response });
  });
  const heard = await answered(page, () =>
    page
      .locator('#words')
      .fill('a 24 kg mirror')
      .then(() => page.keyboard.press('Enter')),
  );
  expect([heard.turn, lost]).toEqual([1, 2]);
  await context.close();
}, 60_000);

test('a reload keeps the conversation and what was not sent yet, and goes on where it was', async () => {
  const { context, page } = await opened(NARROW, 'light');
  await answered(page, () =>
    page
      .locator('#words')
      .fill('a 24 kg mirror')
      .then(() => page.keyboard.press('Enter')),
  );
  const before = await page.locator('#log').textContent();
  await page.reload();
  expect(await page.locator('#log').textContent()).toBe(before);
  await page.route('**/v1/messages', (route) => route.abort());
  await page.locator('#words').fill('plastered brick');
  await page.keyboard.press('Enter');
  await page.locator('.turn.late').waitFor();
  await page.unroute('**/v1/messages');
  const heard = await answered(page, () => page.reload().then(() => undefined));
  expect(heard.turn).toBe(2);
  await context.close();
}, 60_000);

test('two tabs of one browser hold one conversation, and neither takes the other’s words off the page', async () => {
  const { context, page, complaints } = await opened(NARROW, 'light');
  const other = await context.newPage();
  await other.goto(server.url);
  await other.locator('#send:enabled').waitFor();
  const say = (tab: Page, words: string) =>
    answered(tab, () =>
      tab
        .locator('#words')
        .fill(words)
        .then(() => tab.keyboard.press('Enter')),
    );
  await say(page, 'a 24 kg mirror');
  await other.locator('.turn:not(.waiting)').waitFor();
  const heard = await say(other, 'plastered brick');
  await page.locator('.turn:not(.waiting)').nth(1).waitFor();
  expect(heard.turn).toBe(2);
  const log = await page.locator('#log').textContent();
  expect(await other.locator('#log').textContent()).toBe(log);
  await page.reload();
  expect(await page.locator('#log').textContent()).toBe(log);
  expect(complaints).toEqual([]);
  await context.close();
}, 60_000);

test('markup in a message stays words, in it and in what is said back', async () => {
  const { context, page, complaints } = await opened(NARROW, 'light');
  await page.exposeFunction('ran', () => complaints.push('a message was executed'));
  const words = '<img src=x onerror=ran()><script>ran()</script>';
  await answered(page, () =>
    page
      .locator('#words')
      .fill(words)
      .then(() => page.keyboard.press('Enter')),
  );
  expect(await page.locator('.mine').textContent()).toContain(words);
  expect(await page.locator('#log img, #log script').count()).toBe(0);
  expect(complaints).toEqual([]);
  await context.close();
}, 60_000);

test('a job that stops shows why and what would clear it, and no mark', async () => {
  const stops = reference.dialogues.find(({ id }) => id === 'old-sheet-stops');
  const said: Record<string, string> = { ...stops?.answers };
  const { context, page, complaints } = await opened(NARROW, 'light');
  await page.locator('#words').focus();
  let heard = await answered(page, () => typed(page, stops?.open ?? ''));
  for (let turn = 0; heard.plan === null && heard.awaiting !== null && turn < 40; turn += 1) {
    const words = said[heard.awaiting] ?? "don't know";
    heard = await answered(page, () => typed(page, words));
  }
  const card = page.getByRole('article', { name: 'Plan: Stop' }).first();
  await card.waitFor();
  await shot(page, 'stop');
  expect(await card.getByRole('heading', { name: 'What would clear it' }).count()).toBe(1);
  expect(await page.getByText('What would clear it').count(), 'said once').toBe(1);
  expect(await card.locator('svg, table').count()).toBe(0);
  expect(await axeFindings(page, axe)).toEqual([]);
  expect(complaints).toEqual([]);
  await context.close();
}, 60_000);

test('with keys set the page asks for one once, says when it is wrong, and then keeps it', async () => {
  const port = await freePort();
  const env = { PORT: String(port), WALLHAND_DATA: mkdtempSync(join(data, 'keyed-')) };
  const keys = { WALLHAND_KEYS: 'harbour:a-key-of-the-tests', WALLHAND_SECRET: 'a secret of the tests' };
  const keyed = started('src/server.ts', { ...env, ...keys });
  await keyed.wrote(/chat page/);
  const context = await browser.newContext({ viewport: NARROW, colorScheme: 'dark' });
  const page = await context.newPage();
  await page.goto(`http://127.0.0.1:${port}`);
  expect(await axeFindings(page, axe)).toEqual([]);
  await page.keyboard.type('a wrong key');
  await page.keyboard.press('Enter');
  await page.getByRole('alert').waitFor();
  await shot(page, 'asks-for-a-key');
  expect(await axeFindings(page, axe)).toEqual([]);
  await page.getByLabel('key').fill('a-key-of-the-tests');
  await page.keyboard.press('Enter');
  await page.locator('#send:enabled').waitFor();
  await page.locator('#words').fill('a 24 kg mirror');
  const heard = await answered(page, () => page.keyboard.press('Enter'));
  expect(heard.turn).toBe(1);
  await page.reload();
  expect(await page.locator('#words').count()).toBe(1);
  await context.close();
  keyed.child.kill('SIGTERM');
  await keyed.ended;
}, 60_000);
