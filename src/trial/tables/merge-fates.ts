import { CATEGORIES, type Check } from './check.ts';
import { refuseRepeatedChecks } from './refuse-repeated-checks.ts';

/**
 * Puts what fates.csv says beside the counts of the same sowing and day. A day that was not counted
 * becomes a check of its own, with no number of germinated seeds. A category given in both files is reported.
 */
export function mergeFates(counts: readonly Check[], fates: readonly Check[]): Check[] {
  refuseRepeatedChecks(counts);
  refuseRepeatedChecks(fates);
  const key = ({ sowing, day }: Check) => JSON.stringify([sowing, day]);
  const fateOf = new Map(fates.map((fate) => [key(fate), fate]));
  const merged = counts.map((count): Check => {
    const fate = fateOf.get(key(count));
    if (!fate) return count;
    fateOf.delete(key(count));
    for (const category of CATEGORIES) {
      if (count[category] === null || fate[category] === null || count[category] === fate[category]) continue;
      fate.say('error', category, {
        rule: 'given-twice',
        message: `found ${fate[category]} ${category} seeds here and ${count[category]} in line ${count.line} of ${count.file}`,
        remedy: 'Keep the right number, and give it in one file only.',
      });
    }
    return {
      ...count,
      ...Object.fromEntries(CATEGORIES.map((category) => [category, count[category] ?? fate[category]])),
      scorer: count.scorer ?? fate.scorer,
      note: [count.note, fate.note].filter((text) => text !== null).join('; ') || null,
      say: (level, field, refusal) => {
        const fromFate = CATEGORIES.some((category) => category === field && count[category] === null);
        (fromFate ? fate : count).say(level, field, refusal);
      },
    };
  });
  return [...merged, ...fateOf.values()];
}
