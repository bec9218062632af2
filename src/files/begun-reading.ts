import { contentFolder } from './content-folder.ts';
import { contentReader, type ContentReader } from './content-reader.ts';

/** Astro loads what fills its collections anew, so that a variable of this file would be another there. */
const begun = globalThis as { fairsownReader?: ContentReader };

/** Begins to read the content while Astro is loaded, which takes a second; what is wrong with it is told to whoever asks. */
export function beginReading(): void {
  const reader = contentReader(contentFolder());
  let first: ReturnType<ContentReader['read']> | undefined = reader.read();
  first.catch(() => {});
  const read = () => {
    const reading = first ?? reader.read();
    first = undefined;
    return reading;
  };
  begun.fairsownReader = { ...reader, read };
}

/** The reader that has begun already, else a new one. */
export const begunReader = (): ContentReader => begun.fairsownReader ?? contentReader(contentFolder());
