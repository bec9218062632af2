import type { Block } from '../document.ts';
import { codeOf } from './code-of.ts';
import { inBenchOrder } from './in-bench-order.ts';
import { sheetDocument } from './sheet-document.ts';
import type { Sheet, SheetTrial } from './sheet.ts';

/** Labels to cut out, one a container: its code large, its place, the trial. Nothing that tells treatments apart. */
export function labelSheet(about: SheetTrial): Sheet {
  const { trial, words } = about;
  const { ui } = words;
  return {
    file: 'labels.pdf',
    document: sheetDocument(about, ui['sheet.labels'], [
      {
        kind: 'labels',
        columns: 4,
        height: 30,
        labels: inBenchOrder(trial.sowings).map((sowing): Block[] => [
          { kind: 'text', style: 'huge', text: codeOf(sowing) },
          {
            kind: 'text',
            style: 'label',
            text: [sowing.block, sowing.position && `${ui['sheet.position']} ${sowing.position}`]
              .filter(Boolean)
              .join(', '),
          },
          { kind: 'text', style: 'soft', text: trial.id },
        ]),
      },
    ]),
  };
}
