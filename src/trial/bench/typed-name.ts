import { refuseCell } from '../csv/refuse-cell.ts';
import { isMissing } from '../text/is-missing.ts';
import { plainText } from '../text/plain-text.ts';
import { plainLine } from './plain-line.ts';

const LONGEST = 100;

/** A name as typed (of a person, a plant or a trait), as the files give it back; null: none. */
export function typedName(text: string): string | null {
  const name = plainText(plainLine(plainText(text)).slice(0, LONGEST));
  return isMissing(name) || refuseCell(name)?.rule === 'spreadsheet-error' ? null : name;
}
