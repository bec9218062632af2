import { refuseCell } from '../csv/refuse-cell.ts';
import { isMissing } from '../text/is-missing.ts';
import { plainText } from '../text/plain-text.ts';
import { plainLine } from './plain-line.ts';

const LONGEST = 2000;

/** What happened, as typed, in one line, as the files give it back; null: nothing was said. */
export function typedText(text: string): string | null {
  const line = plainLine(plainLine(text).slice(0, LONGEST));
  return isMissing(plainText(line)) || refuseCell(line)?.rule === 'spreadsheet-error' ? null : line;
}
