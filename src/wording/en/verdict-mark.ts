import type { Comparison, Result } from '../../analysis/analysis.ts';
import { findingCase } from '../finding-case.ts';
import type { VerdictMark } from '../words.ts';
import { direction } from './direction.ts';

/** Two or three words and a shape; the words claim no more than the sentence does. */
export function verdictMark(result: Result, comparison: Comparison): VerdictMark {
  const up = (comparison.estimate ?? 0) > 0;
  const probably = comparison.ceiling === 'probably';
  const side = up ? 'above' : 'below';
  switch (findingCase(result, comparison)) {
    case 'matters':
    case 'different': {
      const plain = direction(result, up);
      return { words: probably ? `probably ${plain.replace('came up ', '')}` : plain, shape: side };
    }
    case 'small':
      return { words: probably ? 'probably too small to matter' : 'too small to matter', shape: 'level' };
    case 'small-not-agreed':
      return { words: probably ? 'probably a small difference' : 'a small difference', shape: side };
    case 'same':
      return { words: probably ? 'probably alike' : 'alike enough', shape: 'level' };
    case 'likeness-not-agreed':
      return { words: 'no difference shown', shape: 'open' };
    case 'unclear':
      return { words: 'not settled', shape: 'open' };
    case 'hardly-any':
      return { words: 'hardly any came up', shape: 'open' };
    case 'cause-unclear':
    case 'same-cause-unclear':
      return { words: 'cause unclear', shape: 'question' };
    case 'untestable':
    case 'no-number':
      return { words: 'cannot tell', shape: 'question' };
  }
}
