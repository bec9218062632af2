import { isMap, isScalar, parseDocument, type Scalar } from 'yaml';
import { FileProblems } from '../../trial/file-problems.ts';
import type { Problem } from '../../trial/problem.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';
import type { TrialData } from './check-components.ts';
import { guardedPhrases } from './guarded-phrases.ts';
import { phraseRefusal } from './phrase-refusal.ts';
import { placeIn } from './place-in.ts';

/**
 * Warns of guarded phrases in what the author says in trial.yaml: title, summary, impression (one, or one a lot).
 *
 * @param source text of a trial.yaml that was read without errors
 */
export function checkOwnWords(source: string, file: string, words: Words, data: TrialData): Problem[] {
  if (!said(data.trial).some((text) => guardedPhrases(text, words, data).length > 0)) return [];
  const report = new FileProblems(file);
  for (const [field, node] of ownWords(source)) {
    for (const phrase of guardedPhrases(String(node.value), words, data)) {
      const place = placeIn(source, offsetOf(phrase.found, source, node));
      report.warning({ ...place, field }, phraseRefusal(phrase));
    }
  }
  return report.problems;
}

/** The same texts as they were read: places are looked for only where one holds such a phrase. */
function said({ title, summary, impression }: Trial): string[] {
  const impressions = typeof impression === 'string' ? [impression] : Object.values(impression ?? {});
  return [title, summary ?? '', ...impressions];
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
