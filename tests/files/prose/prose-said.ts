import { join } from 'node:path';
import { analyse } from '../../../src/analysis/analyse.ts';
import { checkProse } from '../../../src/files/prose/check-prose.ts';
import { readContent } from '../../../src/files/read-content.ts';
import type { Problem } from '../../../src/trial/problem.ts';
import { problemText } from '../../../src/trial/problem-text.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';

const content = await readContent(join(import.meta.dirname, '..', '..', '..', 'content'));
const trials: ReadonlyMap<string, Trial> = new Map(
  content.trials.flatMap(({ id, trial }) => (trial ? [[id, trial] as const] : [])),
);

/** A trial of the demonstration site. */
export const demoTrial = (id: string): Trial => trials.get(id) as Trial;
export const demoTrials = [...trials.values()];

/** What is said of an author's text in a demonstration trial. */
export function proseProblemsOf(text: string, id = 'parsley-soaked-a-day', ending = 'mdx'): Problem[] {
  const trial = demoTrial(id);
  const data = { trial, analysis: () => analyse(trial) };
  return checkProse(new TextEncoder().encode(text), `report.${ending}`, wordsFor('en'), data);
}

/** The same as `check` prints it. */
export const proseSaid = (text: string, trial?: string, ending?: string): string =>
  proseProblemsOf(text, trial, ending).map(problemText).join('\n');
