import type { ProseNode } from '../prose-node.ts';

/**
 * Raw HTML in Markdown that is one comment and nothing else, as a browser reads it: `-->`, `--!>` and a `>` straight
 * after the opening end it, and whatever follows would be shown.
 */
export const isComment = ({ type, value = '' }: ProseNode): boolean =>
  type === 'html' && /^<!--(?!-?>)(?:(?!--!?>)[^])*-->\s*$/.test(value);
