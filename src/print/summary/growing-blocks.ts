import { countsTable } from '../../wording/tables/counts-table.ts';
import { repeatFacts } from '../../wording/tables/repeat-facts.ts';
import type { Block } from '../document.ts';
import type { About } from './about.ts';
import { colophon } from './colophon.ts';
import { inTwo } from './in-two.ts';
import { mind } from './mind.ts';
import { opening } from './opening.ts';

/** A trial that nobody may compare yet, or that was given up: its plan and its counts, without treatments. */
export function growingBlocks(about: About): () => Block[] {
  const { trial, words } = about;
  const { ui } = words;
  const { plan } = trial;
  const counted = trial.counts.some(({ germinated }) => germinated !== null);
  const counts = countsTable(words, trial, false);
  const blocks: Block[] = [
    ...opening(about),
    { kind: 'heading', level: 2, text: ui['report.plan'] },
    {
      kind: 'text',
      style: 'plain',
      text: plan ? words.say('report.planFixed', { date: words.date(plan.fixed) }) : ui['report.planNone'],
    },
    ...inTwo(repeatFacts(words, trial)),
    ...(counted
      ? [
          { kind: 'heading', level: 2, text: ui['report.countsSoFar'] } as const,
          {
            kind: 'table',
            caption: null,
            ...counts,
            widths: counts.head.map(() => 'auto' as const),
            figures: counts.head.map((_, index) => index).slice(1),
            rules: 'lines',
            rowHeight: 0,
          } as const,
        ]
      : []),
    ...mind(about),
    ...colophon(about),
  ];
  return () => blocks;
}
