import type { BenchRecords, BenchSession } from './bench.ts';

/** Steps that can be taken back. */
const STEPS = 200;

/** The session with new records; what changed can be undone in one step. The session itself where nothing changed. */
export function recorded(session: BenchSession, records: BenchRecords): BenchSession {
  const { records: old, undo, revision } = session;
  const step = {
    checks: replaced(old.checks, records.checks),
    traits: old.traits,
    measurements: replaced(old.measurements, records.measurements),
    events: replaced(old.events, records.events),
  };
  const isSame =
    [step.checks, step.measurements, step.events].every((part) => Object.keys(part).length === 0) &&
    JSON.stringify(old.traits) === JSON.stringify(records.traits);
  return isSame ? session : { ...session, records, undo: [...undo, step].slice(-STEPS), revision: revision + 1 };
}

/** What stood where something else stands now. */
function replaced<Kind>(old: Readonly<Record<string, Kind>>, now: Readonly<Record<string, Kind>>) {
  const keys = new Set([...Object.keys(old), ...Object.keys(now)]);
  const changed = [...keys].filter((key) => JSON.stringify(old[key]) !== JSON.stringify(now[key]));
  return Object.fromEntries(changed.map((key) => [key, old[key] ?? null]));
}
