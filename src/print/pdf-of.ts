import { NodeCompiler, type NodeTypstDocument } from '@myriaddreamin/typst-ts-node-compiler';
import { tmpdir } from 'node:os';
import type { PrintDocument } from './document.ts';
import { faces } from './faces.ts';
import { pagesNeeded } from './pages-needed.ts';
import { plainDocument } from './plain-document.ts';
import { blocksTemplate } from './template/blocks.ts';
import { pageTemplate } from './template/page.ts';

export interface Pdf {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly pages: number;
}

/** A document, or several settings of the same, from roomy to tight. */
export type Settings = readonly PrintDocument[];

/** What was set stays in Typst's memory for so many documents: trials share little but the page. */
const KEPT_FOR = 1;

/** Part of a page by which a setting must need less than one that did not fit. */
const LESS = 0.01;

let compiler: NodeCompiler | undefined;

/**
 * Sets a document as PDF/UA-1: tagged, with our own faces and nobody else's. The same document gives the same
 * bytes on every machine.
 *
 * @param settings the first that by its estimate takes at most so many pages is set, where it takes more the next that
 *   needs less, and so on; no others, as setting takes most of the time that a PDF takes
 * @param most so many pages, else the fewest
 * @throws {Error} where a document cannot be set, or would break PDF/UA-1
 */
export function pdfOf(settings: Settings, most = Infinity): Pdf {
  compiler ??= NodeCompiler.create({
    workspace: tmpdir(), // the template reads no file
    fontArgs: [{ fontBlobs: faces().map(({ bytes }) => bytes) }],
  });
  let best: { readonly set: NodeTypstDocument; readonly title: string } | undefined;
  let bound = most;
  for (const [index, document] of settings.entries()) {
    const needed = most === Infinity ? 0 : pagesNeeded(document);
    if (needed > bound && (best || index < settings.length - 1)) continue;
    const set = setDocument(compiler, document);
    if (!best || set.numOfPages < best.set.numOfPages) best = { set, title: document.title };
    if (set.numOfPages <= most) break;
    bound = needed - LESS; // what needs as much would not fit either
  }
  if (!best) throw new RangeError('pdfOf needs a document, got none');
  const bytes = pdfBytes(compiler, best.set, best.title);
  compiler.evictCache(KEPT_FOR);
  return { bytes, pages: best.set.numOfPages };
}

function setDocument(typst: NodeCompiler, document: PrintDocument): NodeTypstDocument {
  const result = typst.compile({
    mainFileContent: pageTemplate + blocksTemplate,
    inputs: { doc: JSON.stringify(plainDocument(document)) },
  });
  if (result.result !== null) return result.result;
  const error = result.takeError();
  const messages = error ? typst.fetchDiagnostics(error).map(({ message }: { message: string }) => message) : [];
  throw new Error(`“${document.title}” could not be set: ${messages.join('; ')}`);
}

function pdfBytes(typst: NodeCompiler, set: NodeTypstDocument, title: string): Uint8Array<ArrayBuffer> {
  try {
    return new Uint8Array(typst.pdf(set, { pdfStandard: 'ua-1' }));
  } catch (error) {
    throw new Error(`“${title}” would not be PDF/UA-1: ${String(error)}`, { cause: error });
  }
}
