import type { Block } from './document.ts';
import { SIZES } from './sizes.ts';

/** The parts of a block that hold others, each with its width, mm; none where it holds none. */
export function innerRooms(block: Block, width: number): readonly (readonly [blocks: readonly Block[], mm: number])[] {
  switch (block.kind) {
    case 'spread':
      return [
        [block.main, width - SIZES.beside - SIZES.gutter],
        [block.beside, SIZES.beside - SIZES.inset],
      ];
    case 'columns': {
      const room = width - SIZES.gutter * (block.columns.length - 1);
      const { first } = block;
      const each =
        first === null ? room / block.columns.length : (room - first) / Math.max(1, block.columns.length - 1);
      return block.columns.map((column, at) => [column, at === 0 ? (first ?? each) : each]);
    }
    case 'box':
      return [[block.blocks, width - 2 * SIZES.inset]];
    default:
      return [];
  }
}
