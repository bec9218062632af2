import type { Analysis } from '../analysis/analysis.ts';

/** The analysis as it is published and as `analyse --json` prints it: the same bytes for the same inputs. */
export function analysisJson(analysis: Analysis): string {
  return `${JSON.stringify(analysis, null, 2)}\n`;
}
