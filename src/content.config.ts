import { defineCollection } from 'astro:content';
import { z } from 'astro/zod';
import { contentLoaders } from './files/loader.ts';
import type { ReadTrial } from './files/content-reader.ts';
import type { LeftOut } from './files/read-publishable.ts';
import type { PooledQuestion } from './files/pooled-questions.ts';
import type { Site } from './trial/trial.ts';

const loaders = contentLoaders();

// The reader has checked everything already; these schemas only give the types.
export const collections = {
  site: defineCollection({ loader: loaders.site, schema: z.custom<Site>() }),
  trials: defineCollection({ loader: loaders.trials, schema: z.custom<Omit<ReadTrial, 'id'>>() }), // `allTrials`
  questions: defineCollection({
    loader: loaders.questions,
    schema: z.object({ entries: z.custom<readonly PooledQuestion[]>() }),
  }),
  leftOut: defineCollection({ loader: loaders.leftOut, schema: z.object({ entries: z.custom<readonly LeftOut[]>() }) }),
};
