import type { Sowing } from '../../trial/trial.ts';

/** Sowings as one walks along the bench: by block, then place (row 2 before row 10), then as listed. */
export function inBenchOrder<Kind extends Pick<Sowing, 'block' | 'position'>>(
  sowings: readonly Kind[],
): readonly Kind[] {
  return [...sowings].sort(
    (a, b) => byNumber.compare(a.block ?? '', b.block ?? '') || byNumber.compare(a.position ?? '', b.position ?? ''),
  );
}

const byNumber = new Intl.Collator('en', { numeric: true });
