import type { Result } from '../../analysis/analysis.ts';
import { isWaterLost } from '../is-water-lost.ts';
import { differenceWords } from './difference-words.ts';

/** The way in which the treatment differs, in two or three words: "mehr aufgegangen", "früher", "höher". */
export function direction({ measure, column, unit }: Pick<Result, 'measure' | 'column' | 'unit'>, up: boolean): string {
  if (measure === 'germination') return up ? 'mehr aufgegangen' : 'weniger aufgegangen';
  if (measure === 'spread') return up ? 'weniger gleichmäßig' : 'gleichmäßiger';
  if (measure === 'maguire') return up ? 'höhere Rate' : 'niedrigere Rate';
  if (isWaterLost({ unit })) return up ? 'verlor mehr Wasser' : 'verlor weniger Wasser';
  if (measure === 'moisture') return up ? 'feuchter' : 'trockener';
  const words = differenceWords(measure, column, unit);
  return up ? words.up : words.down;
}
