import { parseArgs } from 'node:util';
import { analysisJson } from '../files/analysis-json.ts';
import { contentFolder } from '../files/content-folder.ts';
import { problemText } from '../trial/problem-text.ts';
import { publishedAnalysis } from '../wording/published-analysis.ts';
import { wordsFor } from '../wording/words-for.ts';
import { analyseQuestion } from './analyse-question.ts';
import { analysisText } from './analysis-text.ts';
import { trialsToAnalyse } from './trials-to-analyse.ts';
import type { Terminal } from './terminal.ts';

const USAGE = `npm run --silent analyse -- <trial or folder>… | --all | --question <id> [--json] [--content <folder>]

Analyses trials, named by id or by folder: groups, differences, how sure they are, and what limits them.

  --all               every trial of the content folder
  --question <id>     what the trials of a question in questions.yaml say together
  --json              prints the analysis (fairsown-analysis/1) in place of a table: an object for one trial
                      that is named, an array for several and for --all; of a question fairsown-pooled/1
  --content <folder>  another content folder than FAIRSOWN_CONTENT or "content"

Ends with 0, with 1 where a trial has errors (nothing is analysed then), with 2 where it was called in a way
it does not know.
`;

/**
 * The command `analyse`: the analysis of trials as a table for a terminal or as the JSON that is published.
 * Errors in the files go to `err`, as `check` prints them.
 *
 * @returns the exit code: 0, 1 errors, 2 usage
 */
export async function runAnalyse(args: readonly string[], terminal: Terminal): Promise<0 | 1 | 2> {
  const options = optionsOf(args);
  if (typeof options === 'string') return usage(options);
  const { values, positionals } = options;
  if (values.help) {
    terminal.out(USAGE);
    return 0;
  }
  const content = values.content ?? contentFolder();
  const ways = [values.all, positionals.length > 0, values.question !== undefined].filter(Boolean).length;
  if (ways > 1) return usage('Name trials, or give --all, or --question: one of them.');
  if (ways === 0) return usage('Name a trial, or give --all or --question.');

  const progress = (name: string) => {
    if (terminal.terminal) terminal.err(`\r\u001b[K${name}`);
  };
  if (values.question !== undefined) {
    const done = await analyseQuestion(values.question, { content, json: values.json }, terminal, progress);
    return typeof done === 'string' ? usage(done) : done;
  }
  const chosen = await trialsToAnalyse(content, values.all ? null : positionals, progress);
  if (typeof chosen === 'string') {
    progress('');
    return usage(chosen);
  }
  const errors = chosen.problems.filter(({ level }) => level === 'error');
  if (errors.length > 0) {
    progress('');
    terminal.err(`${errors.map(problemText).join('\n\n')}\n`);
    return 1;
  }

  const analyses = chosen.trials.map(({ trial, language }, index) => {
    progress(`analysing ${index + 1} of ${chosen.trials.length}: ${trial.id}`);
    return { trial, words: wordsFor(language), analysis: publishedAnalysis(trial, language) };
  });
  progress('');
  if (values.json) {
    const [one] = analyses;
    const isOne = !values.all && analyses.length === 1 && one !== undefined;
    terminal.out(isOne ? analysisJson(one.analysis) : `${JSON.stringify(analyses.map(({ analysis }) => analysis), null, 2)}\n`); // prettier-ignore
  } else {
    terminal.out(analyses.map(({ words, trial, analysis }) => analysisText(words, trial, analysis)).join('\n\n'));
  }
  return 0;

  function usage(message: string): 2 {
    terminal.err(`${message}\n\n${USAGE}`);
    return 2;
  }
}

function optionsOf(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        all: { type: 'boolean', default: false },
        json: { type: 'boolean', default: false },
        help: { type: 'boolean', default: false },
        question: { type: 'string' },
        content: { type: 'string' },
      },
    });
  } catch (error) {
    return error instanceof Error ? (error.message.split('. ')[0] ?? error.message) : String(error);
  }
}
