import type { Analysis, Comparison, Result, Test } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import type { MethodId } from '../../method-ids.ts';
import { comparisonName } from '../comparison-name.ts';
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
          p && `${number(p.arrangements)} Anordnungen, ${p.exact ? 'alle' : 'zufällig gezogen'}: p ${pValue(p.p)}`,
      );
    case 'detectable':
      return each(({ detectable }, result) =>
        detectable === null ? null : `ein Unterschied von ${detectableText(detectable, result)}, in 4 von 5 Fällen`,
      );
    case 'many':
      return each(({ test }) =>
        test?.pAdjusted == null ? null : `p ${pValue(test.p)}, angepasst ${pValue(test.pAdjusted)}`,
      );
    case 'verdict':
      return analysis.results.map((result) => `${outcomeTitle(result)}: ${findingMargin(trial, result)}`);
    case 'lots':
      return each(
        ({ lotsDiffer: f }) =>
          f &&
          `ob sich die Partien unterscheiden: F ${number(f.statistic, 2)} mit ${f.df[0]} und ${number(f.df[1], 1)} Freiheitsgraden, p ${pValue(f.p)}`,
      );
    case 'storage':
      return analysis.results.flatMap((result) =>
        (result.storage ?? []).flatMap(({ lot, treatment, dispersion }) => {
          const where = trial.lots.length > 1 ? `, ${lotName(trial, lot)}` : '';
          return dispersion ? [`${label(trial, treatment)}${where}: ${dispersionText(dispersion)}.`] : [];
        }),
      );
    case 'software':
      return [`Berechnet mit Fairsown ${analysis.software.version}.`];
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
        return `${sentence(lots)}${those.length > 1 ? ' jeweils' : ''}: ${text}.`;
      });
      return `${title}${pair}. ${alike.join(' ')}`;
    });
  });
}

const pairOf = (trial: Trial, comparison: Comparison): string =>
  [pairName(trial, comparison), ...(comparison.stored === null ? [] : [storedName(comparison.stored)])].join(', ');

const freedom = (df: number): string => `${number(df)} ${df === 1 ? 'Freiheitsgrad' : 'Freiheitsgraden'}`;

function dispersionText({ phi, df, used, dfUsed }: NonNullable<Comparison['dispersion']>): string {
  const measured = phi === null ? 'φ ließ sich nicht messen' : `φ ${number(phi, 2)} mit ${freedom(df)}`;
  return `${measured}; verwendet φ* ${number(used, 2)} mit ${freedom(dfUsed)}`;
}

function testText({ method, statistic, df, p, pAdjusted }: Test): string {
  const of =
    typeof df === 'number'
      ? `t ${number(statistic, 2)} mit ${number(df, 1)} Freiheitsgraden`
      : `F ${number(statistic, 2)} mit ${number(df[0])} und ${number(df[1])} Freiheitsgraden`;
  const adjusted = pAdjusted === null || pAdjusted === p ? '' : ` (angepasst ${pValue(pAdjusted)})`;
  return `${testName(method)}: ${of}, p ${pValue(p)}${adjusted}`;
}

function tippingText({ rho, note }: NonNullable<Comparison['tipping']>): string {
  if (note === 'already')
    return 'der Bereich schließt die Null ein, selbst wenn Samen einer Schale einander so unähnlich wären wie Samen verschiedener Schalen';
  if (note === 'never' || rho === null)
    return 'der Bereich ließe die Null aus, was auch immer die Schalen gemeinsam haben';
  return `der Bereich schließt die Null ein, sobald die Samen einer Schale eine Korrelation von ${number(rho, 3)} haben`;
}
