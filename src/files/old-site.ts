import { lstatSync, mkdirSync, readdirSync, rmdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/**
 * A build writes over what the last one wrote, and removes what is left of that at its end: for a thousand trials this saves
 * the file system seconds. Up to then the old site stays, so a mistake in the content costs nothing. Stands last among those
 * that write.
 */
export function oldSite(): AstroIntegration {
  let folder = '';
  let began = 0n;
  return {
    name: 'old-site',
    hooks: {
      'astro:config:setup': ({ updateConfig }) => {
        updateConfig({ vite: { build: { emptyOutDir: false } } });
      },
      'astro:config:done': ({ config }) => {
        folder = fileURLToPath(config.outDir);
      },
      'astro:build:start': () => {
        mkdirSync(folder, { recursive: true });
        began = now(folder);
      },
      'astro:build:done': () => {
        removeOlder(folder, began, ['.git']);
      },
    },
  };
}

/** The time by the clock of the disk, which need not be the machine's. */
function now(folder: string): bigint {
  const mark = join(folder, `.unfinished-${process.pid}-0`);
  writeFileSync(mark, '');
  const { mtimeNs } = lstatSync(mark, { bigint: true });
  rmSync(mark);
  return mtimeNs;
}

/**
 * Removes files that were last written before `began`, and folders that hold nothing then.
 *
 * @returns whether the folder is empty
 */
function removeOlder(folder: string, began: bigint, kept: readonly string[] = []): boolean {
  let left = 0;
  for (const entry of readdirSync(folder, { withFileTypes: true })) {
    const path = join(folder, entry.name);
    if (kept.includes(entry.name)) left += 1;
    else if (entry.isDirectory()) {
      if (removeOlder(path, began)) rmdirSync(path);
      else left += 1;
    } else if (lstatSync(path, { bigint: true }).mtimeNs < began) rmSync(path);
    else left += 1;
  }
  return left === 0;
}
