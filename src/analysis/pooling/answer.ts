import type { Question, Trial } from '../../trial/trial.ts';
import type { Analysis } from '../analysis.ts';
import type { Told } from '../pooled.ts';

/** A trial that a question may name. */
export interface Answer {
  readonly trial: Trial;
  readonly analysis: Analysis;
  /** Where it was published on another site and verified from its zip; null for a trial of this site. */
  readonly origin: { readonly address: string | null } | null;
}

/** One entry of a question. */
export type Entry = Question['trials'][number];

/** Who asked and where it can be read; of a trial whose data fail only the name that the question uses. */
export function toldOf({ trial: id }: Entry, answer: Answer | null): Told {
  return {
    trial: id,
    title: answer?.trial.title ?? id,
    growers: answer?.trial.authors.map(({ name }) => name) ?? [],
    sown: answer?.trial.sown ?? null,
    from: answer?.origin?.address ?? null,
    elsewhere: Boolean(answer?.origin),
  };
}
