import type { Analysis } from '../../../../analysis/analysis.ts';
import { differencesOf, type Figure } from '../../../../archive/differences.ts';
import type { Trial } from '../../../../trial/trial.ts';
import type { UiKey, Words } from '../../../../wording/words.ts';

const KINDS: readonly (readonly [path: string, key: UiKey])[] = [
  ['estimate', 'recheck.estimate'],
  ['interval.lower', 'recheck.lower'],
  ['interval.upper', 'recheck.upper'],
  ['test.p', 'recheck.p'],
];

/** The figures that a report leads with, each with its place in analysis.json and a name to read it by. */
export function figureRows(
  words: Words,
  trial: Trial,
  analysis: Analysis,
): readonly (Figure & { readonly name: string })[] {
  return analysis.results.flatMap((result) => {
    const title = words.outcomeTitle(trial, result);
    const groups = result.groups.map(({ lot, treatment, stored }) => {
      const label = treatment === null ? null : words.treatmentLabel(trial, treatment);
      const time = stored === null ? null : `${words.number(stored)} ${words.unitName('years')}`;
      return [words.lotName(trial, lot), label, time].filter((part) => part !== null).join(', ');
    });
    const comparisons = result.comparisons.map((comparison) => words.comparisonName(trial, comparison));
    return [...figures('groups', result.groups, groups), ...figures('comparisons', result.comparisons, comparisons)];

    function figures(list: string, entries: readonly unknown[], names: readonly string[]) {
      return entries.flatMap((entry, index) => {
        const alone = { results: [{ outcome: result.outcome, [list]: [entry] }] };
        const all = differencesOf(alone, alone).figures;
        return KINDS.flatMap(([ending, key]) => {
          const figure = all.find(({ path }) => path.endsWith(`].${ending}`));
          return figure ? [{ ...figure, name: `${title}. ${names[index]}: ${words.ui[key]}` }] : [];
        });
      });
    }
  });
}
