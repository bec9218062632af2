import { createHash } from 'node:crypto';
import { existsSync } from 'node:fs';
import { readFile, writeFile } from 'node:fs/promises';
import type { AstroIntegration } from 'astro';
import { offlineWorker } from './offline-worker.ts';

const TEXT = /\.(?:html|css|js)$/;

/**
 * After a build, a service worker beside one page that keeps this page and whatever it loads, found by following its
 * addresses. Its scope is the page's own folder, so no other page is touched; same files, same bytes.
 *
 * @param page address below the base, with a slash at its end
 */
export function offlinePage(page: string): AstroIntegration {
  let base = '/';
  return {
    name: 'offline-page',
    hooks: {
      'astro:config:done': ({ config }) => {
        base = config.base.replace(/\/?$/, '/');
      },
      'astro:build:done': async ({ dir }) => {
        const found = new Map<string, Buffer>();
        await follow(`${page}index.html`, dir, base, found);
        const [first = '', ...others] = found.keys();
        const assets = others.toSorted();
        const digest = createHash('sha256');
        for (const file of [first, ...assets]) digest.update(`${file}\n`).update(found.get(file) ?? '');
        const files = [base + page, ...assets.map((file) => base + file)];
        const version = digest.digest('hex').slice(0, 12);
        const text = `(${offlineWorker})(self, ${JSON.stringify(files)}, ${JSON.stringify(version)});\n`;
        await writeFile(new URL(`${page}worker.js`, dir), text);
      },
    },
  };
}

/** Gathers a file and those of `_astro` and icons that it names, by path below `dir`. */
async function follow(file: string, dir: URL, base: string, found: Map<string, Buffer>): Promise<void> {
  if (found.has(file) || !existsSync(new URL(file, dir))) return;
  const bytes = await readFile(new URL(file, dir));
  found.set(file, bytes);
  if (!TEXT.test(file)) return;
  const named = bytes.toString().matchAll(/["'(]([^"'()\s<>]+\.(?:css|js|woff2|svg))["')]/g);
  for (const [, address = ''] of named) {
    const { pathname } = new URL(address, `http://site${base}${file}`);
    if (pathname.startsWith(base)) await follow(pathname.slice(base.length), dir, base, found);
  }
}
