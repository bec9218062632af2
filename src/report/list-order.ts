import { frontPage, type Published } from './front-page.ts';

/** The order of every list of trials: the last finished first, then what grows, what is planned and what was given up. */
export function listOrder(published: readonly Published[]): readonly Published[] {
  const { newest, growing, planned } = frontPage(published);
  const others = [...published].sort((a, b) => (a.trial.id < b.trial.id ? -1 : 1));
  return [...new Set([...newest, ...growing, ...planned, ...others])];
}
