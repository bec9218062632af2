import { readFileSync } from 'node:fs';
import type { AstroIntegration } from 'astro';

/**
 * Finds the built pages that are old addresses, so that the list of pages leaves them out: pages whose canonical
 * address is another than their own. Stands before the sitemap in the list of integrations.
 */
export function movedPages(): { readonly integration: AstroIntegration; has(address: string): boolean } {
  const moved = new Set<string>();
  let base = '/';
  return {
    has: (address) => moved.has(new URL(address).pathname),
    integration: {
      name: 'moved-pages',
      hooks: {
        'astro:config:done': ({ config }) => {
          base = config.base.replace(/\/?$/, '/');
        },
        'astro:build:done': ({ dir, pages }) => {
          for (const { pathname } of pages) {
            const canonical = canonicalIn(new URL(`${pathname}index.html`, dir));
            const own = base + pathname;
            if (canonical !== null && new URL(canonical).pathname !== own) moved.add(own);
          }
        },
      },
    },
  };
}

function canonicalIn(file: URL): string | null {
  try {
    return /<link rel="canonical" href="([^"]*)"/.exec(readFileSync(file, 'utf8'))?.[1] ?? null;
  } catch {
    return null; // a page that is a file of another name, such as 404.html
  }
}
