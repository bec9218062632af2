import { join } from 'node:path';
import { Fragment, jsx, jsxs } from 'astro/jsx-runtime';
import type { AuthorsText } from './authors-text.ts';
import { proseGuard } from './prose-guard.ts';
import { proseHeadings } from './prose-headings.ts';
import { prosePictures } from './prose-pictures.ts';
import { trialFolder } from './trial-folder.ts';

/** What a page shows an author's text with: an element of Astro. */
export type ShownText = (props: { readonly components: Readonly<Record<string, unknown>> }) => unknown;

/**
 * An author's text, compiled when its page is made: no text stays in memory once it is shown, and a page that is kept from the
 * last build compiles none.
 *
 * @param base path of the site, with a slash at its end
 * @throws {DataError} where the text holds code
 */
export async function compiledText({ trial, file, text }: AuthorsText, base: string): Promise<ShownText> {
  const [{ evaluate }, { default: gfm }] = await Promise.all([import('@mdx-js/mdx'), import('remark-gfm')]); // slow to load
  const { default: Content } = await evaluate(
    { path: join(trialFolder(trial), file), value: text }, // the ending chooses between MDX and Markdown
    {
      Fragment,
      jsx,
      jsxs,
      elementAttributeNameCase: 'html',
      tableCellAlignToStyle: false, // the content security policy allows no styles in attributes
      remarkPlugins: [gfm, proseGuard, proseHeadings, [prosePictures, { base }]],
    },
  );
  return Content as ShownText;
}
