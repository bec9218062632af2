import { analyse } from '../../src/analysis/analyse.ts';
import type { Answer } from '../../src/analysis/pooling/answer.ts';
import { poolQuestion } from '../../src/analysis/pooling/pool-question.ts';
import type { Pooled } from '../../src/analysis/pooled.ts';
import type { Question, Trial } from '../../src/trial/trial.ts';
import { germinationTrial } from './make-trial.ts';

/** Germinated of seeds in each sowing, by treatment. */
export type Counts = Parameters<typeof germinationTrial>[0];

export const answerOf = (trial: Trial, origin: Answer['origin'] = null): Answer => ({
  trial,
  analysis: analyse(trial),
  origin,
});

export const entryOf = (
  trial: string,
  parts: Partial<Question['trials'][number]> = {},
): Question['trials'][number] => ({
  trial,
  outcome: null,
  lot: null,
  treatment: null,
  control: null,
  ...parts,
});

/** A question about germination that names these trials, by the ids they have. */
export const questionOf = (
  trials: readonly (string | Question['trials'][number])[],
  parts: Partial<Question> = {},
): Question => ({
  id: 'jars',
  title: 'Jar or packet',
  question: 'Does the jar keep seed better?',
  measure: 'germination',
  matters: 10,
  trials: trials.map((entry) => (typeof entry === 'string' ? entryOf(entry) : entry)),
  ...parts,
});

/** One lot, `packet` against `jar`, sown on the day that the trial's number gives. */
export const trialOf = (id: string, counts: Counts, parts: Partial<Trial> = {}): Trial =>
  germinationTrial(counts, { id, title: `Trial ${id}`, sown: '2026-04-04', ...parts });

/** Trials named by one question, put together. */
export function pool(trials: readonly Trial[], parts: Partial<Question> = {}): Pooled {
  const answers = new Map(trials.map((trial) => [trial.id, answerOf(trial)]));
  return poolQuestion(questionOf([...answers.keys()], parts), answers);
}

/** Four trials that agree: two with three jars of each, two with one. */
export const FOUR: readonly Trial[] = [
  trialOf('a', { packet: [[36, 50], [39, 50], [37, 50]], jar: [[44, 50], [46, 50], [43, 50]] }), // prettier-ignore
  trialOf('b', { packet: [[18, 25]], jar: [[22, 25]] }),
  trialOf('c', { packet: [[30, 40], [31, 40], [27, 40]], jar: [[35, 40], [36, 40], [34, 40]] }), // prettier-ignore
  trialOf('d', { packet: [[20, 30]], jar: [[26, 30]] }),
];
