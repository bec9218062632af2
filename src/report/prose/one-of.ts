import { didYouMean } from '../../trial/text/did-you-mean.ts';
import { wrongAttribute } from './wrong-attribute.ts';

/**
 * The value of a component's attribute, where it is one of those allowed.
 *
 * @param place component and attribute as the author wrote them: `<Result lot>`
 * @param given what the author gave; null or undefined: the first of those allowed
 * @throws {Error} saying what was given, what is allowed, and what was probably meant; without a stack
 */
export function oneOf<T extends string>(place: string, given: string | null | undefined, allowed: readonly T[]): T {
  const wanted = given ?? allowed[0];
  const found = allowed.find((value) => value === wanted);
  if (found !== undefined) return found;
  throw wrongAttribute(
    `${place}: found ${JSON.stringify(given ?? '')}; allowed: ${allowed.join(', ') || 'nothing, as this trial has none'}. ` +
      didYouMean(given ?? '', allowed, 'choice'),
  );
}
