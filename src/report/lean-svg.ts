import { markOf, type Mark } from './lean-mark.ts';

/**
 * A chart's SVG for a page, without what changes nothing in the picture: what the page says already (name
 * space, font), names and nests of Vega's groups; marks in a row that look alike share one group or, where they
 * cannot cover each other differently, one path. The order of painting stays. More than half is saved.
 */
export function leanSvg(svg: string): string {
  const open: boolean[] = []; // for each open group: is it kept?
  let lean = '';
  let row: Mark[] = [];
  const add = (token: string) => {
    lean += drawn(row) + token;
    row = [];
  };
  for (const [token, tag = ''] of svg.matchAll(/<(line|path|text)(?: [^>]*)?(?:\/>|>[^<]*<\/\1>)|<[^>]+>|[^<]+/g)) {
    const mark = tag === '' ? null : markOf(token);
    if (mark !== null) {
      if (row[0] && row[0].look !== mark.look) add('');
      row.push(mark);
    } else if (!/^<\/?g\b/.test(token)) add(leanFrame(token));
    else if (!token.endsWith('/>')) {
      const group = leanFrame(token);
      if (token !== '</g>') open.push(group !== '<g>');
      if (token === '</g>' ? open.pop() : open.at(-1)) add(group);
    }
  }
  return lean + drawn(row);
}

/** A group or the picture itself. */
function leanFrame(tag: string): string {
  return tag
    .replace(/ class="(?:mark-[^"]*|marks)"/, '')
    .replace(/ (?:(?:fill|stroke)-)?opacity="1"/g, '')
    .replace(' transform="translate(0,0)"', '')
    .replace(' stroke-miterlimit="4"', '') // what SVG takes anyway
    .replace(/^(<svg.*?) font-family="[^"]*" xmlns="[^"]*"/, '$1');
}

/** Marks that look alike. */
function drawn(row: readonly Mark[]): string {
  const [first, ...more] = row;
  if (!first) return '';
  if (first.joins !== null && row.every(({ joins }) => joins === first.joins)) {
    return `<path${first.look} d="${row.map(({ path }) => path).join('')}"/>`;
  }
  if (more.length === 0 || first.look === '') return row.map((mark) => mark.tag(mark.look)).join('');
  return `<g${first.look}>${row.map((mark) => mark.tag('')).join('')}</g>`;
}
