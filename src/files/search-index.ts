import { globSync } from 'node:fs';
import { rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { close, createIndex, type PagefindIndex } from 'pagefind';

/** Lists lead to what is found, and a trial worked out again stands beside its report: they are not what anybody looks for. */
const LISTS = /^(?:trials\/(?:by\/.*|[^/]+\/recheck\/)?|search\/|404\/)?$/;
/** What the search page loads; of the library's own forms and styles nothing is published. */
const USED = /^(?:pagefind\.js|pagefind-worker\.js|pagefind-entry\.json|wasm\..+|.+\.pf_(?:meta|index|fragment))$/;
/** The same, of parts but the first. */
const USED_OF_OTHERS = /^(?:pagefind-entry\.json|.+\.pf_meta)$/;
/** Pages of one part of the index: while a part is written it takes a third of a megabyte of memory a page. */
const IN_A_PART = 1250;
/** Cells of a table, whose ends are left out: for the index a blank keeps their words apart. */
const CELL = /<(?=t[dh][\s>]|\/?tr>)/g;
/**
 * Where no report can be told from another: numbers, what every report has alike, and what is explained on a page of its
 * own.
 */
const LEFT_OUT = [
  'nav',
  'code',
  '[id^="result-"] table',
  '[id^="result-"] figcaption',
  '.caveats',
  '#trust',
  '#methods',
  '#data',
  '#cite',
];
/** Drawings and folded tables, half of a report, which the index need not even read. */
const UNREAD = /<svg[\s>].*?<\/svg>|<details[\s>].*?<\/details>/gs;

export interface SearchIndex {
  /** Pages to come, in the order in which they are entered. Said once, before the first of them. */
  expect(paths: readonly string[]): void;
  /**
   * A page as it was made, null where nobody should find it; over when it has been entered, which is when those before it
   * have come.
   *
   * @param path below the base, with a slash at its end
   * @throws {Error} where it cannot be indexed
   */
  add(path: string, html: string | null): Promise<void>;
  /** Writes what is left of the index at the end of a build. */
  readonly integration: AstroIntegration;
}

/** What is entered between two writings. */
interface Part {
  readonly index: Promise<PagefindIndex>;
  readonly pages: Promise<void>[];
}

/**
 * An index of all pages but lists, made while the pages are, in small files under `/pagefind/`: a reader who searches loads those
 * that hold the words looked for. Very many pages are several parts, `/pagefind/2/` and so on, which `parts.json` lists; each is
 * written as soon as it is full. The same pages in the same order give the same bytes.
 *
 * @param inAPart pages of each part but the last
 */
export function searchIndex(inAPart = IN_A_PART): SearchIndex {
  let folder = '';
  let part: Part | undefined;
  let order: readonly string[] = [];
  let entered = 0;
  const written: string[] = [];
  let writing = Promise.resolve();
  const come = new Map<string, { readonly html: string | null; readonly over: PromiseWithResolvers<void> }>();

  /** Hands on what has come, up to the first page that has not; several are on their way at once, in their order. */
  function enter(): void {
    for (let page = come.get(order[entered] ?? ''); page; page = come.get(order[entered] ?? '')) {
      const path = order[entered] ?? '';
      come.delete(path);
      entered += 1;
      const { resolve, reject } = page.over;
      enterPage(path, page.html).then(resolve, reject);
    }
  }
  async function enterPage(path: string, html: string | null): Promise<void> {
    const page = html === null ? null : added(path, html);
    await Promise.all([page, entered % inAPart === 0 ? writePart() : null]);
  }
  function added(path: string, html: string): Promise<void> {
    part ??= { index: newIndex(), pages: [] };
    const page = part.index.then((index) => addPage(index, path, html));
    part.pages.push(page);
    return page;
  }
  /** One after the other: the first clears away what the last build wrote. */
  function writePart(): Promise<void> {
    const full = part;
    part = undefined;
    if (!full) return writing;
    writing = writing.then(async () => {
      const name = written.length === 0 ? '' : `${written.length + 1}/`;
      written.push(name);
      await Promise.all(full.pages);
      await writeIndex(await full.index, join(folder, name), name === '' ? USED : USED_OF_OTHERS);
      await writeFile(join(folder, 'parts.json'), JSON.stringify(written.slice(1)));
    });
    return writing;
  }
  return {
    expect: (paths) => {
      order = paths.filter((path) => !LISTS.test(path));
    },
    add: async (path, html) => {
      if (LISTS.test(path)) return;
      const over = Promise.withResolvers<void>();
      come.set(path, { html, over });
      enter();
      await over.promise;
    },
    integration: {
      name: 'search-index',
      hooks: {
        'astro:config:done': ({ config }) => {
          folder = fileURLToPath(new URL('pagefind/', config.outDir));
        },
        'astro:build:done': async () => {
          await writePart();
          await close();
        },
      },
    },
  };
}

async function newIndex(): Promise<PagefindIndex> {
  const { index, errors } = await createIndex({ rootSelector: 'main', excludeSelectors: LEFT_OUT });
  if (!index) throw new Error(`The search index cannot be made: ${errors.join('; ')}`);
  return index;
}

async function addPage(index: PagefindIndex, path: string, html: string): Promise<void> {
  const read = html.replace(UNREAD, (part) => (part.startsWith('<svg') || part.includes('<table') ? '' : part));
  const { errors } = await index.addHTMLFile({ url: `/${path}`, content: read.replace(CELL, ' <') });
  if (errors.length > 0) throw new Error(`${path} cannot be indexed: ${errors.join('; ')}`);
}

async function writeIndex(index: PagefindIndex, folder: string, used: RegExp): Promise<void> {
  await rm(folder, { recursive: true, force: true }); // files of the last build would be left as they are
  const { errors } = await index.writeFiles({ outputPath: folder });
  if (errors.length > 0) throw new Error(`The search index cannot be written: ${errors.join('; ')}`);
  await index.deleteIndex();
  const unused = globSync('*', { cwd: folder }).filter((file) => /\.\w+$/.test(file) && !used.test(file));
  await Promise.all(unused.map((file) => rm(join(folder, file))));
}
