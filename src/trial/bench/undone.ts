import type { BenchSession } from './bench.ts';

/** The session with its last step taken back; itself where there is none. */
export function undone(session: BenchSession): BenchSession {
  const { records, undo, revision } = session;
  const step = undo.at(-1);
  if (step === undefined) return session;
  return {
    ...session,
    records: {
      checks: restored(records.checks, step.checks),
      traits: step.traits,
      measurements: restored(records.measurements, step.measurements),
      events: restored(records.events, step.events),
    },
    undo: undo.slice(0, -1),
    revision: revision + 1,
  };
}

function restored<Kind>(
  now: Readonly<Record<string, Kind>>,
  before: Readonly<Record<string, Kind | null>>,
): Record<string, Kind> {
  const kept = Object.entries({ ...now, ...before }).flatMap(([key, value]) =>
    value === null ? [] : [[key, value] as const],
  );
  return Object.fromEntries(kept);
}
