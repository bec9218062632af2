import { nearest } from './nearest.ts';
import { shown } from './shown.ts';

/** `Did you mean "jar"?` where one candidate is close, else the list of what there is. */
export function didYouMean(word: string, candidates: Iterable<string>, kind: string): string {
  const known = [...candidates];
  const close = nearest(word, known);
  if (close !== null) return `Did you mean ${shown(close)}?`;
  if (known.length === 0) return `There is no ${kind} yet.`;
  const listed = known.slice(0, 12).join(', ');
  return `Known here: ${listed}${known.length > 12 ? `, and ${known.length - 12} more` : ''}.`;
}
