import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import type { Analysis } from './analysis/analysis.ts';
import { contentFolder } from './files/content-folder.ts';
import { contentLoaders } from './files/loader.ts';
import type { Site, Trial } from './trial/trial.ts';

const loaders = contentLoaders();

// The reader has checked everything already; these schemas only give the types.
export const collections = {
  site: defineCollection({ loader: loaders.site, schema: z.custom<Site>() }),
  trials: defineCollection({
    loader: loaders.trials,
    schema: z.object({ trial: z.custom<Trial>(), analysis: z.custom<Analysis>() }),
  }),
  // The authors' own words, compiled when the page is made: what cannot be compiled stops the build.
  prose: defineCollection({
    loader: glob({
      base: pathToFileURL(join(contentFolder(), 'trials')).href,
      pattern: '*/report.{md,mdx}',
      generateId: ({ entry }) => entry.split('/')[0] ?? entry,
      deferRender: true,
    }),
  }),
};
