import type { Refusal } from '../refusal.ts';
import { didYouMean } from './did-you-mean.ts';
import { shown } from './shown.ts';

/**
 * A name that leads nowhere.
 *
 * @param kind sowing, treatment, lot, person …
 * @param where file in which these are named
 */
export function unknownName(kind: string, name: string, where: string, known: Iterable<string>): Refusal {
  return {
    rule: `unknown-${kind}`,
    message: `there is no ${kind} ${shown(name)} in ${where}`,
    remedy: didYouMean(name, known, kind),
  };
}
