import type { Outcome } from '../../trial/trial.ts';
import type { Block } from '../document.ts';
import { codeOf } from './code-of.ts';
import { inBenchOrder } from './in-bench-order.ts';
import { sheetDocument } from './sheet-document.ts';
import type { Sheet, SheetTrial } from './sheet.ts';

const PLANTS = 10;

/** A table a trait: a row a container, a box a plant; null where the trial measures no plants. */
export function measuringSheet(about: SheetTrial): Sheet | null {
  const { trial, words } = about;
  const { ui } = words;
  const traits = trial.outcomes.filter(({ measure }) => measure === 'trait');
  if (traits.length === 0) return null;
  return {
    file: 'measuring-sheet.pdf',
    document: sheetDocument(
      about,
      ui['sheet.measuring'],
      traits.flatMap((outcome, index) => [...(index > 0 ? [{ kind: 'page' } as const] : []), ...blocksOf(outcome)]),
      true,
    ),
  };

  function blocksOf({ column, day }: Outcome): Block[] {
    const name = column ?? words.measureName('trait');
    const unit = trial.traits.find((trait) => trait.column === column)?.unit;
    return [
      {
        kind: 'heading',
        level: 2,
        text:
          typeof day === 'number'
            ? words.say('sheet.measure', { column: name, day: words.number(day) })
            : words.say('sheet.measureAnyDay', { column: name }),
      },
      { kind: 'text', style: 'label', text: unit ? words.say('sheet.unit', { unit }) : ui['sheet.unitOpen'] },
      {
        kind: 'table',
        caption: null,
        head: [
          ui['sheet.label'],
          ui['sheet.position'],
          ...Array.from({ length: PLANTS }, (_, index) => words.say('sheet.plant', { n: index + 1 })),
        ],
        rows: inBenchOrder(trial.sowings).map((sowing) => [codeOf(sowing), sowing.position ?? '']),
        widths: [{ mm: 24 }, { mm: 24 }, ...Array.from({ length: PLANTS }, () => ({ share: 1 }))],
        figures: [],
        rules: 'boxes',
        rowHeight: 8,
      },
    ];
  }
}
