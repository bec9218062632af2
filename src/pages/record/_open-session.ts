import type { BenchSession, BenchTrial, RecordedDay } from '../../trial/bench/bench.ts';

/** A session with how it is being recorded: kept with it, so that a reload goes on where it stopped. */
export interface OpenSession extends BenchSession {
  readonly entry: {
    readonly when: RecordedDay;
    readonly how: BenchTrial['counts'];
    readonly scorer: string | null;
  };
}
