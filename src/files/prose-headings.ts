import { walk, type ProseNode } from './prose-node.ts';

/**
 * Remark plugin: an author's headings start below the section that holds them (h3), whatever they were
 * written as, without skipping a level; their ids cannot meet those of the page.
 */
export function proseHeadings() {
  return (tree: ProseNode): void => {
    const headings = [...walk(tree)].filter(({ type }) => type === 'heading') as (ProseNode & { depth: number })[];
    let written = 0;
    let level = 2;
    headings.forEach((heading, index) => {
      if (heading.depth > written) level = Math.min(level + 1, 6);
      else level = Math.max(3, level - (written - heading.depth));
      written = heading.depth;
      heading.depth = level;
      heading.data = { ...heading.data, hProperties: { ...heading.data?.hProperties, id: `words-${index + 1}` } };
    });
  };
}
