import type { Result } from '../../analysis/analysis.ts';
import { isWaterLost } from '../is-water-lost.ts';
import { differenceWords } from './difference-words.ts';

/** The way in which the treatment differs, in two or three words: "came up more", "earlier", "taller". */
export function direction({ measure, column, unit }: Pick<Result, 'measure' | 'column' | 'unit'>, up: boolean): string {
  if (measure === 'germination') return `came up ${up ? 'more' : 'less'}`;
  if (measure === 'spread') return up ? 'less even' : 'more even';
  if (measure === 'maguire') return up ? 'higher rate' : 'lower rate';
  if (isWaterLost({ unit })) return up ? 'lost more water' : 'lost less water';
  if (measure === 'moisture') return up ? 'moister' : 'drier';
  const words = differenceWords(measure, column, unit);
  return up ? words.up : words.down;
}
