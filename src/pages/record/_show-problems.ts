import { problemText } from '../../trial/problem-text.ts';
import type { Problem } from '../../trial/problem.ts';
import { at, made } from './_elements.ts';

/** What there is to say about a file, each problem with its place and remedy; notices are left out. */
export function showProblems(title: string, problems: readonly Problem[]): void {
  const said = problems.filter(({ level }) => level !== 'notice').map((problem) => made('pre', problemText(problem), { lang: 'en' })); // prettier-ignore
  at('problems').replaceChildren(...(title === '' ? [] : [made('p', title, { role: 'alert' })]), ...said);
}
