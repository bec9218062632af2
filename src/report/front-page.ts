import type { Analysis, Comparison, Result } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';

export interface Published {
  readonly trial: Trial;
  readonly analysis: Analysis;
}

export interface FrontPage {
  /** Compared trials, the last finished first. */
  readonly newest: readonly Published[];
  /** Those whose primary outcome gave a verdict that nothing caps. */
  readonly firmest: readonly Published[];
  readonly growing: readonly Published[];
  readonly planned: readonly Published[];
}

/** What stands on the first page; the same trials give the same order. */
export function frontPage(published: readonly Published[]): FrontPage {
  const sorted = [...published].sort((a, b) => compare(lastDay(b), lastDay(a)) || compare(a.trial.id, b.trial.id));
  const withStatus = (status: Trial['status']) => sorted.filter(({ trial }) => trial.status === status);
  const newest = sorted.filter(({ analysis }) => analysis.results.length > 0);
  return {
    newest,
    firmest: newest.filter(({ analysis }) =>
      analysis.results.some(
        (result) => result.primary && result.comparisons.some((comparison) => isFirm(result, comparison)),
      ),
    ),
    growing: withStatus('growing'),
    planned: withStatus('planned'),
  };
}

/** Decided, and capped by no caveat; of stored seed that was tested several times only the last test counts. */
export function isFirm({ comparisons }: Result, { verdict, ceiling, stored }: Comparison): boolean {
  const isLast = comparisons.every((other) => (other.stored ?? 0) <= (stored ?? 0));
  return isLast && ceiling === 'none' && (verdict === 'matters' || verdict === 'different' || verdict === 'same');
}

const lastDay = ({ trial }: Published) => trial.finished ?? trial.sown ?? '';
const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
