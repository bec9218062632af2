import type { Pooled } from '../analysis/pooled.ts';
import type { Question } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import { wrapped } from './wrapped.ts';

const WIDTH = 80;

/** A question that several trials answer, for a terminal of 80 columns: the answer, each trial, what limits it. */
export function questionText(words: Words, question: Question, pooled: Pooled): string {
  const { ui } = words;
  const said = words.pooled(pooled);
  const title = wrapped(`${question.title} (${question.id})`, WIDTH);
  const underline = '='.repeat(Math.max(...title.split('\n').map((line) => line.length)));
  const rows = pooled.trials.map((trial, index) => {
    const row = said.trials[index];
    const weight =
      trial.weight === null ? '' : `; ${ui['question.weight'].toLowerCase()} ${words.quantity(trial.weight, '%', 100)}`;
    return [
      ...wrapped(`${trial.title} (${trial.trial})`, WIDTH - 2).split('\n').map((line) => `  ${line}`),
      ...wrapped(`${row?.difference} (${row?.range}): ${row?.finding}${weight}`, WIDTH - 4).split('\n').map((line) => `    ${line}`),
    ].join('\n'); // prettier-ignore
  });
  const blocks = [
    `${title}\n${underline}`,
    wrapped(said.sentence, WIDTH),
    ...(rows.length > 0 ? [`${heading(ui['question.trials'])}\n${rows.join('\n')}`] : []),
    ...listed(ui['report.limits'], said.limits),
    ...listed(
      ui['report.leftOut'],
      pooled.leftOut.map(({ title: name }, index) => `${name}: ${said.leftOut[index]}`),
    ),
    ...listed(
      ui['question.unreported'],
      pooled.unreported.map(({ title: name, status }) => `${name}: ${ui[`status.${status}`]}`),
    ),
  ];
  return `${blocks.join('\n\n')}\n`;
}

const heading = (text: string): string => `${text}\n${'-'.repeat(text.length)}`;

function listed(title: string, texts: readonly string[]): readonly string[] {
  if (texts.length === 0) return [];
  return [
    `${heading(title)}\n${texts.map((text) => `- ${wrapped(text, WIDTH - 2).replaceAll('\n', '\n  ')}`).join('\n')}`,
  ];
}
