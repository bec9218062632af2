import { FileProblems } from '../file-problems.ts';
import type { Problem } from '../problem.ts';
import { readSowings } from '../tables/read-sowings.ts';
import { sowingsOf } from '../tables/sowings-of.ts';
import type { TrialContext } from '../trial-context.ts';
import type { BenchSowing } from './bench.ts';

const CONTEXT: TrialContext = {
  status: 'growing',
  sown: null,
  blind: 'unknown',
  counts: 'cumulative',
  lots: null,
  treatments: null,
  storage: false,
};

/**
 * The sowings of a sowings.csv as whoever counts may see them. A column of treatments, lots or batches is read past:
 * nothing of it is in what is returned.
 *
 * @returns null where an error stands among the problems
 */
export function readBenchSowings(
  name: string,
  bytes: Uint8Array,
): { readonly sowings: readonly BenchSowing[] | null; readonly problems: readonly Problem[] } {
  const report = new FileProblems(name);
  const table = readSowings(bytes, report, CONTEXT);
  const sowings = table ? sowingsOf(table, new Map(), report, CONTEXT) : [];
  const benchSowings = sowings.map(({ id, label, seeds, tray, block, position, sown }) => ({ id, label, seeds, tray, block, position, sown })); // prettier-ignore
  return { sowings: table === null || report.hasErrors ? null : benchSowings, problems: report.problems };
}
