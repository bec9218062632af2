import { existsSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { chromium, type Browser } from 'playwright-core';

/** The machine's Chromium: CHROMIUM_PATH, else the first one on the PATH. */
export function startBrowser(): Promise<Browser> {
  return chromium.launch({
    executablePath: chromiumPath(),
    args: [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--disable-quic',
      '--no-first-run',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
    ],
  });
}

/** Where it is. */
export function chromiumPath(): string {
  if (process.env.CHROMIUM_PATH) return process.env.CHROMIUM_PATH;
  const folders = (process.env.PATH ?? '').split(delimiter);
  const names = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome.exe'];
  const found = names.flatMap((name) => folders.map((folder) => join(folder, name))).find((path) => existsSync(path));
  if (!found) throw new Error('The browser tests need Chromium: install it, or name it in CHROMIUM_PATH.');
  return found;
}
