import { rounded } from '../../rounded.ts';
import { number } from '../number.ts';

/** "88 of 100"; never 0 or 100 of 100 unless none or all came up. */
export function shareText({ estimate }: { readonly estimate: number }): string {
  const shown = rounded(estimate);
  if (shown === 0 && estimate > 0) return 'less than 1 of 100';
  if (shown === 100 && estimate < 100) return 'more than 99 of 100';
  return `${number(shown)} of 100`;
}
