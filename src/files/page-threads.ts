import { readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { setFlagsFromString } from 'node:v8';
import type { AstroIntegration, AstroPrerenderer } from 'astro';
import { Piscina } from 'piscina';
import { contentFolder } from './content-folder.ts';
import { sideBySide } from './side-by-side.ts';
import { SITE_FOLDER } from './write-beside.ts';
import type { PageOrder, PageThreadData, SentPage } from './page-thread.ts';

/** From so many trials on threads pay: each loads what makes the pages. */
const MANY = 12;

/** From so many on memory is what is short. */
const VERY_MANY = 2000;

/**
 * Routes of one trial that ask little of others: what they share is worked out once, in the thread that makes them all. Planning
 * takes half a second, during which nobody would be given work.
 */
const OF_ONE = /^\/(?:plan|trials\/\[trial\](?:\/(?:recheck|summary\.pdf|preview\.png|data\/\[file\]))?)$/;

export interface MadePage {
  /** Below the base, with a slash at its end. */
  readonly path: string;
  /** The same, whole. */
  readonly address: string;
  readonly html: string;
}

/** What is told of the HTML pages of a build. */
export interface PagesMade {
  /** Paths of all that will be made, in this order, before the first is. */
  planned(paths: readonly string[]): void;
  /** One that is made; it counts as such when this is over. */
  made(page: MadePage): Promise<void>;
}

/**
 * While a site is built, the pages and files of its trials are made on all cores: those of one trial in one thread. Lists, and
 * whatever looks at many trials, are made beside, where Astro makes everything else.
 */
export function pageThreads({ planned, made }: PagesMade): AstroIntegration {
  let base = '';
  const data: { entry: string; pages: PageThreadData['pages'] } = { entry: '', pages: new Map() };
  const threadOf = new Map<string, Thread>();
  let threads: readonly Thread[] = [];

  /** The thread of a trial: the one that has least to do when the trial is first asked for. */
  function threadFor(trial: string): Thread | undefined {
    const thread = threadOf.get(trial) ?? threads.toSorted((a, b) => a.open - b.open)[0];
    if (thread) threadOf.set(trial, thread);
    return thread;
  }
  const noteEntry = (folder: string, files: readonly string[]): void => {
    const file = files.find((name) => name.startsWith('prerender-entry'));
    if (file) data.entry = pathToFileURL(join(folder, file)).href;
  };

  /** Astro's own way of making pages, with threads beside. */
  const withThreads = (astro: AstroPrerenderer): AstroPrerenderer => ({
    ...astro,
    getStaticPaths: async () => {
      const trials = trialFolders();
      if (trials >= VERY_MANY) setFlagsFromString(THRIFTY);
      if (trials >= MANY) threads = startThreads(data); // they get ready meanwhile
      const paths = await astro.getStaticPaths();
      const items = sideBySide(paths, ({ pathname, route }) => (OF_ONE.test(route.route) ? trialIn(pathname) : null));
      planned(items.flatMap(({ pathname, route }) => (route.type === 'page' ? [pathOf(pathname)] : [])));
      return items;
    },
    render: async (request, options) => {
      const { route, component, type } = options.routeData;
      const { url } = request;
      const thread = OF_ONE.test(route) ? threadFor(trialIn(url)) : undefined;
      const order: PageOrder = { url, route, component };
      const page = thread ? await pageOf(thread, order) : await readPage(await astro.render(request, options));
      if ('failed' in page) throw Object.assign(new Error(), page.failed);
      const { body, ...head } = page;
      if (type === 'page') {
        const html = new TextDecoder().decode(body);
        await made({ path: pathOf(new URL(url).pathname.slice(base.length)), address: url, html });
      }
      return new Response(body, head);
    },
    teardown: async () => {
      await Promise.all(threads.map(({ pool }) => pool.destroy()));
      await astro.teardown?.();
    },
  });

  return {
    name: 'page-threads',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        const writeBundle = ({ dir = '' }: { dir?: string }, bundle: object) => noteEntry(dir, Object.keys(bundle));
        updateConfig({ vite: { plugins: [{ name: 'page-threads', writeBundle }] } });
      },
      'astro:config:done': ({ config }) => {
        base = config.base.replace(/\/$/, '');
        process.env[SITE_FOLDER] = fileURLToPath(config.outDir);
      },
      'astro:build:setup': ({ pages }) => {
        data.pages = pages; // the bundler enters the style sheets
      },
      'astro:build:start': ({ setPrerenderer }) => setPrerenderer(withThreads),
    },
  };
}

/** What Astro adds, for builds that know what changed, is not asked for here. */
async function readPage(rendered: Awaited<ReturnType<AstroPrerenderer['render']>>): Promise<SentPage> {
  const response = rendered instanceof Response ? rendered : rendered.response;
  return { status: response.status, headers: [...response.headers], body: await response.bytes() };
}

/** How many trials there may be; where the folder cannot be read, its reader says so. */
function trialFolders(): number {
  try {
    return readdirSync(join(contentFolder(), 'trials')).length;
  } catch {
    return 0;
  }
}

/** `trials/peas/` for `/trials/peas`. */
const pathOf = (address: string): string => address.replace(/^\//, '').replace(/([^/])$/, '$1/');
const trialIn = (url: string): string => /.*\/trials\/([^/]+)/.exec(url)?.[1] ?? '';

interface Thread {
  readonly pool: Piscina;
  /** Orders that it has not answered. */
  open: number;
}

async function pageOf(thread: Thread, order: PageOrder): Promise<SentPage> {
  thread.open += 1;
  try {
    return await thread.pool.run(order);
  } finally {
    thread.open -= 1;
  }
}

/** Its next orders lie ready in it, so that it need not wait until this one finds time. */
const ONE_THREAD = {
  minThreads: 1,
  maxThreads: 1,
  concurrentTasksPerWorker: 3,
  atomics: 'disabled',
} as const;

/**
 * Threads clear up whenever what they hold has grown by two fifths: a fifth less memory, for a twentieth more time. To set an end
 * to their memory saves as much, but stops a build whose trials have hundreds of sowings.
 */
const THRIFTY = '--heap-growing-percent=40';

function startThreads({ entry, pages }: PageThreadData): Thread[] {
  const styles = new Map([...pages].map(([key, page]) => [key, { styles: page.styles }]));
  const workerData: PageThreadData = { entry, pages: styles };
  const filename = pathToFileURL(resolve('src/files/page-thread.ts')).href;
  return Array.from({ length: availableParallelism() }, () => ({
    pool: new Piscina({ ...ONE_THREAD, filename, workerData }),
    open: 0,
  }));
}
