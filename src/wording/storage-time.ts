/** In what a time of storage is best said, so that one decimal is enough: how many make a year, and the unit's name. */
export interface StorageTime {
  readonly perYear: number;
  readonly unit: 'years' | 'months' | 'days';
  readonly digits: number;
}

/** @param last the longest time tested, years */
export function storageTime(last: number): StorageTime {
  if (last >= 2) return { perYear: 1, unit: 'years', digits: 1 };
  return last >= 0.25 ? { perYear: 12, unit: 'months', digits: 1 } : { perYear: 365.25, unit: 'days', digits: 0 };
}
