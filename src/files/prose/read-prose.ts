import { createProcessor } from '@mdx-js/mdx';
import remarkGfm from 'remark-gfm';
import type { Problem } from '../../trial/problem.ts';
import type { ProseNode } from '../prose-node.ts';
import { mdxMistake } from './mdx-mistake.ts';

const FRONTMATTER = /^\uFEFF?\s*---[ \t]*\r?\n(?:[^]*?\r?\n)?---[ \t]*(?:\r?\n|$)/;

/**
 * The tree of an author's text, from the parser that also compiles it for the site.
 *
 * @param file path as the author knows it; its ending chooses between Markdown and MDX
 * @returns no tree where the text cannot be read, and then why
 */
export function readProse(text: string, file: string): { tree: ProseNode | null; problems: Problem[] } {
  const place = { file, cell: null, field: null, level: 'error' } as const;
  if (FRONTMATTER.test(text)) {
    const found = {
      rule: 'prose-frontmatter',
      message: 'found a block of settings between lines of ---; a report has none',
      remedy: 'Take the block out; what is said of the trial stands in trial.yaml.',
    };
    return { tree: null, problems: [{ ...place, line: 1, column: 1, ...found }] };
  }
  const processor = createProcessor({ format: file.endsWith('.mdx') ? 'mdx' : 'md', remarkPlugins: [remarkGfm] });
  try {
    const tree = processor.parse(text) as ProseNode;
    const line = tooDeepAt(tree);
    return line === null
      ? { tree, problems: [] }
      : { tree: null, problems: [{ ...place, ...TOO_DEEP, line, column: 1 }] };
  } catch (error) {
    if (error instanceof RangeError)
      return { tree: null, problems: [{ ...place, ...TOO_DEEP, line: null, column: null }] };
    return { tree: null, problems: [{ ...place, ...mdxMistake(error) }] };
  }
}

const TOO_DEEP = {
  rule: 'prose-depth',
  message: 'quotes, lists or elements stand within one another too deeply to be read',
  remedy: 'Write them below one another.',
};
/** Each level of a list is two in the tree. */
const DEEPEST = 60;

/** Line of the first thing that lies too deep; layer by layer, because a stack can run out. */
function tooDeepAt(tree: ProseNode): number | null {
  let layer: readonly ProseNode[] = [tree];
  for (let depth = 0; layer.length > 0; depth++) {
    if (depth > DEEPEST) return layer[0]?.position?.start.line ?? null;
    layer = layer.flatMap(({ children = [] }) => children);
  }
  return null;
}
