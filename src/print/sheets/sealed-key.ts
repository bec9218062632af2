import { codeOf } from './code-of.ts';
import { inBenchOrder } from './in-bench-order.ts';
import { sheetDocument } from './sheet-document.ts';
import type { Sheet, SheetTrial } from './sheet.ts';

/**
 * Which label is which, to be sealed until the last count; null where nothing is hidden, or where the key itself is
 * kept apart from the folder.
 */
export function sealedKey(about: SheetTrial): Sheet | null {
  const { trial, words } = about;
  const { ui } = words;
  const isHidden = trial.scoring.blind === 'yes' || trial.sowings.some(({ label }) => label !== null);
  if (!isHidden || trial.sowings.some(({ treatment }) => treatment === null)) return null;
  return {
    file: 'sealed-key.pdf',
    document: sheetDocument(about, ui['sheet.key'], [
      { kind: 'text', style: 'strong', text: ui['sheet.keepKey'] },
      { kind: 'text', style: 'plain', text: ui['sheet.keySealed'] },
      {
        kind: 'table',
        caption: null,
        head: [ui['sheet.label'], ui['table.sowing'], ui['sheet.position'], ui['sheet.lot'], ui['sheet.treatment']],
        rows: inBenchOrder(trial.sowings).map((sowing) => [
          codeOf(sowing),
          sowing.id,
          [sowing.block, sowing.position].filter(Boolean).join(', '),
          words.lotName(trial, sowing.lot),
          sowing.treatment === null ? '' : words.treatmentLabel(trial, sowing.treatment),
        ]),
        widths: [{ share: 1 }, { share: 1 }, { share: 1.5 }, { share: 2 }, { share: 2 }],
        figures: [],
        rules: 'lines',
        rowHeight: 0,
      },
    ]),
  };
}
