import { analysisJson } from '../files/analysis-json.ts';
import { pooledQuestions } from '../files/pooled-questions.ts';
import { readContent } from '../files/read-content.ts';
import { problemText } from '../trial/problem-text.ts';
import { didYouMean } from '../trial/text/did-you-mean.ts';
import { shown } from '../trial/text/shown.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import { wordsFor } from '../wording/words-for.ts';
import { questionText } from './question-text.ts';
import type { Terminal } from './terminal.ts';

/**
 * `analyse --question`: what the trials of one question say together, as text or as fairsown-pooled/1. Errors in the
 * site's files stop it, and those of the question's trials unless site.yaml says `on_problem: leave-out`.
 *
 * @param progress told the trial that is being read; '' where reading is over
 * @returns the exit code 0 or 1; a text where there is no such question or content folder
 */
export async function analyseQuestion(
  id: string,
  { content, json }: { readonly content: string; readonly json: boolean },
  terminal: Terminal,
  progress: (name: string) => void,
): Promise<0 | 1 | string> {
  const { site, trials, repeats, problems } = await readContent(content, (trial, index, total) =>
    progress(`${index + 1} of ${total}: ${trial}`),
  );
  progress('');
  if (problems[0]?.rule === 'folder-missing') return `${problems[0].file}: ${problems[0].message}.`;
  const question = site.questions[id];
  const named = new Set(question?.trials.map(({ trial }) => trial));
  const ofNamed = [...trials, ...repeats].filter((each) => named.has(each.id)).flatMap((each) => each.problems);
  const stopping = [...problems, ...(site.onProblem === 'leave-out' ? [] : ofNamed)];
  const errors = stopping.filter(({ level }) => level === 'error');
  if (errors.length > 0) {
    terminal.err(`${errors.map(problemText).join('\n\n')}\n`);
    return 1;
  }
  if (!question) {
    return `There is no question ${shown(id)} in ${content}/questions.yaml. ${didYouMean(id, Object.keys(site.questions), 'question')}`;
  }

  const analysed = trials.flatMap(({ trial }) =>
    trial && named.has(trial.id) ? [{ trial, analysis: publishedAnalysis(trial, site.language) }] : [],
  );
  const [answer] = pooledQuestions({ ...site, questions: { [id]: question } }, analysed, repeats);
  if (answer) {
    terminal.out(json ? analysisJson(answer.pooled) : questionText(wordsFor(site.language), question, answer.pooled));
  }
  return 0;
}
