import type { Caveat } from '../../analysis/analysis.ts';
import { caveatLines } from '../../wording/tables/caveat-lines.ts';
import type { Block } from '../document.ts';
import type { About } from './about.ts';

const WEIGHTS = ['serious', 'caution', 'note'] as const;

/** What limits the answer: serious caveats and cautions in full, lots alike in one line, notes by name; those of another outcome say so. */
export function limits({ trial, analysis, words }: About, inFull: boolean): Block[] {
  const { ui } = words;
  const sorted = WEIGHTS.flatMap((weight) => analysis.caveats.filter((caveat) => caveat.weight === weight));
  const named = [...Map.groupBy(sorted, ({ id, weight }) => `${weight} ${id}`).values()];
  const told = named.filter(([first]) => inFull && first?.weight !== 'note');
  const nameOf = ({ id, weight }: Caveat) => `${words.caveatName(id)} (${ui[`weight.${weight}`]})`;
  const onlyNamed = named.filter((group) => !told.includes(group)).flatMap(([first]) => (first ? [nameOf(first)] : []));
  const linesOf = (caveats: readonly Caveat[]) =>
    [...Map.groupBy(caveats, ({ outcome }) => outcome)].flatMap(([outcome, about]) => {
      const other = analysis.results.find((result) => result.outcome === outcome && !result.primary);
      const lines = caveatLines(words, trial, about);
      return other ? lines.map((line) => `${words.outcomeTitle(trial, other)}: ${line}`) : lines;
    });
  return [
    { kind: 'heading', level: 3, text: ui['report.limits'] },
    ...told.flatMap(([first, ...more]): Block[] =>
      first
        ? [
            { kind: 'text', style: 'strong', text: nameOf(first) },
            ...linesOf([first, ...more]).map((text): Block => ({ kind: 'text', style: 'label', text })),
          ]
        : [],
    ),
    ...onlyNamed.map((text): Block => ({ kind: 'text', style: 'label', text })),
    ...(named.length === 0 ? [{ kind: 'text', style: 'label', text: ui['report.caveatsNone'] } as const] : []),
  ];
}
