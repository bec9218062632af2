import { resolve, sep } from 'node:path';
import type { AstroIntegration } from 'astro';
import { contentFolder } from './content-folder.ts';
import { FROM_CONTENT } from './loader.ts';

/**
 * While `astro dev` runs: what is saved in the content folder is read at once and shown in the pages that are open. A mistake
 * is said in the terminal and over the page, in the words of `check`; the pages keep the last good data.
 */
export const renewedContent = (): AstroIntegration => ({
  name: 'renewed-content',
  hooks: {
    'astro:server:setup': ({ server, refreshContent, logger }) => {
      const content = contentFolder() + sep;
      const code = resolve('src') + sep;
      let isCodeChanged = false;
      let mistake: string | null = null;
      let [isRunning, isDue] = [false, false];

      /** A file that changes while the folder is read may have been read before: then all is read once more. */
      async function renew(): Promise<void> {
        isDue = true;
        if (isRunning) return;
        isRunning = true;
        while (isDue) {
          isDue = false;
          await renewOnce();
        }
        isRunning = false;
      }

      async function renewOnce(): Promise<void> {
        const context = { isCodeChanged };
        isCodeChanged = false;
        try {
          await refreshContent?.({ loaders: FROM_CONTENT, context });
          const wasMistaken = mistake !== null;
          mistake = null;
          if (wasMistaken) server.ws.send({ type: 'full-reload', path: '*' }); // nothing may have changed in the end
        } catch (error) {
          mistake = error instanceof Error ? error.message : String(error);
          logger.error(mistake);
          say();
        }
      }

      function say(): void {
        if (mistake !== null) server.ws.send({ type: 'error', err: { message: mistake, stack: '' } });
      }

      server.ws.on('connection', say); // pages that are opened later, too
      server.watcher.add(contentFolder());
      server.watcher.on('all', (_event, changed) => {
        if (changed.startsWith(code)) isCodeChanged = true;
        if (changed.startsWith(content)) void renew();
      });
    },
  },
});
