import type { Trial } from '../trial/trial.ts';

/** The same function of a trial, worked out once for each trial, which never changes. */
export function onceATrial<Found extends {} | null>(f: (trial: Trial) => Found): (trial: Trial) => Found {
  const known = new WeakMap<Trial, Found>();
  return (trial) => {
    const before = known.get(trial);
    if (before !== undefined) return before;
    const found = f(trial);
    known.set(trial, found);
    return found;
  };
}
