import { type Browser, chromium } from 'playwright-core';

/** A real browser that comes with the packages, on any Linux: it brings its own libraries and fonts when told it is alone. */
export async function launched(): Promise<Browser> {
  process.env.AWS_LAMBDA_JS_RUNTIME ??= 'nodejs24.x';
  const { default: packed } = await import('@sparticuz/chromium');
  return chromium.launch({
    executablePath: await packed.executablePath(),
    args: ['--no-sandbox', '--no-zygote', '--font-render-hinting=none', '--disable-gpu'],
    headless: true,
  });
}
