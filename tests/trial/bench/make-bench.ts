import type { BenchSession, BenchSowing, BenchTrial } from '../../../src/trial/bench/bench.ts';
import { newSession } from '../../../src/trial/bench/new-session.ts';
import { recorded } from '../../../src/trial/bench/recorded.ts';
import type { TypedCount } from '../../../src/trial/bench/typed-count.ts';
import { withCount } from '../../../src/trial/bench/with-count.ts';

export const makeBenchSowing = (id: string, parts: Partial<BenchSowing> = {}): BenchSowing => ({
  id,
  label: null,
  seeds: 40,
  tray: null,
  block: null,
  position: null,
  sown: null,
  ...parts,
});

/** Two sowings of 40 seeds, sown on 4 April 2026, nothing recorded. */
export const makeBenchTrial = (parts: Partial<BenchTrial> = {}): BenchTrial => ({
  id: 'leek',
  title: 'Leek',
  sown: '2026-04-04',
  germinated: null,
  counts: 'cumulative',
  days: [5, 8, 11],
  traits: [],
  sowings: [makeBenchSowing('s1', { label: '4S' }), makeBenchSowing('s2', { label: '7K' })],
  ...parts,
});

/** A session with counts typed in this order, as the trial counts them. */
export function counted(
  trial: BenchTrial,
  ...typed: readonly (readonly [sowing: string, day: number, count: TypedCount])[]
): BenchSession {
  return typed.reduce(
    (session, [sowing, day, count]) =>
      recorded(session, withCount(session.records, { sowing, day, typed: count, scorer: null }, trial.counts)),
    newSession(trial),
  );
}
