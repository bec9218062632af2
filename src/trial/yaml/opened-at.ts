import { isCollection, isScalar, visit, type Document } from 'yaml';

/**
 * Where the quotation mark or bracket was opened that the parser missed the end of: the parser itself
 * names the place where it gave up, which may be many lines below. Other places come back as they are.
 */
export function openedAt(document: Document, offset: number): number {
  let opened = offset;
  visit(document, {
    Node: (_key, node) => {
      const quoted = isScalar(node) && (node.type === 'QUOTE_DOUBLE' || node.type === 'QUOTE_SINGLE');
      const bracketed = isCollection(node) && node.flow === true;
      if ((quoted || bracketed) && node.range?.[1] === offset) opened = node.range[0];
    },
  });
  return opened;
}
