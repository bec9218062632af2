import type { Sowing } from '../../trial/trial.ts';
import type { Block, Table } from '../document.ts';
import { codeOf } from './code-of.ts';
import { inBenchOrder } from './in-bench-order.ts';
import { sheetDocument } from './sheet-document.ts';
import type { Sheet, SheetTrial } from './sheet.ts';
import { showsTreatments } from './shows-treatments.ts';

const PLACE = /^(\d{1,3})-(\d{1,3})$/;
/** Beyond so many, a grid has cells too narrow to be read. */
const MOST_COLUMNS = 16;

/** Where each container stands: a grid where all places are rows and columns, else a list. */
export function benchMap(about: SheetTrial): Sheet {
  const { trial, words } = about;
  const blocks = [...Map.groupBy(inBenchOrder(trial.sowings), ({ block }) => block)];
  const isOneGrid = new Set(trial.sowings.map(({ position }) => position)).size === trial.sowings.length;
  const parts = isOneGrid ? [[null, trial.sowings] as const] : blocks;
  return {
    file: 'bench-map.pdf',
    document: sheetDocument(
      about,
      words.ui['sheet.map'],
      parts.flatMap(([block, sowings]): Block[] => [
        ...(block === null ? [] : [{ kind: 'heading', level: 2, text: block } as const]),
        grid(about, sowings) ?? list(about, sowings),
        { kind: 'text', style: 'soft', text: words.ui['sheet.mapNote'] },
      ]),
      true,
    ),
  };
}

function grid(about: SheetTrial, sowings: readonly Sowing[]): Table | null {
  const places = new Map<string, Sowing>();
  for (const sowing of sowings) {
    const [, row, column] = PLACE.exec(sowing.position ?? '') ?? [];
    if (row === undefined || column === undefined) return null;
    places.set(`${Number(row)}-${Number(column)}`, sowing);
  }
  if (places.size < sowings.length) return null;
  const ends = [...places.keys()].map((place) => place.split('-').map(Number));
  const rows = Math.max(...ends.map(([row = 0]) => row));
  const columns = Math.max(...ends.map(([, column = 0]) => column));
  if (columns > MOST_COLUMNS) return null;
  const numbers = (count: number) => Array.from({ length: count }, (_, index) => index + 1);
  return {
    kind: 'table',
    caption: null,
    head: ['', ...numbers(columns).map(String)],
    rows: numbers(rows).map((row) => [
      String(row),
      ...numbers(columns).map((column) => whatStands(about, places.get(`${row}-${column}`))),
    ]),
    widths: [{ mm: 10 }, ...numbers(columns).map(() => ({ share: 1 }))],
    figures: [],
    rules: 'boxes',
    rowHeight: 16,
  };
}

function list(about: SheetTrial, sowings: readonly Sowing[]): Table {
  const { ui } = about.words;
  return {
    kind: 'table',
    caption: null,
    head: [ui['table.block'], ui['sheet.position'], ui['sheet.label']],
    rows: inBenchOrder(sowings).map((sowing) => [sowing.block ?? '', sowing.position ?? '', whatStands(about, sowing)]),
    widths: [{ share: 1 }, { share: 1 }, { share: 2 }],
    figures: [],
    rules: 'boxes',
    rowHeight: 0,
  };
}

/** The code, and under it lot and treatment where they may be known at the bench. */
function whatStands({ trial, words }: SheetTrial, sowing: Sowing | undefined): string {
  if (!sowing) return '';
  const under = [
    trial.lots.length > 1 ? words.lotName(trial, sowing.lot) : '',
    showsTreatments(trial) && sowing.treatment !== null ? words.treatmentLabel(trial, sowing.treatment) : '',
  ];
  return `${codeOf(sowing)}\n${under.filter(Boolean).join(', ')}`;
}
