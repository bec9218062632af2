import { nearest } from './nearest.ts';
import { shown } from './shown.ts';

/** Names that a slip is compared with; a table of many thousand wrong names would otherwise take hours. */
const MOST_COMPARED = 1000;

/** `Did you mean "jar"?` where one candidate is close, else the list of what there is. */
export function didYouMean(word: string, candidates: Iterable<string>, kind: string): string {
  const known: string[] = [];
  for (const candidate of candidates) {
    if (known.length === MOST_COMPARED) break;
    known.push(candidate);
  }
  const close = nearest(word, known);
  if (close !== null) return `Did you mean ${shown(close)}?`;
  if (known.length === 0) return `There is no ${kind} yet.`;
  const listed = known.slice(0, 12).join(', ');
  return `Known here: ${listed}${known.length > 12 ? ', and more' : ''}.`;
}
