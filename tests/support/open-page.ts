import type { BrowserContext, Page } from 'playwright-core';

/**
 * A page in a tab of its own; whatever the browser complains about (a blocked load, a broken policy, a missing file, an
 * error of a script, anything asked of another host) is collected in `complaints`.
 */
export async function openPage(
  context: BrowserContext,
  address: string,
  origin: string,
): Promise<{ page: Page; complaints: string[] }> {
  const page = await context.newPage();
  const complaints: string[] = [];
  page.on('console', (message) => ['error', 'warning'].includes(message.type()) && complaints.push(message.text()));
  page.on('pageerror', (error) => complaints.push(error.message));
  page.on('requestfailed', (request) => complaints.push(`failed: ${request.url()}`));
  page.on(
    'response',
    (response) => response.status() >= 400 && complaints.push(`${response.status()}: ${response.url()}`),
  );
  page.on('request', (request) => !request.url().startsWith(origin) && complaints.push(`elsewhere: ${request.url()}`));
  await page.goto(address);
  await page.evaluate(() => document.fonts.ready);
  return { page, complaints };
}
