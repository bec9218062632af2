import type { Result } from '../analysis/analysis.ts';
import type { UiKey, Words } from '../wording/words.ts';
import { PLOT_WIDTH } from './row-layout.ts';

/** Under the axis of differences: its two directions, and between them what it counts. */
export function differenceWays(result: Pick<Result, 'measure' | 'unit'> | undefined, y: number, words: Words) {
  const [less, more, unit] = axisWords(result, words);
  return [
    { x: 0, y, text: less, align: 'left' },
    { x: PLOT_WIDTH / 2, y, text: unit, align: 'center' },
    { x: PLOT_WIDTH, y, text: more, align: 'right' },
  ];
}

function axisWords(
  result: Pick<Result, 'measure' | 'unit'> | undefined,
  words: Words,
): readonly [less: string, more: string, unit: string] {
  const say = (less: UiKey, more: UiKey, unit: string) => [words.ui[less], words.ui[more], unit] as const;
  switch (result?.measure) {
    case 'germination':
      return say('chart.fewer', 'chart.more', words.ui['chart.perHundred']);
    case 't50':
    case 'mgt':
      return say('chart.earlier', 'chart.later', words.unitName(result.unit));
    default:
      return say('chart.lower', 'chart.higher', words.unitName(result?.unit ?? ''));
  }
}
