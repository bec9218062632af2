import type { ProseNode } from '../prose-node.ts';
import { ownText } from './text-of.ts';

/** A piece of running text with the place of each letter in the source. */
export interface RunningText {
  readonly text: string;
  /** Offset in the source by letter of `text`. */
  readonly offsets: readonly number[];
  /** Whether each letter stands inside a claim. */
  readonly claimed: readonly boolean[];
}

const BLOCKS = new Set([
  'root',
  'paragraph',
  'heading',
  'tableCell',
  'listItem',
  'blockquote',
  'mdxJsxFlowElement',
  'footnoteDefinition',
]);
const WORDED = ['alt', 'title'] as const;

/**
 * Everything in an author's text that a reader reads, paragraph by paragraph, across emphasis and links; the
 * text of pictures and titles is a piece of its own.
 */
export function runningTexts(tree: ProseNode, source: string): RunningText[] {
  const texts: RunningText[] = [];
  gather(tree, false, { text: '', offsets: [], claimed: [] });
  return texts;

  interface Open {
    text: string;
    readonly offsets: number[];
    readonly claimed: boolean[];
  }
  function gather(node: ProseNode, inClaim: boolean, around: Open): void {
    const isBlock = BLOCKS.has(node.type);
    const open: Open = isBlock ? { text: '', offsets: [], claimed: [] } : around;
    if (isBlock) texts.push(open);
    const claimed = inClaim || node.name === 'Claim';
    add(open, ownText(node), startOf(node), claimed);
    for (const given of WORDED) {
      const said = (node as { readonly [name in (typeof WORDED)[number]]?: string | null })[given];
      const apart: Open = { text: '', offsets: [], claimed: [] };
      if (said) texts.push(add(apart, said, startOf(node), claimed));
    }
    for (const { name, value, position } of node.attributes ?? []) {
      const apart: Open = { text: '', offsets: [], claimed: [] };
      if (name === 'title' && typeof value === 'string') {
        texts.push(add(apart, value, position?.start.offset ?? startOf(node), claimed));
      }
    }
    for (const child of node.children ?? []) gather(child, claimed, open);
  }

  /** Letters are looked up in the source one after the other, as escapes and entities are longer there. */
  function add(open: Open, said: string, from: number, claimed: boolean): Open {
    let offset = from;
    for (const letter of said) {
      const found = source.indexOf(letter, offset);
      if (found >= 0 && found - offset < 80) offset = found;
      for (let unit = 0; unit < letter.length; unit += 1) {
        open.offsets.push(offset);
        open.claimed.push(claimed);
      }
      open.text += letter;
      if (found === offset) offset += letter.length;
    }
    return open;
  }
}

const startOf = (node: ProseNode): number => node.position?.start.offset ?? 0;
