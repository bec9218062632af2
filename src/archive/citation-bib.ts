import { plugins } from '@citation-js/core';
import '@citation-js/plugin-bibtex';
import type { Citation } from './citation.ts';
import { cited } from './cited.ts';

/** The citation as BibTeX: @misc, which every style knows, under the id of the trial. */
export function citationBib(citation: Citation): string {
  plugins.config.get('@bibtex').format.useIdAsLabel = true;
  // Names are set as they stand, so what TeX would take for its own is spelt out here; the rest is done there.
  const authors = citation.authors.map((author) => ({ ...author, name: spelt(author.name) }));
  const date = citation.date?.slice(0, 4) ?? null; // BibTeX knows no day
  const note = `Data set, version ${citation.version}`;
  return `${cited({ ...citation, authors, date }, { note })
    .format('bibtex')
    .trim()}\n`;
}

const NAMED: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '^': '\\textasciicircum{}',
  '~': '\\textasciitilde{}',
};

const spelt = (text: string): string => text.replace(/[\\^~{}&%$#_]/g, (letter) => NAMED[letter] ?? `\\${letter}`);
