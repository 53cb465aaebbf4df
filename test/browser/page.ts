import type { Page } from 'playwright-core';

/** What the page was answered, as it came over the wire. */
export type Heard = { awaiting: string | null; plan: string | null; turn: number };

type Choice = { value: string; label: string };
type Body = Heard & { replies: { kind: string; choices?: Choice[] }[] };

/** Does something that sends a message, and waits until its answer is on the page. */
export async function answered(
  page: Page,
  sends: () => Promise<void>,
): Promise<Heard & { choices: Choice[] }> {
  const coming = page.waitForResponse((response) => response.url().endsWith('/v1/messages') && response.ok());
  await sends();
  const body = (await (await coming).json()) as Body;
  await page.locator('.turn.waiting').waitFor({ state: 'detached' });
  return { ...body, choices: body.replies.flatMap((reply) => reply.choices ?? []) };
}

/** Types into whatever has the focus, and sends it with the Enter key. */
export async function typed(page: Page, words: string): Promise<void> {
  await page.keyboard.type(words);
  await page.keyboard.press('Enter');
}

/** Taps the line, types as a phone's keyboard does, and taps Send. */
export async function tapped(page: Page, words: string): Promise<void> {
  await page.locator('#words').tap();
  await page.locator('#words').fill(words);
  await page.getByRole('button', { name: 'Send' }).tap();
}

/** What axe finds wrong, short enough to read in a failing test. */
export async function axeFindings(page: Page, axe: string): Promise<string[]> {
  await page.evaluate(axe);
  return page.evaluate(async () => {
    const found = await Reflect.get(window, 'axe').run();
    return found.violations.map(
      (each: { id: string; nodes: { html: string }[] }) => `${each.id}: ${each.nodes[0]?.html}`,
    );
  });
}

/** The sizes of what can be tapped, the smaller side first. */
export async function tapTargets(page: Page): Promise<{ name: string; least: number }[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll('button:not([hidden]), textarea, summary')].map((node) => {
      const { width, height } = node.getBoundingClientRect();
      return { name: node.textContent?.trim() || node.id, least: Math.min(width, height) };
    }),
  );
}
