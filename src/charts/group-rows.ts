import type { Group, Result, UnitValue } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import type { TreatmentStyle } from './series-style.ts';
import { storedNote } from './stored-note.ts';
import { treatmentStyle } from './treatment-style.ts';
import { valueText } from './value-text.ts';

/** One group of a lot: its units, its words, how it is drawn. */
export interface GroupRow {
  /** Name of the lot over its first row, where several lots are shown. */
  readonly heading: string | null;
  readonly group: Group;
  readonly units: readonly UnitValue[];
  readonly style: TreatmentStyle;
  readonly label: string;
  /** Storage time, estimate and number of units, what the data fit with. */
  readonly notes: readonly string[];
}

/** The groups of each lot in the order of trial.yaml, each with its units. */
export function groupRows(trial: Trial, result: Result, lots: readonly string[], words: Words): GroupRow[] {
  const order = (group: Group) => trial.treatments.findIndex(({ id }) => id === group.treatment);
  const groupsOf = (lot: string) =>
    result.groups
      .filter((group) => group.lot === lot)
      .sort((a, b) => order(a) - order(b) || (a.stored ?? 0) - (b.stored ?? 0));
  return lots.flatMap((lot) =>
    groupsOf(lot).map((group, index) => ({
      heading: lots.length > 1 && index === 0 ? words.lotName(trial, lot) : null,
      group,
      units: result.values.filter(
        (unit) => unit.lot === lot && unit.treatment === group.treatment && unit.stored === group.stored,
      ),
      style: treatmentStyle(trial, group.treatment),
      label: words.treatmentLabel(trial, group.treatment),
      notes: notesOf(trial, result, group, words),
    })),
  );
}

function notesOf(trial: Trial, result: Result, group: Group, words: Words): string[] {
  const { stored, estimate, interval } = group;
  const said = (value: number | null) => valueText(value, result, words);
  const notes = storedNote(stored, words);
  notes.push(words.say('chart.estimateOf', { estimate: said(estimate), units: words.units(trial, group) }));
  if (interval?.lower != null && interval.upper != null) {
    notes.push(words.say('chart.fromTo', { lower: said(interval.lower), upper: said(interval.upper) }));
  }
  return notes;
}

/** What a unit of these groups is, in one word of the trial: "tray", or "batch". */
export const unitName = (trial: Trial, rows: readonly GroupRow[], words: Words): string =>
  rows.some(({ group }) => group.unit === 'batch') ? words.ui['chart.batch'] : words.unitWord(trial);

/** What the values are, for the axis: "Came up, of 100 seeds sown", "Height on day 21 (mm)". */
export const axisTitle = (trial: Trial, result: Result, words: Words): string =>
  result.measure === 'germination'
    ? words.ui['chart.germinated']
    : words.say('chart.value', { name: words.outcomeTitle(trial, result), unit: words.unitName(result.unit) });
