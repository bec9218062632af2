import { rounded } from '../../rounded.ts';
import { number } from '../number.ts';

/** "88 von 100"; never 0 or 100 of 100 unless none or all came up. */
export function shareText({ estimate }: { readonly estimate: number }): string {
  const shown = rounded(estimate);
  if (shown === 0 && estimate > 0) return 'weniger als 1 von 100';
  if (shown === 100 && estimate < 100) return 'mehr als 99 von 100';
  return `${number(shown)} von 100`;
}
