import type { TermForms } from '../wording/term-forms.ts';

/** Elements whose text stays as it is: links and headings, drawings, code, and what is pressed. */
const CLOSED = new Set([
  'a',
  'h1',
  'h2',
  'h3',
  'h4',
  'svg',
  'code',
  'pre',
  'summary',
  'script',
  'button',
  'figcaption',
]);
/** Authors' words mean what their author means, and letters of a formula what stands beside it. */
const OWN_WORDS = /\bclass="(?:[^"]* )?(?:prose|question|impression|formula)(?: |")/;
/** A tag, quoted attributes and all; what stands between two tags is text. */
const TAG = /<\/?([a-z][a-z0-9-]*)(?:"[^"]*"|'[^']*'|[^"'>])*>|<!--[^]*?-->/gi;

/**
 * Links the first use of every term of the glossary in the HTML of a report, where the term stands in running text or in
 * a table; later uses stay plain. A longer term keeps those that it contains from being taken out of it.
 *
 * @param html    well-formed HTML as this site writes it, text escaped
 * @param address of a term in the glossary, safe in an attribute
 */
export function linkTerms(html: string, forms: TermForms, address: (id: string) => string): string {
  const usesIn = finderOf(forms);
  const linked = new Set<string>();
  const link = (text: string) => {
    let [shown, at] = ['', 0];
    for (const { id, from, to } of usesIn(text)) {
      if (linked.has(id)) continue;
      linked.add(id);
      shown += `${text.slice(at, from)}<a href="${address(id)}">${text.slice(from, to)}</a>`;
      at = to;
    }
    return shown + text.slice(at);
  };

  const parts: string[] = [];
  let at = 0;
  let closed: { readonly name: string; depth: number } | null = null;
  const tags = new RegExp(TAG);
  for (let tag = tags.exec(html); tag !== null; tag = tags.exec(html)) {
    const text = html.slice(at, tag.index);
    parts.push(closed || text === '' ? text : link(text), tag[0]);
    at = tag.index + tag[0].length;
    closed = after(closed, tag[0], (tag[1] ?? '').toLowerCase());
    if (closed?.name === 'svg') tags.lastIndex = Math.max(at, html.indexOf('</svg>', at)); // thousands of tags
  }
  const rest = html.slice(at);
  return [...parts, closed ? rest : link(rest)].join('');
}

function after(closed: { readonly name: string; depth: number } | null, tag: string, name: string) {
  if (tag.startsWith('<!') || tag.endsWith('/>')) return closed;
  const ends = tag.startsWith('</');
  if (closed === null) {
    return !ends && (CLOSED.has(name) || OWN_WORDS.test(tag)) ? { name, depth: 1 } : null;
  }
  if (name !== closed.name) return closed;
  const depth = closed.depth + (ends ? -1 : 1);
  return depth === 0 ? null : { name, depth };
}

/** Where a text uses a term. */
interface Use {
  readonly id: string;
  readonly from: number;
  readonly to: number;
}

/** Texts that are remembered: most of a report stands in every other report as well. */
const REMEMBERED = 5000;
const finders = new WeakMap<TermForms, (text: string) => readonly Use[]>();

/** Finds all uses of terms in a text, one after the other. */
function finderOf(forms: TermForms): (text: string) => readonly Use[] {
  const ids = Object.keys(forms);
  const each = expressionOf(forms);
  const known = new Map<string, readonly Use[]>();
  const usesIn = (text: string): readonly Use[] =>
    Array.from(text.matchAll(each), ({ 0: whole, index, groups = {} }) => {
      const id = ids.find((_, at) => groups[`t${at}`] !== undefined) ?? '';
      return { id, from: index, to: index + whole.length };
    });
  const remembering = (text: string): readonly Use[] => {
    if (!/\p{L}/u.test(text)) return []; // a number, a gap
    const found = known.get(text) ?? usesIn(text);
    if (known.size >= REMEMBERED) known.clear();
    if (!known.has(text)) known.set(Buffer.from(text).toString(), found); // a copy: a part would hold on to the whole page
    return found;
  };
  const finder = finders.get(forms) ?? remembering;
  finders.set(forms, finder);
  return finder;
}

/** One expression for all terms, in the order in which they are given: a named group each. */
function expressionOf(forms: TermForms): RegExp {
  const each = Object.values(forms).map(({ any, exact }, index) => {
    const either = [...(any ? [`(?i:${any})`] : []), ...(exact ? [exact] : [])].join('|');
    return `(?<t${index}>${either})`;
  });
  // A letter, digit, apostrophe or hyphen on either side makes it another word ("re-check", "don’t"); ".csv" a file's name.
  return new RegExp(`(?<![\\p{L}\\p{N}’'&;-])(?:${each.join('|')})(?![\\p{L}\\p{N}’'-]|\\.\\p{L})`, 'gu');
}
