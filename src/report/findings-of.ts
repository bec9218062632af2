import type { Analysis } from '../analysis/analysis.ts';
import type { Finding } from '../wording/words.ts';
import type { Words } from '../wording/words.ts';
import type { Published } from './front-page.ts';

const known = new WeakMap<Analysis, readonly Finding[]>();

/** `inShort` of a trial, put into words once for all lists in which it stands: a site has one language. */
export function findingsOf(words: Words, { trial, analysis }: Published): readonly Finding[] {
  const findings = known.get(analysis) ?? words.inShort(trial, analysis);
  known.set(analysis, findings);
  return findings;
}
