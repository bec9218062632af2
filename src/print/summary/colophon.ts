import { citeLine } from '../../wording/tables/cite-line.ts';
import { dataDigest } from '../data-digest.ts';
import type { Block } from '../document.ts';
import type { About } from './about.ts';

/** People, licence, how to cite, address with its QR code, digest of the data. */
export function colophon({ trial, analysis, site, words, address }: About): Block[] {
  const { ui } = words;
  const people = trial.authors.map(({ id, name, affiliation }) =>
    [name, affiliation, trial.roles[id] && words.list(trial.roles[id])].filter(Boolean).join(', '),
  );
  const digest = dataDigest(analysis).slice(0, 12);
  return [
    { kind: 'bottom' },
    {
      kind: 'box',
      whole: true,
      blocks: [
        {
          kind: 'columns',
          first: 27,
          columns: [
            [
              {
                kind: 'figure',
                picture: 'qr',
                alt: words.say('print.qr', { address }),
                title: null,
                caption: null,
                width: 27,
                tallest: 27,
              },
            ],
            [
              {
                kind: 'facts',
                facts: [
                  { name: ui['print.report'], values: [address] },
                  { name: ui['print.people'], values: people },
                  { name: ui['report.interests'], values: [trial.interests ?? ui['report.interestsNone']] },
                  { name: ui['print.cite'], values: [citeLine(words, trial, site, address)] },
                  { name: ui['print.licence'], values: [trial.licence ?? site.licence] },
                  { name: ui['print.digest'], values: [words.say('print.digestNote', { digest })] },
                ],
              },
              {
                kind: 'text',
                style: 'soft',
                text: words.say('print.madeBy', { version: analysis.software.version }),
              },
            ],
          ],
        },
      ],
    },
  ];
}
