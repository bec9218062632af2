import { shortStorage } from '../../wording/short-storage.ts';
import type { Block } from '../document.ts';
import type { About } from '../summary/about.ts';

/** Findings in sentences; of more than these the address tells. */
const MOST = 3;

/** One trial of a season: question, findings with what limits them most, where to read on. */
export function digestBox({ trial, analysis, words, address }: About): Block {
  const { ui } = words;
  const findings = words.inShort(trial, analysis);
  const series = shortStorage(words, trial, analysis);
  const serious = new Set(analysis.caveats.filter(({ weight }) => weight === 'serious').map(({ id }) => id));
  const more = findings.length - MOST;
  const main: Block[] = [
    { kind: 'heading', level: 2, text: trial.title },
    { kind: 'text', style: 'question', text: trial.question },
    ...series.map(({ mark, sentence }): Block =>
      mark
        ? { kind: 'finding', mark: mark.shape, words: mark.words, name: null, sentence, lead: false }
        : { kind: 'text', style: 'plain', text: sentence },
    ),
    ...findings.slice(0, MOST).map(({ mark, sentence, comparison }): Block => ({
      kind: 'finding',
      mark: mark.shape,
      words: mark.words,
      name: findings.length > 1 ? words.comparisonName(trial, comparison) : null,
      sentence,
      lead: false,
    })),
    ...(findings.length + series.length === 0
      ? [{ kind: 'text', style: 'plain', text: ui[`statusNote.${trial.status}`] } as const]
      : []),
    ...(more > 0
      ? [{ kind: 'text', style: 'label', text: words.say('list.more', { n: words.number(more) }) } as const]
      : []),
    ...(serious.size > 0
      ? [
          {
            kind: 'text',
            style: 'label',
            text: `${ui['report.seriousCaveats']}: ${words.list([...serious].map((id) => words.caveatName(id)))}.`,
          } as const,
        ]
      : []),
  ];
  const beside: Block[] = [
    {
      kind: 'figure',
      picture: qrName(trial.id),
      alt: words.say('print.qr', { address }),
      title: null,
      caption: null,
      width: 24,
      tallest: 24,
    },
    { kind: 'text', style: 'label', text: words.list(trial.authors.map(({ name }) => name)) },
    { kind: 'text', style: 'soft', text: address },
  ];
  return { kind: 'box', whole: true, blocks: [{ kind: 'spread', main, beside }] };
}

/** Name of the picture with a trial's QR code. */
export const qrName = (trial: string): string => `qr-${trial}`;
