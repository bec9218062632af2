import type { Block, PrintDocument } from '../../src/print/document.ts';

/** A page to print with these blocks, complete. */
export const makeDocument = (blocks: readonly Block[], parts: Partial<PrintDocument> = {}): PrintDocument => ({
  title: 'Leaves',
  language: 'en-GB',
  authors: [],
  date: null,
  paper: 'a4',
  turned: false,
  density: 'close',
  head: ['Bench', 'Summary'],
  foot: 'https://example.org',
  pageOf: ['Page ', ' of ', ''],
  pictures: {},
  blocks,
  ...parts,
});
