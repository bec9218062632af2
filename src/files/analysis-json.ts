import type { Analysis } from '../analysis/analysis.ts';
import type { Pooled } from '../analysis/pooled.ts';

/** The analysis of a trial, or of a question, as it is published and as `analyse --json` prints it: the same bytes for the same inputs. */
export function analysisJson(analysis: Analysis | Pooled): string {
  return `${JSON.stringify(analysis, null, 2)}\n`;
}
