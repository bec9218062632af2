import { isMap, isScalar, parseDocument, type Scalar } from 'yaml';
import type { Analysis } from '../../analysis/analysis.ts';
import { FileProblems } from '../../trial/file-problems.ts';
import type { Problem } from '../../trial/problem.ts';
import type { Words } from '../../wording/words.ts';
import { guardedPhrases } from './guarded-phrases.ts';
import { phraseRefusal } from './phrase-refusal.ts';
import { placeIn } from './place-in.ts';

/**
 * Warns of guarded phrases in what the author says in trial.yaml: title, summary, impression (one, or one a lot).
 *
 * @param source text of a trial.yaml that was read without errors
 */
export function checkOwnWords(source: string, file: string, words: Words, analysis: Analysis | null): Problem[] {
  const report = new FileProblems(file);
  for (const [field, node] of ownWords(source)) {
    for (const phrase of guardedPhrases(String(node.value), words, analysis)) {
      const place = placeIn(source, offsetOf(phrase.found, source, node));
      report.warning({ ...place, field }, phraseRefusal(phrase));
    }
  }
  return report.problems;
}

function ownWords(source: string): [field: string, node: Scalar][] {
  const document = parseDocument(source);
  return ['title', 'summary', 'impression'].flatMap((field): [string, Scalar][] => {
    const node = document.get(field, true) as unknown;
    if (isScalar(node)) return [[field, node]];
    if (!isMap(node)) return [];
    return node.items.flatMap(({ key, value }): [string, Scalar][] =>
      isScalar(value) ? [[`${field}.${String(key)}`, value]] : [],
    );
  });
}

/** Where a phrase stands in the file; a folded text may break a line inside it. */
function offsetOf(found: string, source: string, { range }: Scalar): number {
  const [start, end] = range ?? [0, 0];
  const spaced = found.replace(/[.*+?^${}()|[\]\\]/g, '\\$&').replace(/\s+/g, '\\s+');
  const at = source.slice(start, end).search(new RegExp(spaced, 'u'));
  return start + Math.max(0, at);
}
