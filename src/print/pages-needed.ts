import { columnWidths } from './column-widths.ts';
import type { Block, Figure, PrintDocument, Table } from './document.ts';
import { innerRooms } from './inner-rooms.ts';
import { shapeOf } from './pictures/shape-of.ts';
import { SIZES } from './sizes.ts';

/** Mean width of a letter in its size: Source Serif 4, Atkinson Hyperlegible Next and its bold, in running English. */
const LETTER = { serif: 0.47, sans: 0.442, bold: 0.475 } as const;
/** Height of a line without its leading: that of a capital, in the size of the text. */
const CAPITAL = 0.67;
/** Letters that a line of several is short of its width on average, as words are not cut. */
const RAGGED = 1.5;

type Face = keyof typeof LETTER;

/**
 * About how many pages a document will fill, without setting it: setting takes a thousand times as long. Whoever
 * needs to know sets it then; what this spares is setting the document in every size that would not have fitted.
 *
 * @returns whole pages and the used part of the last one, `1.5` for one and a half
 */
export function pagesNeeded(document: PrintDocument): number {
  const [wide, high] = document.turned ? SIZES.sheet[document.paper].toReversed() : SIZES.sheet[document.paper];
  const page = (high ?? 0) - SIZES.margin.top - SIZES.margin.bottom;
  const em = (SIZES.text[document.density] * 25.4) / 72;
  const gap = SIZES.gap[document.density] * em;
  const small = SIZES.small;
  return flow(document.blocks, 0, (wide ?? 0) - 2 * SIZES.margin.x) / page;

  /** Where the last of some blocks ends that begin at `from`, mm from the top of the first page. */
  function flow(blocks: readonly Block[], from: number, width: number): number {
    let y = from;
    let before: number | null = null;
    for (const block of blocks) {
      if (block.kind === 'bottom') continue;
      const [above, below] = spaces(block);
      const space = above === null && before === null ? gap : Math.max(above ?? 0, before ?? 0);
      y = end(block, y === from ? y : y + space, width);
      before = below;
    }
    return y;
  }

  /** What must stay on one page moves to the next where it does not fit. */
  function whole(y: number, height: number): number {
    const left = page - (y % page);
    return height > left && height <= page ? y + left + height : y + height;
  }

  function lines(text: string, width: number, size: number, face: Face): number {
    const letter = LETTER[face] * size * em;
    return text.split('\n').reduce((sum, line) => {
      const one = line.length * letter <= width;
      return sum + (one ? 1 : Math.ceil((line.length * letter) / Math.max(letter, width - RAGGED * letter)));
    }, 0);
  }

  /** @param around the size of the text that the paragraph stands in, by which its lines are set apart */
  function par(text: string, width: number, size: number, face: Face, around = 1): number {
    const number = lines(text, width, size, face);
    return (number * CAPITAL * size + (number - 1) * SIZES.leading * around) * em;
  }

  function end(block: Block, y: number, width: number): number {
    switch (block.kind) {
      case 'title':
        return whole(y, par(block.text, width, 2.73, 'bold'));
      case 'heading':
        // stays with the two lines after it
        return whole(y, par(block.text, width, block.level === 2 ? 1.46 : small, 'bold') + 3 * em) - 3 * em;
      case 'text':
        return y + textHeight(block.text, block.style, width);
      case 'items':
        return y + block.items.reduce((sum, item) => sum + par(item, width - em, 1, 'serif') + 0.55 * em, 0);
      case 'facts':
        return y + block.facts.reduce((sum, fact) => sum + par(`${fact.name} ${fact.values.join('; ')}`, width, small, 'sans', small) + 0.65 * small * em, -0.65 * small * em); // prettier-ignore
      case 'finding':
        return whole(y, 1.35 * em + 0.55 * em + par(block.sentence, width, block.lead ? 1.12 : 1, 'serif'));
      case 'table':
        return table(block, y, width);
      case 'figure':
        return figure(block, y, width);
      case 'spread':
      case 'columns':
        return Math.max(...innerRooms(block, width).map(([blocks, room]) => flow(blocks, y, room)));
      case 'box':
        return block.whole
          ? whole(y, flow(block.blocks, 0, width - 2 * SIZES.inset) + 2 * SIZES.inset)
          : flow(block.blocks, y + SIZES.inset, width - 2 * SIZES.inset) + SIZES.inset;
      case 'labels':
        return y + Math.ceil(block.labels.length / block.columns) * block.height;
      case 'page':
        return Math.ceil(y / page) * page;
      case 'bottom':
      case 'contents':
        return y;
    }
  }

  function textHeight(text: string, style: string, width: number): number {
    if (style === 'question') return par(text, width, 1.2, 'serif');
    if (style === 'lead') return par(text, width, 1.12, 'serif');
    if (style === 'plain') return par(text, width, 1, 'serif');
    if (style === 'huge') return par(text, width, 1.9, 'bold');
    return par(text, width, small, style === 'strong' ? 'bold' : 'sans');
  }

  function table({ caption, head, rows, widths, rowHeight }: Table, from: number, width: number): number {
    const columns = columnWidths(widths, width);
    const pad = (25.4 / 72) * 2 * SIZES.cell.x;
    const rowOf = (cells: readonly string[], face: Face) =>
      Math.max(rowHeight, (25.4 / 72) * 2 * SIZES.cell.y + Math.max(...cells.map((cell, at) => par(cell, (columns[at] ?? width) - pad, small, face, small)))); // prettier-ignore
    const top = (caption === null ? 0 : par(caption, width, small, 'bold') + 0.5 * em) + rowOf(head, 'bold');
    return rows.reduce((y, cells) => whole(y, rowOf(cells, 'sans')), whole(from, top));
  }

  function figure({ picture, caption, title, width: wanted, tallest }: Figure, y: number, room: number): number {
    const drawn = Math.min(tallest, Math.min(wanted ?? room, room) * shapeOf(document.pictures[picture] ?? ''));
    const above = title === null ? 0 : par(title, room, small, 'bold') + 1.3 * gap;
    return whole(y, above + drawn + (caption === null ? 0 : 0.5 * em + par(caption, room, small, 'sans')));
  }

  /** What a block keeps free above and below; null: as much as a paragraph, where the other block has no say. */
  function spaces(block: Block): readonly [above: number | null, below: number | null] {
    switch (block.kind) {
      case 'title':
        return [null, 0.9 * 1.4 * em];
      case 'heading':
        return block.level === 2 ? [1.7 * gap * 1.2, 0.8 * 1.2 * em] : [gap, 0.5 * em];
      case 'text':
        if (block.style === 'question') return [0, em];
        return block.style === 'strong' ? [0.9 * em, 0.45 * em] : [null, null];
      case 'items':
      case 'facts':
        return [null, null];
      case 'finding':
        return [1.1 * gap, 1.1 * gap];
      case 'figure':
        return [block.title === null ? 1.3 * gap : gap, 1.3 * gap];
      case 'table':
        return block.caption === null ? [gap, gap] : [1.3 * gap, 1.3 * gap];
      case 'spread':
        return [1.6 * gap, gap];
      default:
        return [gap, gap];
    }
  }
}
