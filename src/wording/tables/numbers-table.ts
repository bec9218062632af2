import type { Comparison, Range } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import type { UiKey, Words } from '../words.ts';

export interface TextTable {
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
  /** How many columns from the first on name a row; 1 where it is not given. */
  readonly names?: number;
}

/**
 * Every number behind the comparisons of one outcome, for readers with statistics: a row a quantity, a
 * column a comparison. Quantities that none of the comparisons has are left out; one that only some
 * have stands empty for the others.
 */
export function numbersTable(words: Words, trial: Trial, comparisons: readonly Comparison[]): TextTable {
  const cells = comparisons.map((comparison) => new Map(quantities(words, comparison)));
  const labels = inOneOrder(cells.map((column) => [...column.keys()]));
  return {
    head: [words.ui['table.value'], ...comparisons.map((comparison) => words.comparisonName(trial, comparison))],
    rows: labels.map((label) => [label, ...cells.map((column) => column.get(label) ?? '')]),
  };
}

/** All labels, each after the one that it follows in its own column. */
function inOneOrder(columns: readonly (readonly string[])[]): readonly string[] {
  const all: string[] = [];
  for (const column of columns) {
    for (const [at, label] of column.entries()) {
      if (!all.includes(label)) all.splice(all.indexOf(column[at - 1] ?? '') + 1, 0, label);
    }
  }
  return all;
}

function quantities(words: Words, c: Comparison): readonly (readonly [string, string])[] {
  const { ui } = words;
  const known: (readonly [string, string])[] = [];
  const add = (key: UiKey, text: string | null | undefined) => text && known.push([ui[key], text]);
  const number = (value: number | null | undefined, digits = 3) =>
    value === null || value === undefined ? null : words.number(value, digits);
  const limits = (range: Range | null | undefined, digits = 2) =>
    range && (range.lower !== null || range.upper !== null)
      ? words.say('stats.limits', {
          lower: number(range.lower, digits) ?? '−∞',
          upper: number(range.upper, digits) ?? '∞',
        })
      : null;

  add('table.difference', c.estimate === null ? null : `${number(c.estimate, 2)} ${words.unitName(c.unit)}`);
  add('table.interval', c.interval && limits(c.interval));
  add('stats.method', c.interval && words.intervalName(c.interval.method));
  add('stats.welch', limits(c.welch));
  add('stats.bracket', limits(c.bracket));
  add('table.units', words.say('stats.unitsOf', { treatment: c.units.treatment, control: c.units.control }));
  if (c.dispersion) {
    add('stats.phi', number(c.dispersion.phi));
    add('stats.phiDf', String(c.dispersion.df));
    add('stats.phiUsed', number(c.dispersion.used));
    add('stats.dfUsed', number(c.dispersion.dfUsed, 0));
  }
  if (c.test) {
    const { df } = c.test;
    add('stats.test', words.testName(c.test.method));
    add('stats.statistic', number(c.test.statistic));
    add('stats.df', typeof df === 'number' ? number(df, 2) : `${number(df[0], 0)}; ${number(df[1], 0)}`);
    add('stats.p', words.pValue(c.test.p));
    add('stats.pAdjusted', c.test.pAdjusted === null ? null : words.pValue(c.test.pAdjusted));
  }
  if (c.permutation) {
    add('stats.permutation', words.pValue(c.permutation.p));
    add(
      'stats.arrangements',
      `${words.number(c.permutation.arrangements)} (${ui[c.permutation.exact ? 'stats.exact' : 'stats.drawn']})`,
    );
  }
  const { riskRatio, oddsRatio, cohensH, hedgesG, hodgesLehmann } = c.effects;
  add('stats.riskRatio', number(riskRatio));
  const odds = number(oddsRatio);
  add('stats.oddsRatio', odds && c.halfAdded ? `${odds} (${ui['stats.halfAdded']})` : odds);
  add('stats.cohensH', number(cohensH));
  const g = number(hedgesG?.estimate);
  add('stats.hedgesG', g && limits(hedgesG, 3) ? `${g} (${limits(hedgesG, 3)})` : g);
  add('stats.hodgesLehmann', number(hodgesLehmann, 2));
  if (c.equivalence) {
    const { margin, fixedBeforehand, interval, shown } = c.equivalence;
    const fixed = ui[fixedBeforehand ? 'stats.marginFixed' : 'stats.marginNotFixed'];
    add('stats.margin', `${number(margin, 1)} ${words.unitName(c.unit)} (${fixed})`);
    add('table.interval90', limits(interval));
    add('stats.equivalence', ui[shown ? 'stats.yes' : 'stats.no']);
  }
  add('stats.detectable', c.detectable === null ? null : `${number(c.detectable, 1)} ${words.unitName(c.unit)}`);
  if (c.tipping) {
    const { rho, note } = c.tipping;
    add('stats.tipping', note ? ui[note === 'already' ? 'stats.tippingAlready' : 'stats.tippingNever'] : number(rho));
  }
  if (c.lotsDiffer) {
    const { statistic, df, p } = c.lotsDiffer;
    add('stats.lotsDiffer', `F = ${number(statistic)}; ${df.join(', ')}; p ${words.pValue(p)}`);
  }
  if (c.withLeftOut) {
    const { estimate, interval } = c.withLeftOut;
    add('stats.withLeftOut', [number(estimate, 2), limits(interval)].filter(Boolean).join('; '));
  }
  add('stats.verdict', ui[`verdict.${c.verdict}`]);
  add('stats.ceiling', ui[`ceiling.${c.ceiling}`]);
  add('stats.ceilingFrom', words.list(c.ceilingFrom.map((id) => words.caveatName(id))));
  return known;
}
