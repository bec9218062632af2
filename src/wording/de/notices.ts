import type { Trial } from '../../trial/trial.ts';
import { noticeIds } from '../notice-ids.ts';
import type { Notice } from '../words.ts';
import { crop } from './crop.ts';
import { list } from './list.ts';
import { food } from './notices/food.ts';
import { handling } from './notices/handling.ts';

const TEXTS = { ...food, ...handling };
const LAST = 'Die Regeln vor Ort und der Rat von Fachleuten gehen vor.';

/** Notices by the trial's own facts, then those that the publisher adds; each ends in the same sentence. */
export function notices(trial: Trial, siteNotices: readonly string[]): readonly Notice[] {
  const own = noticeIds(trial).map(({ id, crops }) => {
    const { title, sentences, sources } = TEXTS[id];
    const named = list(crops.map(crop));
    return { id, title, sentences: [...sentences.map((text) => text.replace('{crops}', named)), LAST], sources };
  });
  const added = siteNotices.map((text, index) => ({
    id: `site-${index + 1}`,
    title: 'Von der Herausgabe',
    sentences: [text, LAST],
    sources: [],
  }));
  return [...own, ...added];
}
