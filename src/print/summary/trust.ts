import type { Block } from '../document.ts';
import type { About } from './about.ts';

/** How far to trust it: the same questions as on the page, a row each. */
export function trust({ trial, analysis, words, repeatedBy }: About): Block[] {
  return [
    { kind: 'heading', level: 2, text: words.ui['report.trust'] },
    {
      kind: 'table',
      caption: null,
      head: [words.ui['print.question'], words.ui['print.answer'], words.ui['print.detail']],
      rows: words
        .trust(trial, analysis, repeatedBy)
        .map(({ question, answerWords, detail }) => [question, answerWords, detail]),
      widths: [{ mm: 48 }, { mm: 21 }, { share: 1 }],
      figures: [],
      rules: 'lines',
      rowHeight: 0,
    },
  ];
}
