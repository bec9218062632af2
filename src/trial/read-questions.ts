import type { FileProblems, Place } from './file-problems.ts';
import { questionsFile } from './schema/questions.ts';
import { unknownName } from './text/unknown-name.ts';
import type { Question, Trial } from './trial.ts';
import { checkYaml } from './yaml/check-yaml.ts';
import { MOST_BYTES_OF_SITE, readYaml } from './yaml/read-yaml.ts';

/**
 * questions.yaml: questions that several trials answer. Null where there are errors.
 *
 * @param trials trials by id, and those of other sites by the name of their zip; null for one with errors; what a question names and is not there is reported
 */
export function readQuestions(
  bytes: Uint8Array,
  report: FileProblems,
  trials?: ReadonlyMap<string, Trial | null>,
): Record<string, Question> | null {
  const yaml = readYaml(bytes, report, MOST_BYTES_OF_SITE);
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
        const place = (key?: string) => yaml.place([id, 'trials', index, ...(key ? [key] : [])]);
        const { trial, outcome, lot, treatment, control } = typeof entry === 'string' ? { trial: entry } : entry;
        if (trials) refuseUnknown({ trial, outcome, lot, treatment, control }, trials, place);
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

  function refuseUnknown(
    { trial: id, ...named }: Partial<Question['trials'][number]> & { readonly trial: string },
    trials: ReadonlyMap<string, Trial | null>,
    place: (key?: string) => Place,
  ): void {
    if (!trials.has(id)) report.error(place(), unknownName('trial', id, 'trials/ or repeats/', trials.keys()));
    const trial = trials.get(id);
    if (!trial) return;
    const known = {
      outcome: trial.outcomes,
      lot: trial.lots,
      treatment: trial.treatments,
      control: trial.treatments,
    };
    for (const key of ['outcome', 'lot', 'treatment', 'control'] as const) {
      const name = named[key];
      const ids = known[key].map((entry) => entry.id);
      // Where a trial lists no outcomes, analysis makes them up: their ids are not known here.
      if (!name || ids.length === 0 || ids.includes(name)) continue;
      report.error(place(key), unknownName(key === 'control' ? 'treatment' : key, name, `the trial ${id}`, ids));
    }
  }
}
