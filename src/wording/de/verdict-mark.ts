import type { Comparison, Result } from '../../analysis/analysis.ts';
import { findingCase } from '../finding-case.ts';
import type { VerdictMark } from '../words.ts';
import { direction } from './direction.ts';

/** Two or three words and a shape; the words claim no more than the sentence does. */
export function verdictMark(result: Result, comparison: Comparison): VerdictMark {
  const up = (comparison.estimate ?? 0) > 0;
  const perhaps = comparison.ceiling === 'probably' ? 'wahrscheinlich ' : '';
  const side = up ? 'above' : 'below';
  switch (findingCase(result, comparison)) {
    case 'matters':
    case 'different':
      return { words: `${perhaps}${direction(result, up)}`, shape: side };
    case 'small':
      return { words: `${perhaps}zu klein, um zu zählen`, shape: 'level' };
    case 'small-not-agreed':
      return { words: `${perhaps}ein kleiner Unterschied`, shape: side };
    case 'same':
      return { words: `${perhaps}gleich genug`, shape: 'level' };
    case 'likeness-not-agreed':
      return { words: 'kein Unterschied gezeigt', shape: 'open' };
    case 'unclear':
      return { words: 'offen', shape: 'open' };
    case 'hardly-any':
      return { words: 'kaum etwas ging auf', shape: 'open' };
    case 'cause-unclear':
    case 'same-cause-unclear':
      return { words: 'Ursache unklar', shape: 'question' };
    case 'untestable':
    case 'no-number':
      return { words: 'lässt sich nicht sagen', shape: 'question' };
  }
}
