import { XMLParser, XMLValidator } from 'fast-xml-parser';
import { expect } from 'vitest';

interface Parsed {
  readonly title: string;
  readonly updated: string;
  readonly link: readonly Readonly<Record<string, string>>[];
  readonly entry: readonly { readonly id: string; readonly title: string; readonly updated: string }[];
}

const MANY = ['entry', 'author', 'link', 'category'];
/** RFC 3339, as RFC 4287 section 3.3 asks for, with a capital T and Z. */
const MOMENT = /^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}Z$/;

/**
 * That a text is an Atom feed with everything RFC 4287 requires: one id, title and updated in the feed (4.1.1) and in
 * each entry (4.1.2), an author with a name, ids that are addresses and each other's unlike (4.2.6), a link to itself
 * (4.1.1, should), no two alternates of one kind, a summary or content in each entry.
 */
export function expectAtom(text: string): Parsed {
  expect(XMLValidator.validate(text)).toBe(true);
  const parser = new XMLParser({ ignoreAttributes: false, isArray: (name) => MANY.includes(name) });
  const { feed } = parser.parse(text);
  expect(feed['@_xmlns']).toBe('http://www.w3.org/2005/Atom');
  const entries = feed.entry ?? [];
  for (const each of [feed, ...entries]) {
    for (const name of ['id', 'title', 'updated']) expect(each[name], name).toMatch(/\S/);
    expect(each.updated).toMatch(MOMENT);
    expect(URL.canParse(each.id), each.id).toBe(true);
    expect(each.author.every(({ name }: { name: string }) => name !== '')).toBe(true);
    expect(each.link.filter((link: Record<string, string>) => link['@_rel'] === 'alternate')).toHaveLength(1);
  }
  for (const each of entries) expect(each.summary).toMatch(/\S/);
  expect(feed.link.filter((link: Record<string, string>) => link['@_rel'] === 'self')).toHaveLength(1);
  const ids = [feed, ...entries].map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
  return { ...feed, entry: entries };
}
