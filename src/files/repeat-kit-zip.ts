import { repeatKit } from '../archive/repeat-kit.ts';
import { trialToRepeat } from '../archive/trial-to-repeat.ts';
import { zipOf } from '../archive/zip-of.ts';
import { pdfOf } from '../print/pdf-of.ts';
import { sheetsOf } from '../print/sheets/sheets-of.ts';
import type { Site, Trial } from '../trial/trial.ts';
import { wordsFor } from '../wording/words-for.ts';

/** Sheets to write on at the bench; neither names a treatment. The others are made where the repeat is planned. */
const SHEETS = ['counting-sheet.pdf', 'measuring-sheet.pdf'];

/**
 * The repeat kit as a zip: README, the folder of the trial to come, and in it the printable sheets of its fresh layout.
 *
 * @param trial   as it may be told (toldTrial)
 * @param address of the original report
 * @returns null where there is no kit yet
 */
export function repeatKitZip(trial: Trial, address: string, site: Site): Uint8Array | null {
  const words = wordsFor(site.language);
  const kit = repeatKit(trial, address, site.base, words);
  const again = trialToRepeat(trial, address);
  if (kit === null || again === null) return null;
  const encoder = new TextEncoder();
  const texts = [...kit].map(([name, text]) => ({ name, bytes: encoder.encode(text) }));
  const sheets = sheetsOf({ trial: again, site, words })
    .filter(({ file }) => SHEETS.includes(file))
    .map(({ file, document }) => ({ name: `${again.id}/sheets/${file}`, bytes: pdfOf([document]).bytes }));
  return zipOf('repeat-kit', [...texts, ...sheets]);
}
