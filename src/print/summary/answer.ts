import { shortStorage } from '../../wording/short-storage.ts';
import type { Block } from '../document.ts';
import type { About } from './about.ts';

/** One sentence a comparison of the primary outcome, each with its mark; those beyond `most` only in the table. */
export function answer({ trial, analysis, words }: About): (most: number) => Block[] {
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
  return (most) => {
    const rest = findings.length - most;
    if (rest <= 1) return [...first, ...findings];
    const text = words.say('print.moreFindings', {
      comparisons: words.counted(rest, 'comparison'),
      table: words.ui['print.numbers'],
    });
    return [...first, ...findings.slice(0, most), { kind: 'text', style: 'label', text }];
  };
}
