import { walk, type ProseNode } from '../prose-node.ts';

/** All that a reader reads of a node, without what components put there. */
export function textOf(node: ProseNode): string {
  return [...walk(node)].map(ownText).join('');
}

/** What one node itself gives to read; a plain value in braces is read as well. */
export function ownText({ type, value, data }: ProseNode): string {
  if (type === 'text' || type === 'inlineCode') return value ?? '';
  if (type === 'break') return '\n';
  if (type !== 'mdxTextExpression' && type !== 'mdxFlowExpression') return '';
  const literal = data?.estree?.body[0]?.expression?.value;
  return typeof literal === 'string' || typeof literal === 'number' ? String(literal) : '';
}
