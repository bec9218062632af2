export type Separator = ',' | ';' | '\t';

const SEPARATORS: readonly Separator[] = ['\t', ';', ','];

/**
 * What separates the cells: the sign that splits the first line with any separator into most cells, outside
 * quotes. A `sep=;` line, which some spreadsheets write first, decides it at once.
 */
export function findSeparator(text: string): { readonly separator: Separator; readonly sepLine: boolean } {
  const [, named] = /^"?sep=([,;\t])"?[ \t]*(\r|\n|$)/i.exec(text) ?? [];
  if (named !== undefined) return { separator: named as Separator, sepLine: true };

  for (const line of text.slice(0, 100_000).split(/\r\n|\r|\n/, 50)) {
    const unquoted = line.replace(/"[^"]*"?/g, '');
    const counts = SEPARATORS.map((separator) => unquoted.split(separator).length - 1);
    const most = Math.max(...counts);
    const separator = SEPARATORS[counts.indexOf(most)];
    if (most > 0 && separator !== undefined) return { separator, sepLine: false };
  }
  return { separator: ',', sepLine: false };
}
