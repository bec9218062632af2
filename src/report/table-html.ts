/** Letters up to which a cell may stay on one line where the table scrolls. */
const SHORT = 18;
/** Letters from which on a text is read rather than glanced at. */
const LONG = 20;

type Kind = 'figure' | 'short' | 'text';

/** A table of finished text; each row has as many cells as the head. */
export interface ShownTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** How many columns from the first on name a row; 1 where it is not given. A name of rows in a row stands once, over all of them. */
  readonly names?: number | undefined;
  /** True: what columns side by side say alike, and at length, stands once across them. */
  readonly joined?: boolean | undefined;
}

/**
 * A table as HTML. Columns of figures alone are set right; figures with a word ("7 trays", "51.2 to 63.4") stay on one
 * line. What most columns are is said once, by the table; written at once and without the end tags that HTML lets out,
 * because a report has thousands of cells.
 */
export function tableHtml({ caption, head, rows, names = 1, joined = false }: ShownTable): string {
  const kinds = head.map((_, column) =>
    kindOf(
      rows.map((row) => row[column] ?? ''),
      column < names,
    ),
  );
  const count = (kind: Kind) => kinds.slice(names).filter((other) => other === kind).length;
  const [usual = 'text'] = (['text', 'short', 'figure'] as const).toSorted((a, b) => count(b) - count(a));
  // A long head breaks over short cells.
  const classOfHead = (cell: string, kind: Kind | undefined) =>
    kind === 'short' && cell.length > SHORT ? ' class="long"' : classOf(kind, 'text');
  const heads = head.map((cell, column) => `<th scope="col"${classOfHead(cell, kinds[column])}>${escaped(cell)}`);
  const lines = rows.map((row, index) => {
    const named = row.slice(0, names).map((cell, column) => nameOf(cell, rowsNamed(rows, index, names, column)));
    const cells = row.slice(names).map((cell, column, all) => {
      const across = joined ? columnsJoined(all, column) : 1;
      const start = across > 1 ? `<td colspan="${across}"` : '<td';
      return across === 0 ? '' : `${start}${classOf(kinds[names + column], usual)}>${escaped(cell)}`;
    });
    return `<tr>${[...named, ...cells].join('')}`;
  });
  const isShort = rows.every((row) => row.slice(0, names).every(({ length }) => length <= SHORT));
  const classes = [...(usual === 'text' ? [] : [`${usual}s`]), ...(isShort ? ['named'] : [])];
  const table = classes.length > 0 ? `<table class="${classes.join(' ')}">` : '<table>';
  return `${table}<caption>${escaped(caption)}</caption><thead><tr>${heads.join('')}</thead><tbody>${lines.join('')}</tbody></table>`; // prettier-ignore
}

/** How many rows from this one on share its name in a column, and all names before it; 0 where the row above has it already. */
function rowsNamed(rows: ShownTable['rows'], index: number, names: number, column: number): number {
  if (column === names - 1) return 1;
  const isAlike = (row: readonly string[] | undefined) =>
    row !== undefined && row.slice(0, column + 1).every((cell, place) => cell === rows[index]?.[place]);
  if (isAlike(rows[index - 1])) return 0;
  const end = rows.findIndex((row, place) => place > index && !isAlike(row));
  return (end === -1 ? rows.length : end) - index;
}

/** Over how many columns a long text reaches; 0 where the column before has it already. */
function columnsJoined(cells: readonly string[], column: number): number {
  const [cell = ''] = cells.slice(column);
  if (cell.length < LONG) return 1;
  if (cells[column - 1] === cell) return 0;
  const end = cells.findIndex((other, place) => place > column && other !== cell);
  return (end === -1 ? cells.length : end) - column;
}

function nameOf(cell: string, rows: number): string {
  if (rows === 0) return '';
  const tag = cell === '' ? 'td' : 'th scope="row"'; // what has no name is not named
  return `<${tag}${rows > 1 ? ` rowspan="${rows}"` : ''}>${escaped(cell)}`;
}

function kindOf(cells: readonly string[], isName: boolean): Kind {
  if (isName || cells.every((cell) => cell === '')) return 'text';
  if (cells.every((cell) => /^[+−-]?[\d.,]*$/u.test(cell))) return 'figure';
  return cells.every((cell) => cell === '' || (/^[−\d]/u.test(cell) && cell.length <= SHORT)) ? 'short' : 'text';
}

const classOf = (kind: Kind = 'text', usual: Kind): string => (kind === usual ? '' : ` class="${kind}"`);

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
