import type { Width } from './document.ts';

/** Widths of a table's columns, mm, in a room of so many; one as wide as its content is taken for a share. */
export function columnWidths(widths: readonly Width[], room: number): number[] {
  const shareOf = (one: Width) => (one === 'auto' ? 1 : 'share' in one ? one.share : 0);
  const fixed = widths.reduce((sum, one) => sum + (typeof one === 'object' && 'mm' in one ? one.mm : 0), 0);
  const shares = widths.reduce((sum, one) => sum + shareOf(one), 0);
  return widths.map((one) =>
    typeof one === 'object' && 'mm' in one ? one.mm : ((room - fixed) * shareOf(one)) / shares,
  );
}
