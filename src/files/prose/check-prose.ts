import { FileProblems, WHOLE_FILE } from '../../trial/file-problems.ts';
import type { Problem } from '../../trial/problem.ts';
import { decodeText } from '../../trial/text/decode-text.ts';
import { refuseInvisible } from '../../trial/text/refuse-invisible.ts';
import type { Words } from '../../wording/words.ts';
import { proseProblems } from '../prose-problems.ts';
import { checkComponents, type TrialData } from './check-components.ts';
import { checkPhrases } from './check-phrases.ts';
import { readProse } from './read-prose.ts';

/** What a parser of Markdown reads in a few seconds, whatever stands there. */
const MOST_BYTES = 80_000;

/**
 * Everything that there is to say about an author's text: code in it, components that do not fit the trial, claims that
 * the data do not carry, phrases that nothing supports.
 *
 * @param file path as the author knows it, ending in .md or .mdx
 * @param data the trial, and its analysis, asked for only where something is compared with it; null where the trial's files have errors: then nothing is compared with them
 */
export function checkProse(bytes: Uint8Array, file: string, words: Words, data: TrialData | null): Problem[] {
  const report = new FileProblems(file);
  const decoded = decodeText(bytes);
  if ('rule' in decoded) {
    report.error(WHOLE_FILE, decoded);
    return report.problems;
  }
  if (bytes.length > MOST_BYTES) {
    report.error(WHOLE_FILE, {
      rule: 'file-too-large',
      message: 'the text is longer than 80 kB, some 12,000 words',
      remedy: 'Shorten it; numbers belong into the tables of the trial, pictures into photos/.',
    });
  }
  refuseInvisible(decoded.text, report);
  if (report.hasErrors) return report.problems;
  const source = decoded.text.replace(/^\uFEFF/, '');
  const { tree, problems } = readProse(source, file);
  if (tree === null) return problems;
  if (data) checkComponents(tree, data, words, report);
  checkPhrases(tree, source, words, data, report);
  return [...proseProblems(tree, file), ...report.problems].toSorted(
    (a, b) => (a.line ?? 0) - (b.line ?? 0) || (a.column ?? 0) - (b.column ?? 0),
  );
}
