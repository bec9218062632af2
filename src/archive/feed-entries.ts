import type { Analysis } from '../analysis/analysis.ts';
import type { Trial } from '../trial/trial.ts';
import type { Words } from '../wording/words.ts';
import type { FeedEntry } from './atom-feed.ts';

/**
 * What a trial gives to the feed: itself, dated by its end, else its sowing, else its plan, and each change of its
 * report. A trial without any date gives nothing.
 *
 * @param address of the report
 */
export function feedEntries(words: Words, trial: Trial, analysis: Analysis, address: string): readonly FeedEntry[] {
  const date = trial.finished ?? trial.sown ?? trial.plan?.fixed ?? null;
  if (date === null) return [];
  const shared = {
    link: address,
    authors: trial.authors.map(({ name }) => name),
    categories: [...new Set(trial.lots.map(({ crop }) => words.crop(crop)))],
  };
  const found = words.inShort(trial, analysis).map(({ sentence }) => sentence);
  const state = found.length > 0 ? found : [words.ui[`statusNote.${trial.status}`]];
  return [
    { ...shared, id: address, title: trial.title, date, summary: [trial.question, ...state].join(' ') },
    ...trial.changes.map(({ date: changed, what, why }, index) => ({
      ...shared,
      id: `${address}#change-${index + 1}`,
      title: words.say('feed.changed', { title: trial.title }),
      date: changed,
      summary: [what, why].filter(Boolean).map(sentence).join(' '),
    })),
  ];
}

const sentence = (text: string | null) => (/[.!?…]$/.test(text ?? '') ? String(text) : `${text}.`);
