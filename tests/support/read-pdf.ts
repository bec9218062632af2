import { getDocumentProxy } from 'unpdf';

export interface ReadPdf {
  /** Text of each page, blanks run together, soft breaks and isolates left out. */
  readonly pages: readonly string[];
  readonly text: string;
  readonly language: string | null;
  readonly title: string | null;
  /** Every tag of the structure tree, by page and in reading order: `Table`, `TH`, `Figure` … */
  readonly tags: readonly string[];
  /** Text alternatives of figures. */
  readonly alternatives: readonly string[];
}

interface Node {
  readonly role?: string;
  readonly alt?: string;
  readonly children?: readonly Node[];
}

/** What a screen reader finds in a PDF. */
export async function readPdf(bytes: Uint8Array): Promise<ReadPdf> {
  const pdf = await getDocumentProxy(Uint8Array.from(bytes)); // keeps what it is given
  const pages: string[] = [];
  const nodes: Node[] = [];
  for (let number = 1; number <= pdf.numPages; number++) {
    const page = await pdf.getPage(number);
    const { items } = await page.getTextContent();
    pages.push(plain(items.map((item) => ('str' in item ? item.str + (item.hasEOL ? ' ' : '') : '')).join('')));
    nodes.push(...flat(((await page.getStructTree()) ?? {}) as Node));
  }
  const { info } = await pdf.getMetadata();
  const { Language = null, Title = null } = info as { Language?: string; Title?: string };
  return {
    pages,
    text: pages.join(' '),
    language: Language,
    title: Title,
    tags: nodes.flatMap(({ role }) => role ?? []),
    alternatives: nodes.flatMap(({ alt }) => (alt === undefined ? [] : [plain(alt)])),
  };
}

const flat = (node: Node): Node[] => [node, ...(node.children ?? []).flatMap(flat)];

/** Blanks run together; what breaks long words or isolates directions left out. */
export const plain = (text: string): string =>
  text
    .replace(/[\u200B\u2066-\u2069]/g, '')
    .replace(/\s+/g, ' ')
    .trim();
