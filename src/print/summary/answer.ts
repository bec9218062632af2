import { shortStorage } from '../../wording/short-storage.ts';
import type { Block } from '../document.ts';
import type { About } from './about.ts';

/** One sentence a comparison of the primary outcome, each with its mark; those beyond `most` only in the table. */
export function answer({ trial, analysis, words }: About, most: number): Block[] {
  const findings = words.inShort(trial, analysis);
  const series = shortStorage(words, trial, analysis);
  const rest = findings.length - most;
  const shown = rest > 1 ? findings.slice(0, most) : findings;
  return [
    { kind: 'heading', level: 2, text: words.ui['report.inShort'] },
    ...series.map(({ mark, sentence }): Block =>
      mark
        ? { kind: 'finding', mark: mark.shape, words: mark.words, name: null, sentence, lead: true }
        : { kind: 'text', style: 'plain', text: sentence },
    ),
    ...shown.map(({ mark, sentence, comparison }): Block => ({
      kind: 'finding',
      mark: mark.shape,
      words: mark.words,
      name: findings.length > 1 ? words.comparisonName(trial, comparison) : null,
      sentence,
      lead: findings.length === 1 && series.length === 0,
    })),
    ...(shown.length < findings.length
      ? [
          {
            kind: 'text',
            style: 'label',
            text: words.say('print.moreFindings', {
              comparisons: words.counted(rest, 'comparison'),
              table: words.ui['print.numbers'],
            }),
          } as const,
        ]
      : []),
  ];
}
