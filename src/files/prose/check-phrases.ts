import type { FileProblems } from '../../trial/file-problems.ts';
import type { Words } from '../../wording/words.ts';
import type { ProseNode } from '../prose-node.ts';
import type { TrialData } from './check-components.ts';
import { guardedPhrases } from './guarded-phrases.ts';
import { phraseRefusal } from './phrase-refusal.ts';
import { placeIn } from './place-in.ts';
import { runningTexts } from './running-texts.ts';

/** Says which guarded phrases an author's text holds: a warning each, inside a claim an error. */
export function checkPhrases(
  tree: ProseNode,
  source: string,
  words: Words,
  data: TrialData | null,
  report: FileProblems,
): void {
  for (const { text, offsets, claimed } of runningTexts(tree, source)) {
    for (const phrase of guardedPhrases(text, words, data)) {
      const inClaim = claimed.slice(phrase.start, phrase.end).some(Boolean);
      const place = placeIn(source, offsets[phrase.start] ?? 0);
      if (inClaim) report.error(place, phraseRefusal(phrase, true));
      else report.warning(place, phraseRefusal(phrase));
    }
  }
}
