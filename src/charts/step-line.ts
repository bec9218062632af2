import type { Check } from './germination-course.ts';

/** One corner of a step line, and how its line looks. */
export type Corner<Look> = Look & { readonly line: string; readonly day: number; readonly share: number };

/** Seeds up of 100 sown. */
export const share = ({ germinated, seeds }: Check): number => (100 * germinated) / seeds;

/** The corners of one line: from nothing on the day of sowing through the checks. */
export function stepLine<Look extends object>(line: string, checks: readonly Check[], look: Look): Corner<Look>[] {
  const points = checks.map((check) => ({ day: check.day, share: share(check) }));
  return (checks[0]?.day === 0 ? points : [{ day: 0, share: 0 }, ...points]).map((point) => ({
    ...look,
    line,
    ...point,
  }));
}
