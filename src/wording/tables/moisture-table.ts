import type { Range } from '../../analysis/analysis.ts';
import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';

/** Water lost and moisture, a row a weighing; null where nothing was weighed or known. */
export function moistureTable(words: Words, trial: Trial, analysis: Analysis): TextTable | null {
  if (analysis.moisture.length === 0) return null;
  const { ui } = words;
  const figure = (value: number | null) => (value === null ? ui['table.notKnown'] : words.number(value, 1));
  const limits = (range: Range | null) =>
    range === null || range.lower === null || range.upper === null
      ? ''
      : words.say('stats.limits', { lower: words.number(range.lower, 1), upper: words.number(range.upper, 1) });
  return {
    head: [
      ui['table.lot'],
      ui['table.treatment'],
      ui['table.batch'],
      ui['moisture.waterLost'],
      ui['moisture.range'],
      ui['moisture.before'],
      ui['moisture.after'],
    ],
    rows: analysis.moisture.map((row) => [
      words.lotName(trial, row.lot),
      row.treatment === null ? '' : words.treatmentLabel(trial, row.treatment),
      [row.batch, row.repeat].filter(Boolean).join(', '),
      figure(row.waterLost),
      limits(row.waterLostRange),
      figure(row.moistureBefore),
      figure(row.moistureAfter),
    ]),
  };
}
