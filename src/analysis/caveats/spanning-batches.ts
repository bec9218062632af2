import type { Trial } from '../../trial/trial.ts';
import { lotDesign } from '../units/lot-design.ts';
import type { Pair } from './pair.ts';

/** Batches that are units of a comparison and whose sowings stand in more than one block. */
export function spanningBatches(
  trial: Trial,
  { comparison, treated, control }: Pair,
): readonly { readonly treatment: string; readonly batch: string }[] {
  if (comparison.units.kind !== 'batch') return [];
  const { blockOf } = lotDesign(trial, comparison.lot);
  return [treated, control].flatMap(({ treatment, sowings, values }) =>
    values
      .filter((value) => {
        const members = sowings.filter(({ id }) => value.sowings.includes(id));
        return new Set(members.map(blockOf)).size > 1;
      })
      .map(({ unit }) => ({ treatment, batch: unit })),
  );
}
