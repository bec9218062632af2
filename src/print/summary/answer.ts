import { chartTitle } from '../../charts/chart-title.ts';
import { shortStorage } from '../../wording/short-storage.ts';
import type { Block } from '../document.ts';
import type { About } from './about.ts';

/**
 * One sentence a comparison of the primary outcome, each with its mark; where there is no room for all, first how many
 * had which finding.
 *
 * @returns blocks by the most findings in sentences, and whether the tables have all of them
 */
export function answer({ trial, analysis, words }: About): (most: number, complete: boolean) => Block[] {
  const series = shortStorage(words, trial, analysis);
  const inShort = words.inShort(trial, analysis);
  const findings = inShort.map(({ mark, sentence, comparison }): Block => ({
    kind: 'finding',
    mark: mark.shape,
    words: mark.words,
    name: inShort.length > 1 ? words.comparisonName(trial, comparison) : null,
    sentence,
    lead: inShort.length === 1 && series.length === 0,
  }));
  const first: Block[] = [
    { kind: 'heading', level: 2, text: words.ui['report.inShort'] },
    ...series.map(({ mark, sentence }): Block =>
      mark
        ? { kind: 'finding', mark: mark.shape, words: mark.words, name: null, sentence, lead: true }
        : { kind: 'text', style: 'plain', text: sentence },
    ),
  ];
  const result = analysis.results.find(({ primary }) => primary) ?? analysis.results[0];
  const told = inShort.map(({ comparison }) => comparison);
  const counts = result ? chartTitle(trial, analysis, result, told, words) : '';
  return (most, complete) => {
    const rest = findings.length - most;
    if (rest <= 1) return [...first, ...findings];
    const text = words.say(complete ? 'print.moreFindings' : 'print.moreInReport', {
      comparisons: words.counted(rest, 'comparison'),
      table: words.ui['print.numbers'],
    });
    return [
      ...first,
      { kind: 'text', style: 'plain', text: `${counts}.` },
      ...findings.slice(0, most),
      { kind: 'text', style: 'label', text },
    ];
  };
}
