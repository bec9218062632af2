import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { glob, type Loader } from 'astro/loaders';
import { contentFolder } from './content-folder.ts';

/**
 * The authors' own words, by trial. They are compiled when the page is made, so that what cannot be
 * compiled stops the build. What Astro kept from an earlier build is thrown away first: the same text in
 * another content folder would be looked for in the folder of that build.
 */
export function proseLoader(): Loader {
  const loader = glob({
    base: pathToFileURL(join(contentFolder(), 'trials')).href,
    pattern: '*/report.{md,mdx}',
    generateId: ({ entry }) => entry.split('/')[0] ?? entry,
    deferRender: true,
  });
  return {
    ...loader,
    load: async (context) => {
      context.store.clear();
      await loader.load(context);
    },
  };
}
