import { benchMap } from './bench-map.ts';
import { countingSheet } from './counting-sheet.ts';
import { labelSheet } from './label-sheet.ts';
import { measuringSheet } from './measuring-sheet.ts';
import { packetLabels } from './packet-labels.ts';
import { sealedKey } from './sealed-key.ts';
import type { Sheet, SheetTrial } from './sheet.ts';
import { sowingSheet } from './sowing-sheet.ts';

/** Every sheet that a trial has use for, in the order of the work. `pdfOf([sheet.document])` sets one. */
export function sheetsOf(about: SheetTrial): readonly Sheet[] {
  const makers = [sowingSheet, benchMap, labelSheet, countingSheet, measuringSheet, sealedKey, packetLabels];
  return makers.map((make) => make(about)).filter((sheet) => sheet !== null);
}
