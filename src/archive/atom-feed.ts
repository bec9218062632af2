export interface FeedEntry {
  /** Permanent and of this entry alone; an address. */
  readonly id: string;
  readonly title: string;
  /** Address of the page. */
  readonly link: string;
  /** ISO date: `2026-05-09`. */
  readonly date: string;
  readonly authors: readonly string[];
  readonly summary: string;
  readonly categories: readonly string[];
}

export interface Feed {
  readonly title: string;
  readonly language: string;
  /** Address of the site. */
  readonly home: string;
  /** Address of the feed itself. */
  readonly self: string;
  readonly rights: string;
  readonly entries: readonly FeedEntry[];
}

/**
 * An Atom feed, the newest entry first. Dates are those of the entries; a feed without any stands at the beginning of
 * 1970, because no clock is asked.
 *
 * Source: RFC 4287 (Nottingham and Sayre 2005), sections 4.1.1, 4.1.2 and 4.2 for what a feed and an entry must hold.
 */
export function atomFeed({ title, language, home, self, rights, entries }: Feed): string {
  const sorted = entries.toSorted((a, b) => compare(b.date, a.date) || compare(a.id, b.id));
  const lines = [
    '<?xml version="1.0" encoding="utf-8"?>',
    `<feed xmlns="http://www.w3.org/2005/Atom" xml:lang="${escaped(language)}">`,
    element('title', title),
    element('id', home),
    `<link rel="alternate" type="text/html" href="${escaped(home)}"/>`,
    `<link rel="self" type="application/atom+xml" href="${escaped(self)}"/>`,
    element('updated', moment(sorted[0]?.date ?? '1970-01-01')),
    element('rights', rights),
    `<author>${element('name', title)}</author>`,
    ...sorted.flatMap(entryLines),
    '</feed>',
  ];
  return `${lines.join('\n')}\n`;
}

function entryLines({ id, title, link, date, authors, summary, categories }: FeedEntry): string[] {
  return [
    '<entry>',
    element('title', title),
    element('id', id),
    `<link rel="alternate" type="text/html" href="${escaped(link)}"/>`,
    element('updated', moment(date)),
    ...authors.map((name) => `<author>${element('name', name)}</author>`),
    ...categories.map((term) => `<category term="${escaped(term)}"/>`),
    element('summary', summary),
    '</entry>',
  ];
}

const element = (name: string, text: string) => `<${name}>${escaped(text)}</${name}>`;
const moment = (date: string) => `${date}T00:00:00Z`;
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

const SIGNS: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };
/** Text as XML takes it: letters that XML 1.0 forbids become a replacement sign. */
const escaped = (text: string) =>
  text
    .toWellFormed()
    .replace(/[^\P{Cc}\t\n\r]|[\uFFFE\uFFFF]/gu, '\uFFFD')
    .replace(/[&<>"]/g, (sign) => SIGNS[sign] ?? sign);
