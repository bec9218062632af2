import { sep } from 'node:path';
import type { Loader, LoaderContext } from 'astro/loaders';
import { contentFolder } from './content-folder.ts';
import { hasProse } from './has-prose.ts';
import { readAnalysed, type Analysed } from './read-analysed.ts';

/**
 * The publisher (`site`), its trials with their analyses (`trials`) and questions that several trials answer (`questions`), from one reading of the content
 * folder. A mistake stops `astro build` with everything that `check` would say; `astro dev` logs it and
 * keeps the last good data. Nothing is reused between builds.
 */
export function contentLoaders(): {
  readonly site: Loader;
  readonly trials: Loader;
  readonly questions: Loader;
  /** Trials and repeats that errors kept from being published. */
  readonly leftOut: Loader;
  /** Ids of the trials that may be published and have an author's text: no other is compiled. */
  readonly published: () => Promise<readonly string[]>;
} {
  const folder = contentFolder();
  let reading: Promise<Analysed> | undefined;
  let latest: Promise<Analysed> | undefined;
  const contexts = new Map<keyof typeof fill, LoaderContext>();

  /** One reading serves all loaders. */
  function readOnce(): Promise<Analysed> {
    reading ??= readAnalysed(folder).finally(() => (reading = undefined));
    return (latest = reading);
  }

  async function load(name: keyof typeof fill, context: LoaderContext): Promise<void> {
    const content = await readOnce(); // throws before the store is touched
    if (name === 'trials')
      for (const { id } of content.leftOut) context.logger.warn(`${id} has errors and is left out`);
    context.store.clear();
    fill[name](content, context.store);
  }

  const reload = (changed: string) => {
    if (!changed.startsWith(folder + sep)) return;
    for (const [name, context] of contexts) {
      load(name, context).catch((error: Error) => name === 'site' && context.logger.error(error.message));
    }
  };

  const loader = (name: keyof typeof fill): Loader => ({
    name: `content-${name}`,
    load: async (context) => {
      contexts.set(name, context);
      if (name === 'site') {
        context.watcher?.add(folder);
        context.watcher?.on('all', (_event, changed) => reload(changed));
      }
      await load(name, context);
    },
  });
  return {
    site: loader('site'),
    trials: loader('trials'),
    questions: loader('questions'),
    leftOut: loader('leftOut'),
    published: async () => (await (latest ?? readOnce())).trials.map(({ id }) => id).filter(hasProse),
  };
}

const fill = {
  site: ({ site }: Analysed, store: LoaderContext['store']) => store.set({ id: 'site', data: { ...site } }),
  trials: ({ trials }: Analysed, store: LoaderContext['store']) =>
    trials.forEach(({ id, file }) => store.set({ id, data: { file } })),
  questions: ({ questions }: Analysed, store: LoaderContext['store']) =>
    store.set({ id: 'all', data: { entries: questions } }), // one entry: Astro warns of a collection without any
  leftOut: ({ leftOut }: Analysed, store: LoaderContext['store']) =>
    store.set({ id: 'all', data: { entries: leftOut } }),
};
