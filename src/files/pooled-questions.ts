import type { Analysis } from '../analysis/analysis.ts';
import type { Answer } from '../analysis/pooling/answer.ts';
import { poolQuestion } from '../analysis/pooling/pool-question.ts';
import type { Pooled } from '../analysis/pooled.ts';
import type { Question, Site, Trial } from '../trial/trial.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import type { Repeat } from './read-repeats.ts';

export interface PooledQuestion {
  readonly question: Question;
  readonly pooled: Pooled;
}

/** Every question of a site with what its trials say together, those of other sites included. */
export function pooledQuestions(
  { questions, language }: Site,
  trials: readonly { readonly trial: Trial; readonly analysis: Analysis }[],
  repeats: readonly Repeat[],
): readonly PooledQuestion[] {
  const answers = new Map<string, Answer | null>();
  for (const { id, repeated } of repeats) {
    if (repeated === null) continue;
    const { trial, address } = repeated;
    answers.set(id, { trial, analysis: publishedAnalysis(trial, language), origin: { address } });
  }
  for (const { trial, analysis } of trials) answers.set(trial.id, { trial, analysis, origin: null });
  return Object.values(questions).map((question) => ({ question, pooled: poolQuestion(question, answers) }));
}
