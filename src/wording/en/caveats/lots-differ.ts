import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import { difference } from '../difference.ts';
import { list } from '../list.ts';
import type { CaveatText } from '../../caveat-templates.ts';
import type { Telling } from './telling.ts';

/** The lots do not agree about the difference. */
export function lotsDiffer({ estimates }: Evidence['lots-differ'], { lot, analysis, caveat }: Telling): CaveatText {
  const result = analysis.results.find(({ outcome }) => outcome === caveat.outcome);
  const each = estimates.map(
    ({ lot: id, estimate }) =>
      `${lot(id)} ${result === undefined ? '' : difference(estimate, { ...result, matters: null })}`,
  );
  return {
    reason: 'the lots do not agree',
    sentence: `The lots do not agree (${list(each)}). One figure for all of them hides that.`,
  };
}
