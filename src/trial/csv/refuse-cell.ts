import type { Refusal } from '../refusal.ts';
import { shown } from '../text/shown.ts';

const LONGEST_CELL = 10_000;

/** Why no cell of any column may hold this, or null: formulas, spreadsheet errors, cells too long to be typed. */
export function refuseCell(text: string): Refusal | null {
  if (text.length > LONGEST_CELL) {
    return {
      rule: 'cell-too-long',
      message: `this cell holds ${text.length} characters; at most 10,000 are read`,
      remedy: 'Shorten it; a quotation mark that was never closed can swallow the rows below.',
    };
  }
  const start = text.trim();
  if (/^=./.test(start)) {
    return {
      rule: 'formula',
      message: `found the formula ${shown(text)} in place of its result`,
      remedy: 'Paste the value over the formula (paste special: values) and save again.',
    };
  }
  if (/^#(REF|N\/A|DIV\/0|NAME\?|VALUE|NUM|NULL|SPILL|CALC)!?$|^#+$|^Err:\d+$/i.test(start)) {
    return {
      rule: 'spreadsheet-error',
      message: `found the spreadsheet error ${shown(text)}`,
      remedy: 'Mend the cell in the spreadsheet, or write NC where there is no value, and save again.',
    };
  }
  return null;
}
