import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import type { CaveatText } from '../../caveat-templates.ts';
import { difference } from '../difference.ts';
import { list } from '../list.ts';
import type { Telling } from './telling.ts';

/** The lots do not agree about the difference. */
export function lotsDiffer({ estimates }: Evidence['lots-differ'], { lot, analysis, caveat }: Telling): CaveatText {
  const result = analysis.results.find(({ outcome }) => outcome === caveat.outcome);
  const each = estimates.map(
    ({ lot: id, estimate }) =>
      `${lot(id)} ${result === undefined ? '' : difference(estimate, { ...result, matters: null })}`,
  );
  return {
    reason: 'die Partien stimmen nicht überein',
    sentence: `Die Partien stimmen nicht überein (${list(each)}). Eine einzige Zahl für alle verdeckt das.`,
  };
}
