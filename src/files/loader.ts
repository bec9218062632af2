import type { Loader, LoaderContext } from 'astro/loaders';
import { begunReader } from './begun-reading.ts';
import type { Analysed } from './content-reader.ts';

/** The collections that are filled here: what `refreshContent` of Astro fills anew. */
export const FROM_CONTENT = ['content-site', 'content-trials', 'content-questions', 'content-leftOut'];

/**
 * The publisher (`site`), its trials with their analyses (`trials`) and questions that several trials answer (`questions`), from one reading of the content
 * folder. A mistake stops `astro build` with everything that `check` would say; `astro dev` says it, keeps the
 * last good data (`renewedContent`), and reads only those trials again in whose folder something changed.
 */
export function contentLoaders(): {
  readonly site: Loader;
  readonly trials: Loader;
  readonly questions: Loader;
  /** Trials and repeats that errors kept from being published. */
  readonly leftOut: Loader;
} {
  const reader = begunReader();
  let reading: Promise<Analysed> | undefined;

  /** One reading serves all loaders. */
  function readOnce(keep: boolean): Promise<Analysed> {
    reading ??= reader.read().finally(() => {
      reading = undefined;
      if (!keep) reader.stop();
    });
    return reading;
  }

  const loader = (name: keyof typeof fill): Loader => ({
    name: `content-${name}`,
    load: async ({ store, logger, watcher, refreshContextData }) => {
      if (refreshContextData?.isCodeChanged && !reading) reader.stop();
      const content = await readOnce(watcher !== undefined); // throws before the store is touched
      if (name === 'trials') for (const { id } of content.leftOut) logger.warn(`${id} has errors and is left out`);
      store.clear();
      fill[name](content, store);
    },
  });
  return {
    site: loader('site'),
    trials: loader('trials'),
    questions: loader('questions'),
    leftOut: loader('leftOut'),
  };
}

const fill = {
  site: ({ site }: Analysed, store: LoaderContext['store']) => store.set({ id: 'site', data: { ...site } }),
  trials: ({ trials }: Analysed, store: LoaderContext['store']) =>
    trials.forEach(({ id, ...data }) => store.set({ id, data })),
  questions: ({ questions }: Analysed, store: LoaderContext['store']) =>
    store.set({ id: 'all', data: { entries: questions } }), // one entry: Astro warns of a collection without any
  leftOut: ({ leftOut }: Analysed, store: LoaderContext['store']) =>
    store.set({ id: 'all', data: { entries: leftOut } }),
};
