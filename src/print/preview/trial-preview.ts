import type { Analysis } from '../../analysis/analysis.ts';
import type { Site, Trial } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';
import type { PreviewText } from './preview-card.ts';

/** What the picture of a report says: its title, its first finding or how far it is, and who published it. */
export function trialPreview(trial: Trial, analysis: Analysis, site: Site, words: Words): PreviewText {
  const [first, ...others] = words.inShort(trial, analysis);
  const more = others.length > 0 ? [words.say('list.more', { n: others.length })] : [];
  const found = first && {
    ...first.mark,
    text: [words.headline(trial, analysis, first.result, first.comparison), ...more].join(' · '),
  };
  const facts = [
    words.list([...new Set(trial.lots.map(({ crop }) => words.crop(crop)))]),
    words.ui[`status.${trial.status}`],
    words.list(trial.authors.map(({ name }) => name)),
  ];
  return {
    above: site.name,
    title: trial.title,
    asked: trial.question,
    found: found ?? null,
    below: facts.join(' · '),
  };
}
