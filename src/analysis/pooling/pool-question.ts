import { leaveOneOut } from '../../statistics/pooling/leave-one-out.ts';
import { randomEffects } from '../../statistics/pooling/random-effects.ts';
import type { Question } from '../../trial/trial.ts';
import type { Named, Pooled, PooledTrial } from '../pooled.ts';
import { SOFTWARE } from '../software.ts';
import type { Answer } from './answer.ts';
import { answersOf } from './answers-of.ts';
import { mostCommon } from './matched.ts';
import { pooledVerdict } from './pooled-verdict.ts';

/** Fewer trials are shown side by side and not pooled (methods 10). */
const FEWEST = 3;

/**
 * What several trials say to one question (methods 10): random effects over trials that share nothing. The order in
 * which the question names them changes nothing.
 *
 * @param answers by the name that the question uses; null where a trial's data fail
 */
export function poolQuestion(question: Question, answers: ReadonlyMap<string, Answer | null>): Pooled {
  const { trials, leftOut, unreported, unit, valueUnit, column } = answersOf(question, answers);
  const fit = trials.length >= FEWEST ? randomEffects(trials) : null;
  const weighted = trials.map((trial, index) => ({ ...trial, weight: fit?.weights[index] ?? null }));
  return {
    format: 'fairsown-pooled/1',
    question: question.id,
    measure: question.measure,
    unit,
    trials: weighted,
    estimate: fit?.estimate ?? null,
    interval: fit && { level: 0.95, lower: fit.interval.lower, upper: fit.interval.upper, method: fit.interval.method },
    test: fit?.test ?? null,
    prediction: fit?.prediction ?? null,
    nextResult: fit?.nextResult ?? null,
    guarded: fit?.guarded ?? null,
    tau2: fit?.tau2 ?? null,
    i2: fit?.i2 ?? null,
    q: fit?.q ?? null,
    leaveOneOut: trials.length > FEWEST ? withoutEach(trials) : [],
    ...pooledVerdict(weighted, fit?.interval ?? null, question.matters),
    matters: question.matters,
    column,
    valueUnit,
    treatment: named(trials, answers, 'treatment'),
    control: named(trials, answers, 'control'),
    leftOut,
    unreported,
    software: SOFTWARE,
  };
}

const withoutEach = (trials: readonly PooledTrial[]): Pooled['leaveOneOut'] =>
  leaveOneOut(trials).map(({ estimate, interval: { lower, upper } }, index) => ({
    trial: trials[index]?.trial ?? '',
    estimate,
    lower,
    upper,
  }));

/** What most trials call the treatment or the control. */
function named(
  trials: readonly PooledTrial[],
  answers: ReadonlyMap<string, Answer | null>,
  which: 'treatment' | 'control',
): Named | null {
  const names = trials.map((row): Named => {
    const treatments = answers.get(row.trial)?.trial.treatments ?? [];
    return { id: row[which], label: treatments.find(({ id }) => id === row[which])?.label ?? row[which] };
  });
  const id = mostCommon(names.map((name) => name.id));
  const label = mostCommon(names.filter((name) => name.id === id).map((name) => name.label));
  return id === undefined || label === undefined ? null : { id, label };
}
