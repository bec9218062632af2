import { statSync } from 'node:fs';
import type { HookParameters } from 'astro';

type Server = HookParameters<'astro:server:setup'>['server'];

/**
 * Tells whether a page was being made while a file was written: such a page may have read the file before, and what it
 * made of it may be taken for the new.
 *
 * @param file that pages read
 */
export function requestOverlap({ middlewares }: Pick<Server, 'middlewares'>, file: string) {
  let [underWay, overlapped] = [0, false];
  let before: number | null | undefined;
  const written = () => statSync(file, { throwIfNoEntry: false })?.mtimeMs ?? null;
  middlewares.use((request, response, next) => {
    if (request.headers.accept?.includes('text/html') || request.url?.endsWith('/')) {
      underWay++;
      if (before !== undefined && written() === before) overlapped = true;
      response.once('close', () => underWay--);
    }
    next();
  });
  return {
    /** From now on the file may be written. */
    begin(): void {
      before = written();
      overlapped = underWay > 0;
    },
    /** Whether a page was begun before it was written, and may have been finished after. */
    end(): boolean {
      const isWritten = written() !== before;
      before = undefined;
      return isWritten && overlapped;
    },
  };
}
