import { resolve } from 'node:path';
import type { AstroIntegration } from 'astro';
import { KEPT_IN } from './build-keeper.ts';
import { prune } from './prune.ts';

/** Bytes that may be kept between builds: some 10 000 trials. */
const MOST = 4_000_000_000;

/** After a build, what was not used for longest goes where too much is kept. */
export const tidyKept = (): AstroIntegration => ({
  name: 'tidy-kept',
  hooks: { 'astro:build:done': () => prune(resolve(KEPT_IN), MOST) },
});
