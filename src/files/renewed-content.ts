import { resolve, sep } from 'node:path';
import type { AstroIntegration } from 'astro';
import { contentFolder } from './content-folder.ts';
import { FROM_CONTENT } from './loader.ts';
import { requestOverlap } from './request-overlap.ts';

/** Where Astro keeps, for its pages, what the loaders gave it. */
const STORE = resolve('.astro/data-store.json');

/** For so long, in milliseconds, Astro takes a change of that file for its own writing. */
const ECHO = 1100;

/**
 * While `astro dev` runs: what is saved in the content folder is read at once and shown in the pages that are open. A mistake
 * is said in the terminal and over the page, in the words of `check`; the pages keep the last good data, and show an author's text
 * as it is.
 */
export const renewedContent = (): AstroIntegration => ({
  name: 'renewed-content',
  hooks: {
    'astro:server:setup': ({ server, refreshContent, logger }) => {
      const content = contentFolder() + sep;
      const code = resolve('src') + sep;
      const overlap = requestOverlap(server, STORE);
      let isCodeChanged = false;
      let isTextChanged = false; // pages read an author's text themselves
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
        overlap.begin();
        try {
          await refreshContent?.({ loaders: FROM_CONTENT, context });
          if (overlap.end()) setTimeout(() => server.watcher.emit('change', STORE), ECHO);
          // What the collections hold may be as it was.
          if (mistake !== null || isTextChanged) server.ws.send({ type: 'full-reload', path: '*' });
          [mistake, isTextChanged] = [null, false];
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
      server.watcher.on('all', (_, changed) => {
        if (changed.startsWith(code)) isCodeChanged = true;
        if (!changed.startsWith(content)) return;
        if (/[/\\]report\.mdx?$/.test(changed)) isTextChanged = true;
        void renew();
      });
    },
  },
});
