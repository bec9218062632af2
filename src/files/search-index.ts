import { readFile, rm } from 'node:fs/promises';
import { globSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { close, createIndex } from 'pagefind';

/** Lists lead to what is found, and a trial worked out again stands beside its report: they are not what anybody looks for. */
const LISTS = /^(?:trials\/(?:by\/.*|[^/]+\/recheck\/)?|search\/|404\/)?$/;
/** What the search page loads; of the library's own forms and styles nothing is published. */
const USED = /^(?:pagefind\.js|pagefind-worker\.js|pagefind-entry\.json|wasm\..+|.+\.pf_(?:meta|index|fragment))$/;
/** Cells of a table, whose ends are left out: for the index a blank keeps their words apart. */
const CELL = /<(?=t[dh][\s>]|\/?tr>)/g;

/**
 * After a build, an index of all pages but lists, in small files under `/pagefind/`: a reader who searches loads those
 * that hold the words looked for. The same pages give the same bytes.
 *
 * @param isMoved whether an address is an old one, which only leads on
 * @throws {Error} where a page cannot be indexed
 */
export function searchIndex(isMoved: (address: string) => boolean): AstroIntegration {
  let home = 'http://localhost/';
  return {
    name: 'search-index',
    hooks: {
      'astro:config:done': ({ config }) => {
        home = new URL(config.base.replace(/\/?$/, '/'), config.site ?? home).href;
      },
      'astro:build:done': async ({ dir, pages }) => {
        const paths = pages.map(({ pathname }) => pathname).filter((path) => !LISTS.test(path));
        const shown = paths.filter((path) => !isMoved(new URL(path, home).href)).toSorted();
        await writeIndex(dir, shown, fileURLToPath(new URL('pagefind', dir)));
      },
    },
  };
}

/** Where no page can be told from another: numbers folded away, and what stands in every report alike, explained on a page of its own. */
const LEFT_OUT = ['nav', 'svg', 'code', 'details table', '#methods', '#data', '#cite'];

async function writeIndex(dir: URL, paths: readonly string[], folder: string): Promise<void> {
  const { index, errors } = await createIndex({ rootSelector: 'main', excludeSelectors: LEFT_OUT });
  if (!index) throw new Error(`The search index cannot be made: ${errors.join('; ')}`);
  for (const path of paths) {
    const html = await readFile(new URL(`${path}index.html`, dir), 'utf8');
    const content = html.replace(CELL, ' <');
    const { errors: found } = await index.addHTMLFile({ url: `/${path}`, content });
    if (found.length > 0) throw new Error(`${path} cannot be indexed: ${found.join('; ')}`);
  }
  const { errors: unwritten } = await index.writeFiles({ outputPath: folder });
  if (unwritten.length > 0) throw new Error(`The search index cannot be written: ${unwritten.join('; ')}`);
  await close();
  const unused = globSync('*', { cwd: folder }).filter((file) => /\.\w+$/.test(file) && !USED.test(file));
  await Promise.all(unused.map((file) => rm(join(folder, file))));
}
