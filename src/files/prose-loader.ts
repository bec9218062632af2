import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { glob, type Loader } from 'astro/loaders';
import { contentFolder } from './content-folder.ts';

/**
 * The authors' own words, by trial. They are compiled when the page is made, so that what cannot be
 * compiled stops the build. What Astro kept from an earlier build is thrown away first: the same text in
 * another content folder would be looked for in the folder of that build.
 *
 * @param published ids of the trials whose texts are compiled; what stands in others was refused
 */
export function proseLoader(published: () => Promise<readonly string[]>): Loader {
  return {
    name: 'prose',
    load: async (context) => {
      const ids = await published();
      context.store.clear();
      if (ids.length === 0) return;
      const loader = glob({
        base: pathToFileURL(join(contentFolder(), 'trials')).href,
        pattern: ids.map((id) => `${id}/report.{md,mdx}`),
        generateId: ({ entry }) => entry.split('/')[0] ?? entry,
        deferRender: true,
      });
      await loader.load(context);
    },
  };
}
