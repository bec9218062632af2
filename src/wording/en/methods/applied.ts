import type { Analysis, Comparison, Result, Test } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import type { MethodId } from '../../method-ids.ts';
import { comparisonName } from '../comparison-name.ts';
import { counted } from '../counted.ts';
import { detectableText } from '../detectable-text.ts';
import { findingMargin } from './finding-margin.ts';
import { unitsOfEach } from '../findings/units-of-each.ts';
import { intervalName } from '../interval-name.ts';
import { label } from '../../label.ts';
import { list } from '../list.ts';
import { lotName } from '../lot-name.ts';
import { lotsName } from '../lots-name.ts';
import { number } from '../number.ts';
import { outcomeTitle } from '../outcome-title.ts';
import { pairName } from '../pair-name.ts';
import { pValue } from '../p-value.ts';
import { sentence } from '../../sentence.ts';
import { storedName } from '../stored-name.ts';
import { testName } from '../test-name.ts';

/**
 * What a method did in this trial, with its numbers; a line for what was compared, in which lots with the same numbers stand
 * together; none where there is nothing to add.
 */
export function applied(id: MethodId, trial: Trial, analysis: Analysis): readonly string[] {
  const each = (line: (comparison: Comparison, result: Result) => string | null) => lines(trial, analysis, line);
  switch (id) {
    case 'unit':
      return each((comparison) => unitsOfEach(trial, comparison));
    case 'dispersion':
      return each(({ dispersion }) => dispersion && dispersionText(dispersion));
    case 'difference':
    case 'means':
      return each(({ interval }, { measure }) =>
        interval && (id === 'difference') === (measure === 'germination') ? intervalName(interval.method) : null,
      );
    case 'score-test':
      return each(({ test }) => test && testText(test));
    case 'one-unit':
      return each(({ tipping }) => tipping && tippingText(tipping));
    case 'permutation':
      return each(
        ({ permutation: p }) =>
          p &&
          `${counted(p.arrangements, 'arrangement')}, ${p.exact ? 'all of them' : 'drawn at random'}: p ${pValue(p.p)}`,
      );
    case 'detectable':
      return each(({ detectable }, result) =>
        detectable === null ? null : `${detectableText(detectable, result)}, 4 times in 5`,
      );
    case 'many':
      return each(({ test }) =>
        test?.pAdjusted == null ? null : `p ${pValue(test.p)}, adjusted ${pValue(test.pAdjusted)}`,
      );
    case 'verdict':
      return analysis.results.map((result) => `${outcomeTitle(result)}: ${findingMargin(trial, result)}`);
    case 'lots':
      return each(
        ({ lotsDiffer: f }) =>
          f &&
          `do the lots differ: F ${number(f.statistic, 2)} on ${f.df[0]} and ${number(f.df[1], 1)} df, p ${pValue(f.p)}`,
      );
    case 'storage':
      return analysis.results.flatMap((result) =>
        (result.storage ?? []).flatMap(({ lot, treatment, dispersion }) => {
          const where = trial.lots.length > 1 ? `, ${lotName(trial, lot)}` : '';
          return dispersion ? [`${label(trial, treatment)}${where}: ${dispersionText(dispersion)}.`] : [];
        }),
      );
    case 'software':
      return [`Worked out with Fairsown ${analysis.software.version}.`];
    default:
      return [];
  }
}

function lines(
  trial: Trial,
  { results }: Analysis,
  line: (comparison: Comparison, result: Result) => string | null,
): readonly string[] {
  return results.flatMap((result) => {
    const title = results.length > 1 ? `${outcomeTitle(result)}, ` : '';
    const told = result.comparisons.flatMap((comparison) => {
      const text = line(comparison, result);
      return text === null ? [] : [{ comparison, text }];
    });
    if (trial.lots.length === 1) {
      return told.map(({ comparison, text }) => `${title}${comparisonName(trial, comparison)}: ${text}.`);
    }
    const pairs = Map.groupBy(told, ({ comparison }) => pairOf(trial, comparison));
    return [...pairs].map(([pair, members]) => {
      const alike = [...Map.groupBy(members, ({ text }) => text)].map(([text, those]) => {
        const lots = list(those.map(({ comparison }) => lotsName(trial, comparison)));
        return `${sentence(lots)}${those.length > 1 ? ' each' : ''}: ${text}.`;
      });
      return `${title}${pair}. ${alike.join(' ')}`;
    });
  });
}

const pairOf = (trial: Trial, comparison: Comparison): string =>
  [pairName(trial, comparison), ...(comparison.stored === null ? [] : [storedName(comparison.stored)])].join(', ');

function dispersionText({ phi, df, used, dfUsed }: NonNullable<Comparison['dispersion']>): string {
  const measured = phi === null ? 'φ could not be measured' : `φ ${number(phi, 2)} on ${number(df)} df`;
  return `${measured}; used φ* ${number(used, 2)} on ${number(dfUsed)} df`;
}

function testText({ method, statistic, df, p, pAdjusted }: Test): string {
  const of =
    typeof df === 'number'
      ? `t ${number(statistic, 2)} on ${number(df, 1)} df`
      : `F ${number(statistic, 2)} on ${number(df[0])} and ${number(df[1])} df`;
  const adjusted = pAdjusted === null || pAdjusted === p ? '' : ` (adjusted ${pValue(pAdjusted)})`;
  return `${testName(method)}: ${of}, p ${pValue(p)}${adjusted}`;
}

function tippingText({ rho, note }: NonNullable<Comparison['tipping']>): string {
  if (note === 'already')
    return 'the range takes in zero even if seeds of a tray were as unlike as seeds of different trays';
  if (note === 'never' || rho === null) return 'the range would leave out zero whatever the trays share';
  return `the range takes in zero once seeds of a tray share a correlation of ${number(rho, 3)}`;
}
