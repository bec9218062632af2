import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';

/**
 * All counts as they were read: a row a sowing, a column a check day; empty where it was not checked.
 *
 * @param withTreatments false while a trial grows: nobody shall see which treatment is ahead
 */
export function countsTable(words: Words, trial: Trial, withTreatments: boolean): TextTable {
  const days = [...new Set(trial.counts.map(({ day }) => day))].sort((a, b) => a - b);
  const counted = new Map(trial.counts.map(({ sowing, day, germinated }) => [`${day} ${sowing}`, germinated]));
  const severalLots = trial.lots.length > 1;
  return {
    names: 1 + Number(severalLots) + Number(withTreatments),
    head: [
      ...(severalLots ? [words.ui['table.lot']] : []),
      ...(withTreatments ? [words.ui['table.treatment']] : []),
      words.ui['table.sowing'],
      words.ui['table.seeds'],
      ...days.map((day) => words.say('table.onDay', { day: words.number(day) })),
    ],
    rows: trial.sowings.map((sowing) => [
      ...(severalLots ? [words.lotName(trial, sowing.lot)] : []),
      ...(withTreatments ? [sowing.treatment === null ? '' : words.treatmentLabel(trial, sowing.treatment)] : []),
      sowing.id,
      sowing.seeds === null ? '' : words.number(sowing.seeds),
      ...days.map((day) => {
        const count = counted.get(`${day} ${sowing.id}`);
        return count === null || count === undefined ? '' : words.number(count);
      }),
    ]),
  };
}
