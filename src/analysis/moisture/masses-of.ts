import type { Weighing } from '../../trial/trial.ts';

/** The weighings of the same seeds: one batch and repeat of a lot under a treatment. */
export interface Masses {
  readonly treatment: string | null;
  readonly batch: string | null;
  readonly repeat: string | null;
  readonly before: Weighing | null;
  readonly after: Weighing | null;
  readonly dry: Weighing | null;
}

/**
 * Weighings of one lot brought together by treatment, batch and repeat, sorted by batch and repeat. Where
 * a stage was weighed more than once, the first `before` and the last of the others stand.
 */
export function massesOf(weighings: readonly Weighing[]): Masses[] {
  const inOrder = weighings.toSorted((a, b) => compare(a.date ?? '', b.date ?? ''));
  const keyOf = ({ treatment, batch, repeat }: Weighing) => JSON.stringify([treatment, batch ?? '', repeat ?? '']);
  return [...Map.groupBy(inOrder, keyOf)]
    .toSorted(([a], [b]) => compare(a, b))
    .map(([, [first, ...others]]) => {
      const rows = first === undefined ? others : [first, ...others];
      const last = (stage: Weighing['stage']) => rows.findLast((row) => row.stage === stage) ?? null;
      return {
        treatment: first?.treatment ?? null,
        batch: first?.batch ?? null,
        repeat: first?.repeat ?? null,
        before: rows.find(({ stage }) => stage === 'before') ?? null,
        after: last('after'),
        dry: last('oven-dry'),
      };
    });
}

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
