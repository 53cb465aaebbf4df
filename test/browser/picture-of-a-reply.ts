import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { TYPED } from '../house/readme.ts';
import { freePort, startServer } from '../src/crew/running-server.ts';
import { launched } from './launched.ts';
import { answered, typed } from './page.ts';

/** `node test/browser/picture-of-a-reply.ts` makes the picture README links to: the card its conversation ends in. */
const PICTURE = 'src/chat/a-reply.png';
const WIDTH = 720;

const data = mkdtempSync(join(tmpdir(), 'wallhand-picture-'));
const [browser, server] = await Promise.all([launched(), startServer(data, await freePort())]);
try {
  const page = await browser.newPage({ viewport: { width: WIDTH, height: 900 }, colorScheme: 'light' });
  await page.goto(server.url);
  await page.locator('#send:enabled').waitFor();
  await page.locator('#words').focus();
  for (const words of TYPED) await answered(page, () => typed(page, words));
  const card = page.getByRole('article').last();
  await card.waitFor();
  // What lies over the page while one types would lie over the picture too.
  await page.locator('#say').evaluate((node) => node.remove());
  await card.screenshot({ path: PICTURE });
} finally {
  await browser.close();
  await server.kill('SIGTERM');
  rmSync(data, { recursive: true, force: true });
}
