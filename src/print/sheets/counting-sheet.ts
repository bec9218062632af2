import type { Block } from '../document.ts';
import { codeOf } from './code-of.ts';
import { inBenchOrder } from './in-bench-order.ts';
import { sheetDocument } from './sheet-document.ts';
import type { Sheet, SheetTrial } from './sheet.ts';

/** Days that fit beside one another; more get a second part. */
const DAYS_ABREAST = 12;
/** Columns to be headed by hand where no days are planned. */
const OPEN_DAYS = 10;

/**
 * A row a container in the order of the bench, a column a day, room for date and initials at the head of each. Names no
 * treatment, lot or batch: whoever counts need not know them.
 */
export function countingSheet(about: SheetTrial): Sheet {
  const { trial, words } = about;
  const { ui } = words;
  const { scoring } = trial;
  const days = scoring.days.length > 0 ? scoring.days.map((day) => words.number(day)) : Array(OPEN_DAYS).fill('');
  const parts = Math.ceil(days.length / DAYS_ABREAST);
  const size = Math.ceil(days.length / parts);
  const rules = [
    scoring.germinated && words.say('sheet.whatCounts', { germinated: scoring.germinated }),
    ui[scoring.counts === 'new' ? 'sheet.howNew' : 'sheet.howCumulative'],
    ui['sheet.notChecked'],
    scoring.blind === 'yes' && ui['sheet.blind'],
  ];
  return {
    file: 'counting-sheet.pdf',
    document: sheetDocument(
      about,
      ui['sheet.counting'],
      [
        { kind: 'items', items: rules.filter((rule) => typeof rule === 'string') },
        ...Array.from({ length: parts }, (_, part): Block[] => [
          ...(part > 0 ? [{ kind: 'page' } as const] : []),
          tableOf(days.slice(part * size, (part + 1) * size)),
        ]).flat(),
        { kind: 'text', style: 'strong', text: ui['sheet.mishaps'] },
        emptyLines(4),
      ],
      true,
    ),
  };

  function tableOf(these: readonly string[]): Block {
    const rows = inBenchOrder(trial.sowings).map((sowing) => [
      codeOf(sowing),
      sowing.position ?? '',
      sowing.seeds === null ? '' : words.number(sowing.seeds),
    ]);
    const own = (name: string) => ['', '', name];
    return {
      kind: 'table',
      caption: null,
      head: [
        ui['sheet.label'],
        ui['sheet.position'],
        ui['sheet.seeds'],
        ...these.map((day) => `${ui['sheet.day']} ${day}`.trim()),
      ],
      rows: [own(ui['sheet.date']), own(ui['sheet.initials']), ...rows],
      widths: [{ mm: 24 }, { mm: 24 }, { mm: 15 }, ...these.map(() => ({ share: 1 }))],
      figures: [2],
      rules: 'boxes',
      rowHeight: 8,
    };
  }
}

const emptyLines = (count: number): Block => ({
  kind: 'table',
  caption: null,
  head: [''],
  rows: Array.from({ length: count }, () => ['']),
  widths: [{ share: 1 }],
  figures: [],
  rules: 'lines',
  rowHeight: 8,
});
