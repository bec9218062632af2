import { mkdir, readdir, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { Worker } from 'node:worker_threads';
import type { AstroIntegration } from 'astro';

/**
 * Before a build writes, what the last one wrote is put aside and removed by a thread while the new site is made: for a
 * thousand trials that takes seconds. Up to then the old site stays, so a mistake in the content costs nothing.
 */
export function oldSite(): AstroIntegration {
  let folder = '';
  let gone: Promise<void> = Promise.resolve();
  return {
    name: 'old-site',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({ vite: { build: { emptyOutDir: false } } });
      },
      'astro:config:done': ({ config }) => {
        folder = fileURLToPath(config.outDir);
      },
      'astro:build:start': async () => {
        gone = removed(await aside(folder));
      },
      'astro:build:done': () => gone,
    },
  };
}

/** Moves all that stands in a folder, but what git keeps there, into a new one in it; named as what is left of a command is. */
async function aside(folder: string): Promise<string> {
  await mkdir(folder, { recursive: true });
  const names = await readdir(folder);
  const old = join(folder, `.unfinished-${process.pid}-0`);
  await mkdir(old);
  for (const name of names) if (name !== '.git') await rename(join(folder, name), join(old, name));
  return old;
}

/** What cannot be removed does no harm: the next build tries again. */
function removed(path: string): Promise<void> {
  const remove = `require('node:fs').rmSync(require('node:worker_threads').workerData, { recursive: true, force: true })`;
  const thread = new Worker(remove, { eval: true, workerData: path });
  return new Promise((resolve) => thread.once('error', () => {}).once('exit', () => resolve()));
}
