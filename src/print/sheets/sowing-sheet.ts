import type { Sowing } from '../../trial/trial.ts';
import { repeatFacts } from '../../wording/tables/repeat-facts.ts';
import type { Width } from '../document.ts';
import { inTwo } from '../summary/in-two.ts';
import { codeOf } from './code-of.ts';
import { inBenchOrder } from './in-bench-order.ts';
import { sheetDocument } from './sheet-document.ts';
import type { Sheet, SheetTrial } from './sheet.ts';
import { showsTreatments } from './shows-treatments.ts';

/** What goes where and how many seeds: a row a container in the order of the bench, ticked off as it is sown. */
export function sowingSheet(about: SheetTrial): Sheet {
  const { trial, words } = about;
  const { ui } = words;
  const named = showsTreatments(trial);
  const columns: readonly { head: string; width: Width; cell(sowing: Sowing): string | null }[] = [
    { head: ui['table.block'], width: { share: 2 }, cell: ({ block }) => block },
    { head: ui['sheet.position'], width: { share: 2 }, cell: ({ position }) => position },
    { head: ui['sheet.label'], width: { share: 2 }, cell: codeOf },
    { head: ui['sheet.lot'], width: { share: 4 }, cell: ({ lot }) => words.lotName(trial, lot) },
    {
      head: ui['sheet.treatment'],
      width: { share: 4 },
      cell: ({ treatment }) => (named && treatment !== null ? words.treatmentLabel(trial, treatment) : null),
    },
    { head: ui['table.batch'], width: { share: 2 }, cell: ({ batch }) => (named ? batch : null) },
    { head: ui['sheet.seeds'], width: { mm: 14 }, cell: ({ seeds }) => (seeds === null ? null : words.number(seeds)) },
  ];
  const shown = columns.filter(({ cell }) => trial.sowings.some((sowing) => cell(sowing) !== null));
  const seed = trial.plan?.copy['seed'];
  return {
    file: 'sowing-sheet.pdf',
    document: sheetDocument(about, ui['sheet.sowing'], [
      ...(named ? [] : [{ kind: 'text', style: 'strong', text: ui['sheet.sower'] } as const]),
      ...inTwo(repeatFacts(words, trial)),
      ...(typeof seed === 'string' || typeof seed === 'number'
        ? [{ kind: 'text', style: 'label', text: words.say('sheet.seed', { seed }) } as const]
        : []),
      {
        kind: 'table',
        caption: null,
        head: [...shown.map(({ head }) => head), ui['sheet.sownOn'], ui['sheet.sownBy']],
        rows: inBenchOrder(trial.sowings).map((sowing) => [...shown.map(({ cell }) => cell(sowing) ?? ''), '', '']),
        widths: [...shown.map(({ width }) => width), { mm: 24 }, { mm: 20 }],
        figures: [],
        rules: 'boxes',
        rowHeight: 7,
      },
    ]),
  };
}
