import type { Analysis } from '../../src/analysis/analysis.ts';
import { retestPlan } from '../../src/analysis/storage/retest-plan.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { publishedAnalysis } from '../../src/wording/published-analysis.ts';
import type { Words } from '../../src/wording/words.ts';

function retested(words: Words, trial: Trial, analysis: Analysis): readonly string[] {
  const plan = retestPlan(trial, analysis, 85);
  return plan ? words.retest(trial, plan, 85) : [];
}

/** Every sentence, name and title that a language has for a trial, whatever page prints it. */
export function everythingSaid(words: Words, trial: Trial): string[] {
  const analysis = publishedAnalysis(trial, words);
  return [
    ...words.inShort(trial, analysis).flatMap(({ sentence, mark }) => [sentence, mark.words]),
    ...analysis.results.flatMap((result) => [
      words.outcomeTitle(trial, result),
      words.measureName(result.measure),
      ...words.storageFindings(trial, analysis, result).flatMap(({ sentence, mark }) => [sentence, mark?.words ?? '']),
      ...result.groups.flatMap((group) => [words.groupSentence(trial, result, group), words.units(trial, group)]),
      ...result.comparisons.flatMap((comparison) => [
        words.comparisonSentence(trial, analysis, result, comparison),
        words.headline(trial, analysis, result, comparison),
        words.comparisonName(trial, comparison),
        words.difference(comparison.estimate, result),
        ...words.leftOut(trial, result, comparison),
      ]),
    ]),
    ...words.planChanges(analysis),
    ...analysis.caveats.flatMap((caveat) => [
      caveat.text,
      words.caveat(trial, analysis, caveat).reason,
      words.caveatName(caveat.id),
    ]),
    ...words.trust(trial, analysis).flatMap(({ question, answerWords, detail }) => [question, answerWords, detail]),
    ...words.cannotTell(trial, analysis),
    ...words.impression(trial, analysis).flatMap(({ impression, counts }) => [impression, counts]),
    ...words.moisture(trial, analysis),
    ...words.storageSeries(trial, analysis),
    ...retested(words, trial, analysis),
    ...words.notices(trial, []).flatMap(({ title, sentences }) => [title, ...sentences]),
    ...words.methods(trial, analysis).flatMap(({ title, plain }) => [title, ...plain]),
  ];
}
