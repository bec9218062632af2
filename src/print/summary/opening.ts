import { statusNote } from '../../wording/status-note.ts';
import type { Block } from '../document.ts';
import type { About } from './about.ts';

/** Title, question, who and when, and, while nothing may be compared, why not. */
export function opening({ trial, analysis, words }: About): Block[] {
  const { ui } = words;
  const note = statusNote(words, trial, analysis);
  const facts = [
    words.list(trial.authors.map(({ name, affiliation }) => (affiliation ? `${name} (${affiliation})` : name))),
    trial.sown && `${ui['report.sown']} ${words.date(trial.sown)}`,
    trial.finished && `${ui['report.finished']} ${words.date(trial.finished)}`,
    words.list(trial.lots.map(({ id }) => words.lotName(trial, id))),
  ];
  return [
    { kind: 'title', text: trial.title },
    { kind: 'text', text: trial.question, style: 'question' },
    { kind: 'text', text: facts.filter(Boolean).join(' · '), style: 'soft' },
    ...(note === null ? [] : [{ kind: 'text', text: note, style: 'strong' } as const]),
  ];
}
