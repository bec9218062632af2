import type { Problem } from '../trial/problem.ts';
import { problemText } from '../trial/problem-text.ts';

/** What `check --json` prints. */
export interface CheckJson {
  readonly format: 'fairsown-check/1';
  readonly problems: readonly Problem[];
  readonly errors: number;
  readonly warnings: number;
  /** Ids of trials that the site leaves out for their errors (`on_problem: leave-out`); elsewhere they stop it. */
  readonly left_out: readonly string[];
}

/** What `check` says: one problem a block and a closing count, or the same as JSON. */
export function checkReport(
  problems: readonly Problem[],
  trials: number,
  leftOut: readonly string[] = [],
): { readonly json: CheckJson; readonly text: string } {
  const number = (level: Problem['level']) => problems.filter((problem) => problem.level === level).length;
  const [errors, warnings, notices] = [number('error'), number('warning'), number('notice')];
  const counted = [
    plural(errors, 'error'),
    plural(warnings, 'warning'),
    ...(notices > 0 ? [plural(notices, 'notice')] : []),
  ];
  const closing = `${plural(trials, 'trial')} read: ${counted.join(', ')}.`;
  const left = leftOut.length > 0 ? [`The site leaves out: ${leftOut.join(', ')}.`] : [];
  return {
    json: { format: 'fairsown-check/1', problems, errors, warnings, left_out: leftOut },
    text: [...problems.map(problemText), closing, ...left].join('\n\n') + '\n',
  };
}

function plural(count: number, noun: string): string {
  return `${count === 0 ? 'no' : count} ${noun}${count === 1 ? '' : 's'}`;
}
