import type { Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import type { UiKey, Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';

/** The survival lines of one lot for readers with statistics: a row a quantity, a column a treatment. */
export function linesTable(words: Words, trial: Trial, { storage = [] }: Result, lot: string): TextTable {
  const { ui } = words;
  const lines = storage.filter((line) => line.lot === lot);
  const number = (value: number | null | undefined, digits = 3) =>
    value === null || value === undefined ? '' : words.number(value, digits);
  const row = (key: UiKey, cell: (line: (typeof lines)[number]) => string) => [ui[key], ...lines.map(cell)];
  const rows = [
    row('storage.halfLife', ({ halfLife }) =>
      halfLife ? words.quantity(halfLife.estimate, 'years') : ui['table.none'],
    ),
    row('storage.fieller', ({ halfLife }) =>
      halfLife ? words.say('stats.limits', { lower: number(halfLife.lower, 2), upper: number(halfLife.upper, 2) }) : '',
    ),
    row('storage.ki', ({ ki, se }) => withError(number(ki), number(se?.ki))),
    row('storage.slope', ({ slope, se }) => withError(number(slope), number(se?.slope))),
    row('storage.sigma', ({ sigma }) => number(sigma, 2)),
    row('stats.phi', ({ dispersion }) => number(dispersion?.phi, 2)),
    row('stats.phiDf', ({ dispersion }) => number(dispersion?.df, 0)),
    row('stats.phiUsed', ({ dispersion }) => number(dispersion?.used, 2)),
    row('stats.dfUsed', ({ dispersion }) => number(dispersion?.dfUsed, 0)),
    row('table.units', ({ units }) => words.number(units)),
  ];
  return {
    head: [ui['table.value'], ...lines.map(({ treatment }) => words.treatmentLabel(trial, treatment))],
    rows: rows.filter(([, ...cells]) => cells.some((cell) => cell !== '')),
  };

  function withError(value: string, error: string): string {
    return value === '' || error === '' ? value : words.say('storage.withError', { value, error });
  }
}

/** The lines of one lot against each other: one slope, one line; no rows where that was not tested. */
export function lineTestsTable(words: Words, { lines = [] }: Result, lot: string): TextTable {
  const { ui } = words;
  const tested = lines.filter((line) => line.lot === lot && line.p !== null);
  return {
    head: [ui['stats.test'], 'F', ui['stats.df'], ui['stats.p'], ui['stats.pAdjusted']],
    rows: tested.map(({ test, statistic, df, p, pAdjusted }) => [
      ui[`storage.${test}`],
      words.number(statistic ?? 0, 2),
      df === null ? '' : `${words.number(df[0])}; ${words.number(df[1])}`,
      words.pValue(p ?? 1),
      words.pValue(pAdjusted ?? 1),
    ]),
  };
}
