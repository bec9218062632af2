import type { FileProblems } from './file-problems.ts';
import { questionsFile } from './schema/questions.ts';
import { unknownName } from './text/unknown-name.ts';
import type { Question } from './trial.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { readYaml } from './yaml/read-yaml.ts';

/**
 * questions.yaml: questions that several trials answer. Null where there are errors.
 *
 * @param trials ids of the trials there are; an unknown one is reported
 */
export function readQuestions(
  bytes: Uint8Array,
  report: FileProblems,
  trials?: ReadonlySet<string>,
): Record<string, Question> | null {
  const yaml = readYaml(bytes, report);
  const checked = yaml && checkYaml(yaml, questionsFile, report);
  if (!yaml || !checked) return null;

  const questions = Object.entries(checked).map(([id, question]): [string, Question] => [
    id,
    {
      id,
      title: question.title,
      question: question.question,
      measure: question.measure,
      matters: question.matters ?? null,
      trials: question.trials.map((entry, index) => {
        const { trial, outcome, lot, treatment, control } = typeof entry === 'string' ? { trial: entry } : entry;
        if (trials && !trials.has(trial)) {
          report.error(yaml.place([id, 'trials', index]), unknownName('trial', trial, 'trials/', trials));
        }
        return {
          trial,
          outcome: outcome ?? null,
          lot: lot ?? null,
          treatment: treatment ?? null,
          control: control ?? null,
        };
      }),
    },
  ]);
  return Object.fromEntries(questions);
}
