import { CARD } from '../../charts/chart-theme.ts';
import { fitText } from '../../charts/fit-text.ts';
import type { VerdictShape } from '../../wording/words.ts';
import { verdictMarks } from '../pictures/verdict-marks.ts';
import { isolated } from '../isolated.ts';
import { writable } from '../writable.ts';

export const CARD_WIDTH = 1200;
export const CARD_HEIGHT = 630;
const MARGIN = 80;
const SERIF = 'Source Serif 4';
const SANS = 'Atkinson Hyperlegible Next';

export interface PreviewText {
  /** Name of the site. */
  readonly above: string;
  readonly title: string;
  /** What was asked. */
  readonly asked: string;
  /** What was found, and how sure that is. */
  readonly found: { readonly shape: VerdictShape; readonly words: string; readonly text: string } | null;
  readonly below: string;
}

/**
 * A page as a picture of 1200 by 630 for where it is shared: a leaf of the notebook, with the name of the site, the
 * title, the question, the finding with its shape, and small print. SVG; every text is cut to its room.
 */
export function previewCard({ above, title, asked, found, below }: PreviewText): string {
  const titles = fitted(title, 62, 2);
  const questions = fitted(asked, 32, found ? 2 : 4);
  const middle = 148 + titles.length * 70;
  const parts = [
    text(above, 76, { size: 30, face: SANS, fill: CARD.soft }),
    `<path d="M${MARGIN} 106H${CARD_WIDTH - MARGIN}" stroke="${CARD.ink}" stroke-width="2"/>`,
    ...titles.map((line, index) => text(line, 184 + index * 70, { size: 60, face: SERIF, weight: 600 })),
    ...questions.map((line, index) => text(line, middle + 30 + index * 48, { size: 36, face: SERIF, italic: true })),
    ...(found ? foundLines(found, middle + 30 + questions.length * 48) : []),
    `<path d="M${MARGIN} 552H${CARD_WIDTH - MARGIN}M${MARGIN} 556H${CARD_WIDTH - MARGIN}" stroke="${CARD.rule}" stroke-width="1.5"/>`,
    ...fitted(below, 26, 1).map((line) => text(line, 596, { size: 26, face: SANS, fill: CARD.soft })),
  ];
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${CARD_WIDTH}" height="${CARD_HEIGHT}" viewBox="0 0 ${CARD_WIDTH} ${CARD_HEIGHT}"><rect width="100%" height="100%" fill="${CARD.paper}"/>${parts.join('')}</svg>`; // prettier-ignore
}

function foundLines({ shape, words, text: said }: NonNullable<PreviewText['found']>, top: number): string[] {
  const mark = (verdictMarks()[shape] ?? '')
    .replace('width="36" height="24"', `x="${MARGIN}" y="${top}" width="66" height="44"`)
    .replaceAll('#fff', CARD.paper);
  const lines = fitted(said, 30, 2);
  return [
    mark,
    text(words, top + 34, { size: 34, face: SANS, weight: 700, x: MARGIN + 84 }),
    ...lines.map((line, index) => text(line, top + 80 + index * 38, { size: 30, face: SANS })),
  ];
}

const fitted = (words: string, size: number, lines: number) =>
  fitText(writable(words), CARD_WIDTH - 2 * MARGIN, size, lines);

interface Style {
  readonly size: number;
  readonly face: string;
  readonly weight?: number;
  readonly italic?: boolean;
  readonly fill?: string;
  readonly x?: number;
}
const text = (words: string, y: number, { size, face, weight = 400, italic = false, fill = CARD.ink, x = MARGIN }: Style) =>
  `<text x="${x}" y="${Math.round(y)}" font-family="${face}" font-size="${size}" font-weight="${weight}"${italic ? ' font-style="italic"' : ''} fill="${fill}">${escaped(isolated(writable(words)))}</text>`; // prettier-ignore

const escaped = (words: string) => words.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
