import type { Words } from '../wording/words.ts';
import type { Check } from './germination-course.ts';
import { roundedShare } from './value-text.ts';

/** Seeds up of 100 sown. */
export const share = ({ germinated, seeds }: Check): number => (100 * germinated) / seeds;

/** The share as written at the end of a line: whole, but never 0 or 100 unless it is. */
export function shareText(check: Check, words: Words): string {
  const { value, digits } = roundedShare(share(check));
  return words.number(value, digits);
}

/** The corners of one line: from nothing on the day of sowing through the checks. Each carries what its line looks like. */
export function stepLine<Look extends object>(line: string, checks: readonly Check[], look: Look) {
  const points = checks.map((check) => ({ day: check.day, share: share(check) }));
  const all = checks[0]?.day === 0 ? points : [{ day: 0, share: 0 }, ...points];
  return all.map((point) => ({ ...look, line, ...point }));
}

/** The flat parts of one line: from each check to the next. */
export function treads<Look extends object>(checks: readonly Check[], look: Look) {
  return checks.slice(0, -1).map((check, index) => ({
    ...look,
    day: check.day,
    until: checks[index + 1]?.day ?? check.day,
    share: share(check),
  }));
}

/** The upright parts of one line: from the share before each check, at first nothing, to the share found. */
export function risers<Look extends object>(checks: readonly Check[], look: Look) {
  return checks.map((check, index) => {
    const before = checks[index - 1];
    return { ...look, day: check.day, from: before ? share(before) : 0, share: share(check) };
  });
}
