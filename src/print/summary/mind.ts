import type { Block } from '../document.ts';
import type { About } from './about.ts';

/** Where people, animals or plants can be hurt, in two columns; the publisher's own notices stand last. */
export function mind({ trial, site, words }: About): Block[] {
  const notices = words.notices(trial, site.notices);
  if (notices.length === 0) return [];
  const blocks = notices.map(({ title, sentences }): Block[] => [
    { kind: 'heading', level: 3, text: title },
    { kind: 'text', style: 'label', text: sentences.join(' ') },
  ]);
  const half = Math.ceil(blocks.length / 2);
  return [
    { kind: 'heading', level: 2, text: words.ui['report.notices'] },
    ...(blocks.length === 1
      ? blocks.flat()
      : [
          { kind: 'columns', first: null, columns: [blocks.slice(0, half).flat(), blocks.slice(half).flat()] } as const,
        ]),
  ];
}
