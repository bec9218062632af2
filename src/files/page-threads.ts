import { availableParallelism } from 'node:os';
import { join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import type { AstroIntegration } from 'astro';
import { Piscina } from 'piscina';
import { sideBySide } from './side-by-side.ts';
import { SITE_FOLDER } from './write-beside.ts';
import type { PageOrder, PageThreadData, SentPage } from './page-thread.ts';

/** From so many trials on threads pay: each loads what makes the pages. */
const MANY = 12;

/** Routes of one trial that ask little of others. What they share is worked out once, in the thread that makes them all. */
const OF_ONE = /^\/trials\/\[trial\](?:\/(?:recheck|summary\.pdf|preview\.png|data\/\[file\]))?$/;

/**
 * While a site is built, the pages and files of its trials are made on all cores: those of one trial in one thread, one
 * after the other. Lists, and whatever looks at many trials, are made beside, where Astro makes everything else.
 */
export function pageThreads(): AstroIntegration {
  const data: { entry: string; pages: PageThreadData['pages'] } = { entry: '', pages: new Map() };
  const threadOf = new Map<string, Piscina>();
  let threads: readonly Piscina[] = [];

  /** The thread of a trial: the one that has least to do when the trial is first asked for. */
  function threadFor(trial: string): Piscina | undefined {
    const thread = threadOf.get(trial) ?? threads.toSorted((a, b) => a.queueSize - b.queueSize)[0];
    if (thread) threadOf.set(trial, thread);
    return thread;
  }
  const noteEntry = (folder: string, files: readonly string[]): void => {
    const file = files.find((name) => name.startsWith('prerender-entry'));
    if (file) data.entry = pathToFileURL(join(folder, file)).href;
  };

  return {
    name: 'page-threads',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        const writeBundle = ({ dir = '' }: { dir?: string }, bundle: object) => noteEntry(dir, Object.keys(bundle));
        updateConfig({ vite: { plugins: [{ name: 'page-threads', writeBundle }] } });
      },
      'astro:config:done': ({ config }) => {
        process.env[SITE_FOLDER] = fileURLToPath(config.outDir);
      },
      'astro:build:setup': ({ pages }) => {
        data.pages = pages; // the bundler enters the style sheets
      },
      'astro:build:start': ({ setPrerenderer }) =>
        setPrerenderer((astro) => ({
          ...astro,
          getStaticPaths: async () => {
            const paths = await astro.getStaticPaths();
            const { items, groups } = sideBySide(paths, ({ pathname, route }) =>
              OF_ONE.test(route.route) ? trialIn(pathname) : null,
            );
            if (groups >= MANY) threads = startThreads(data);
            return items;
          },
          render: async (request, options) => {
            const { route, component } = options.routeData;
            const { url } = request;
            const thread = OF_ONE.test(route) ? threadFor(trialIn(url)) : undefined;
            if (!thread) return astro.render(request, options);
            return asResponse(await thread.run({ url, route, component } satisfies PageOrder));
          },
          teardown: async () => {
            await Promise.all(threads.map((thread) => thread.destroy()));
            await astro.teardown?.();
          },
        })),
    },
  };
}

const trialIn = (url: string): string => /.*\/trials\/([^/]+)/.exec(url)?.[1] ?? '';

function startThreads({ entry, pages }: PageThreadData): Piscina[] {
  const styles = new Map([...pages].map(([key, page]) => [key, { styles: page.styles }]));
  const workerData: PageThreadData = { entry, pages: styles };
  const filename = pathToFileURL(resolve('src/files/page-thread.ts')).href;
  return Array.from(
    { length: availableParallelism() },
    () => new Piscina({ filename, minThreads: 1, maxThreads: 1, workerData, atomics: 'disabled' }),
  );
}

function asResponse(sent: SentPage): Response {
  if ('failed' in sent) throw Object.assign(new Error(), sent.failed);
  const { body, ...head } = sent;
  return new Response(body as Uint8Array<ArrayBuffer>, head);
}
