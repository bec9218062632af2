import { didYouMean } from '../../trial/text/did-you-mean.ts';
import { shown } from '../../trial/text/shown.ts';
import { AttributeError } from './attribute-error.ts';

/**
 * The value of a component's attribute, where it is one of those allowed.
 *
 * @param place component and attribute as the author wrote them: `<Result lot>`
 * @param given what the author gave; null or undefined: the first of those allowed
 * @throws {AttributeError} saying what was given, what is allowed, and what was probably meant
 */
export function oneOf<T extends string>(place: string, given: string | null | undefined, allowed: readonly T[]): T {
  const wanted = given ?? allowed[0];
  const found = allowed.find((value) => value === wanted);
  if (found !== undefined) return found;
  if (allowed.length === 0) {
    throw new AttributeError(`${place}: this trial has nothing to show there`, 'Take the component out.');
  }
  throw new AttributeError(
    `${place}: found ${shown(given ?? '')}; allowed: ${allowed.join(', ')}`,
    didYouMean(given ?? '', allowed, 'choice'),
  );
}
