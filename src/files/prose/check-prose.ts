import { analyse } from '../../analysis/analyse.ts';
import type { Analysis } from '../../analysis/analysis.ts';
import { FileProblems } from '../../trial/file-problems.ts';
import type { Problem } from '../../trial/problem.ts';
import { decodeText } from '../../trial/text/decode-text.ts';
import type { Trial } from '../../trial/trial.ts';
import { wordsFor } from '../../wording/words-for.ts';
import { proseProblems } from '../prose-problems.ts';
import { checkComponents } from './check-components.ts';
import { checkPhrases } from './check-phrases.ts';
import { readProse } from './read-prose.ts';

/**
 * Everything that there is to say about an author's text: code in it, components that do not fit the trial, claims that
 * the data do not carry, phrases that nothing supports.
 *
 * @param file     path as the author knows it, ending in .md or .mdx
 * @param trial    null where its files have errors: then nothing is compared with the data
 * @param language of the site, as in site.yaml
 */
export function checkProse(bytes: Uint8Array, file: string, trial: Trial | null, language: string): Problem[] {
  const report = new FileProblems(file);
  const decoded = decodeText(bytes);
  if ('rule' in decoded) {
    report.error({ line: null, column: null, cell: null, field: null }, decoded);
    return report.problems;
  }
  const source = decoded.text.replace(/^\uFEFF/, '');
  const { tree, problems } = readProse(source, file);
  if (tree === null) return problems;
  const words = wordsFor(language);
  const analysis: Analysis | null = trial && analyse(trial);
  if (trial && analysis) checkComponents(tree, trial, analysis, words, report);
  checkPhrases(tree, source, words, analysis, report);
  return [...proseProblems(tree, file), ...report.problems].toSorted(
    (a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0),
  );
}
