import type { Pair } from './evidence.ts';

/**
 * Whether a factor (place, scorer, day …) keeps the two treatments apart, so that it could explain their
 * difference as well as the treatment: no value is shared by both, and the values gather sowings, that is, all
 * sowings of one treatment share a value or every value holds two sowings or more. (Where each sowing has a value
 * of its own, as trays with numbered places have, nothing is shared and nothing follows.)
 *
 * @param treated one list a sowing: the values it has (several scorers, say)
 * @param control the same
 * @returns the values of each in the order met; null where they are not kept apart or a sowing has none recorded
 */
export function separation<T>(
  treated: readonly (readonly T[])[],
  control: readonly (readonly T[])[],
): Pair<T[]> | null {
  const all = [...treated, ...control];
  if (treated.length === 0 || control.length === 0 || all.some((values) => values.length === 0)) return null;

  const values = { treatment: [...new Set(treated.flat())], control: [...new Set(control.flat())] };
  if (values.treatment.some((value) => values.control.includes(value))) return null;

  const isShared = (sowings: readonly (readonly T[])[], value: T) => sowings.every((own) => own.includes(value));
  const holdsTwo = (value: T) => all.filter((own) => own.includes(value)).length >= 2;
  const gathers =
    values.treatment.some((value) => isShared(treated, value)) ||
    values.control.some((value) => isShared(control, value)) ||
    [...values.treatment, ...values.control].every(holdsTwo);
  return gathers ? values : null;
}
