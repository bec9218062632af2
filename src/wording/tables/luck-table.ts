import type { Comparison, Result } from '../../analysis/analysis.ts';
import { luckOfTwo } from '../../statistics/luck-of-two.ts';
import { groupsOf } from '../../analysis/groups-of.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../words.ts';

/** Dispersion between single units that nobody has measured: an assumption, as for the size of a repeat (methods.md 2). */
const ASSUMED = 2;
const SHARES = [50, 70, 80, 90];

/** By how much two alike trays of this trial's size commonly differ; null where there are several, or no seeds to go by. */
export function luckTable(
  words: Words,
  trial: Trial,
  result: Result,
  comparison: Comparison,
): { caption: string; head: string[]; rows: string[][]; note: string } | null {
  const { treatment, control } = groupsOf(result, comparison);
  const isSingle = treatment?.units === 1 && control?.units === 1;
  if (result.measure !== 'germination' || !isSingle || !treatment.seeds || !control.seeds) return null;
  const [one, other] = [treatment.seeds, control.seeds];
  const points = (share: number) => words.say('luck.upTo', { points: words.number(Math.ceil(100 * share - 1e-9)) });
  return {
    caption: words.say('luck.table.caption', {
      unit: words.unitWord(trial, true),
      one: words.number(one),
      other: words.number(other),
    }),
    head: [words.ui['luck.table.share'], words.ui['luck.table.half'], words.ui['luck.table.most']],
    rows: SHARES.map((share) => {
      const { half, most } = luckOfTwo(share / 100, one, other, ASSUMED);
      return [words.say('luck.ofHundred', { points: words.number(share) }), points(half), points(most)];
    }),
    note: words.say('luck.table.note', { unit: words.unitWord(trial, true) }),
  };
}
