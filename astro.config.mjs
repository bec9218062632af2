import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import mdx from '@astrojs/mdx';
import sitemap from '@astrojs/sitemap';
import { defineConfig } from 'astro/config';
import { parse } from 'yaml';
import { tidyKept } from './src/files/kept/tidy-kept.ts';
import { movedPages } from './src/files/moved-pages.ts';
import { offlinePage } from './src/files/offline-page.ts';
import { oldSite } from './src/files/old-site.ts';
import { pageThreads } from './src/files/page-threads.ts';
import { renewedContent } from './src/files/renewed-content.ts';
import { searchIndex } from './src/files/search-index.ts';

process.env.ASTRO_TELEMETRY_DISABLED = '1'; // nothing is told to anybody

/** The publisher's address, from site.yaml; what is wrong with that file is said by the reader of the content. */
function publishedAt() {
  const file = join(resolve(process.env.FAIRSOWN_CONTENT ?? 'content'), 'site.yaml');
  try {
    const { origin, pathname } = new URL(parse(readFileSync(file, 'utf8')).base);
    return { site: origin, base: pathname };
  } catch {
    return {};
  }
}

const published = publishedAt();
const moved = movedPages();
const search = searchIndex();

/** What is to know of each page that is made. */
const pages = {
  planned: search.expect,
  made: async ({ path, address, html }) => {
    moved.note(address, html);
    await search.add(path, moved.has(address) ? null : html);
  },
};

export default defineConfig({
  ...published,
  integrations: [
    mdx(), // shows what `compiledText` makes of authors' texts
    pageThreads(pages),
    sitemap({ filter: (page) => !moved.has(page) }),
    search.integration,
    tidyKept(),
    renewedContent(),
    offlinePage('record/'),
    oldSite(),
  ],
  trailingSlash: 'ignore', // raw files have none
  devToolbar: { enabled: false },
  build: { inlineStylesheets: 'never', concurrency: 24 }, // of several trials at once, for `pageThreads`
  markdown: { syntaxHighlight: false }, // Astro compiles no text here, but warns that its highlighting breaks the policy below
  vite: { build: { cssCodeSplit: false } },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "img-src 'self'",
        "font-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
        "object-src 'none'",
        "frame-src 'none'",
      ],
    },
  },
});
