type Kind = 'figure' | 'short' | 'text';

/**
 * A table of finished text as HTML, the first column naming the row. Columns of figures alone are set right; figures
 * with a word ("7 trays", "51.2 to 63.4") stay on one line. What most columns are is said once, by the table; written
 * at once and without the end tags that HTML lets out, because a report has thousands of cells.
 */
export function tableHtml(caption: string, head: readonly string[], rows: readonly (readonly string[])[]): string {
  const kinds = head.map((_, column) =>
    kindOf(
      rows.map((row) => row[column] ?? ''),
      column,
    ),
  );
  const count = (kind: Kind) => kinds.slice(1).filter((other) => other === kind).length;
  const [usual = 'text'] = (['text', 'short', 'figure'] as const).toSorted((a, b) => count(b) - count(a));
  const heads = head.map((cell, column) => `<th scope="col"${classOf(kinds[column], 'text')}>${escaped(cell)}`);
  const lines = rows.map((row) => {
    const cells = row.map((cell, column) =>
      column === 0 ? `<th scope="row">${escaped(cell)}` : `<td${classOf(kinds[column], usual)}>${escaped(cell)}`,
    );
    return `<tr>${cells.join('')}`;
  });
  const table = usual === 'text' ? '<table>' : `<table class="${usual}s">`;
  return `${table}<caption>${escaped(caption)}</caption><thead><tr>${heads.join('')}</thead><tbody>${lines.join('')}</tbody></table>`; // prettier-ignore
}

function kindOf(cells: readonly string[], column: number): Kind {
  if (column === 0 || cells.every((cell) => cell === '')) return 'text';
  if (cells.every((cell) => /^[+−-]?[\d.,]*$/u.test(cell))) return 'figure';
  return cells.every((cell) => cell === '' || (/^[−\d]/u.test(cell) && cell.length <= 18)) ? 'short' : 'text';
}

const classOf = (kind: Kind = 'text', usual: Kind): string => (kind === usual ? '' : ` class="${kind}"`);

const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
