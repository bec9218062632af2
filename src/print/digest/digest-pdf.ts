import type { Site } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';
import type { Block } from '../document.ts';
import { pageOf } from '../page-of.ts';
import { pdfOf, type Pdf } from '../pdf-of.ts';
import { qrSvg } from '../pictures/qr-svg.ts';
import { verdictMarks } from '../pictures/verdict-marks.ts';
import type { About } from '../summary/about.ts';
import { byTitle } from './booklets-of.ts';
import { digestBox, qrName } from './digest-box.ts';

/** The year in which trials were sown, and which of its booklets this is. */
export interface Season {
  readonly year: string;
  /** From 1 on. */
  readonly part: number;
  readonly parts: number;
}

/**
 * A season's trials of the group as one PDF/UA-1 booklet: contents, then a box a trial in the order of the titles,
 * then the publisher's notices. For a meeting or a noticeboard.
 */
export function digestPdf({ year, part, parts }: Season, trials: readonly About[], site: Site, words: Words): Pdf {
  const { ui } = words;
  const sorted = trials.toSorted(byTitle);
  const title =
    words.say('print.digestTitle', { year }) + (parts > 1 ? `, ${words.say('print.digestPart', { part, parts })}` : '');
  const days = trials.map(({ trial }) => trial.finished ?? trial.sown ?? '').sort();
  const authors = new Set(sorted.flatMap(({ trial }) => trial.authors.map(({ name }) => name)));
  const notices = site.notices.map((text): Block => ({ kind: 'text', style: 'label', text }));
  return pdfOf([
    {
      title: `${title}: ${site.name}`,
      language: words.language,
      authors: [...authors],
      date: days.at(-1) || null,
      paper: site.paper,
      turned: false,
      density: 'close',
      head: [site.name, title],
      foot: site.base,
      pageOf: pageOf(words),
      pictures: {
        ...verdictMarks(),
        ...Object.fromEntries(sorted.map(({ trial, address }) => [qrName(trial.id), qrSvg(address)])),
      },
      blocks: [
        { kind: 'title', text: title },
        {
          kind: 'text',
          style: 'lead',
          text: words.say('print.digestIntro', { trials: words.counted(trials.length, 'trial') }),
        },
        { kind: 'text', style: 'strong', text: ui['print.contents'] },
        { kind: 'contents', level: 2 },
        ...notices,
        { kind: 'page' },
        ...sorted.map(digestBox),
      ],
    },
  ]);
}
