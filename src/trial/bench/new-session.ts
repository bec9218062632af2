import type { BenchSession, BenchTrial } from './bench.ts';

/** A trial just opened, with nothing recorded. */
export function newSession(trial: BenchTrial): BenchSession {
  return {
    trial,
    records: { checks: {}, traits: trial.traits, measurements: {}, events: {} },
    undo: [],
    revision: 0,
  };
}
