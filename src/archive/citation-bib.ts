import type { Citation } from './citation.ts';

/** The citation as BibTeX: @misc, which every style knows; names and title in braces of their own, so that they stay as written. */
export function citationBib({ id, title, authors, publisher, address, doi, date, version }: Citation): string {
  const fields: Readonly<Record<string, string | null>> = {
    author: authors.map(({ name }) => `{${escaped(name)}}`).join(' and '),
    title: `{${escaped(title)}}`,
    year: date?.slice(0, 4) ?? null,
    publisher: escaped(publisher),
    note: `Data set, version ${version}`,
    doi,
    url: address,
  };
  const lines = Object.entries(fields).flatMap(([name, value]) => (value === null ? [] : [`  ${name} = {${value}},`]));
  return `@misc{${id},\n${lines.join('\n')}\n}\n`;
}

const NAMED: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '^': '\\textasciicircum{}',
  '~': '\\textasciitilde{}',
};

/** Letters that mean something to TeX, spelt so that they do not. */
const escaped = (text: string): string => text.replace(/[\\^~{}&%$#_]/g, (letter) => NAMED[letter] ?? `\\${letter}`);
