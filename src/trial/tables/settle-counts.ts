import { shown } from '../text/shown.ts';
import type { Count, Sowing } from '../trial.ts';
import type { TrialContext } from '../trial-context.ts';
import { CATEGORIES, type Check } from './check.ts';
import type { SowingNames } from './sowing-names.ts';

/**
 * Counts as totals so far, in the order of sowings.csv and of days, after the checks that need a sowing's
 * whole history: totals that fall, more germinated (with the other categories) than sown, empty cells.
 * With `counts: new` the new ones are added up; what a missed check left out is in the next one.
 */
export function settleCounts(checks: readonly Check[], names: SowingNames | null, context: TrialContext): Count[] {
  const bySowing = Map.groupBy(checks, ({ sowing }) => sowing);
  const ids = [...bySowing.keys()].toSorted((a, b) => (names?.order(a) ?? 0) - (names?.order(b) ?? 0));
  return ids.flatMap((id) => {
    const inOrder = (bySowing.get(id) ?? []).toSorted((a, b) => a.day - b.day);
    noticeEmpty(inOrder, context);
    return settleSowing(inOrder, names?.sowing(id) ?? null, context.counts);
  });
}

function settleSowing(checks: readonly Check[], sowing: Sowing | null, counts: 'cumulative' | 'new'): Count[] {
  let last: { readonly total: number; readonly day: number } | null = null;
  const latest = new Map<string, Check>();
  return checks.map((check) => {
    const before: number = last?.total ?? 0;
    const total = check.germinated === null ? null : check.germinated + (counts === 'new' ? before : 0);
    if (total !== null && last !== null && total < before) refuseFalling(check, before, last.day);
    if (total !== null) last = { total, day: check.day };
    warnFalling(check, latest);
    refuseMoreThanSown(check, total ?? before, total, sowing);
    return countOf(check, total);
  });
}

function countOf({ empty: _empty, say: _say, cell: _cell, ...count }: Check, germinated: number | null): Count {
  return { ...count, germinated };
}

function refuseFalling({ germinated, day, say }: Check, before: number, lastDay: number): void {
  say('error', 'germinated', {
    rule: 'count-falls',
    message: `found ${germinated} by day ${day}, fewer than the ${before} by day ${lastDay}: totals so far cannot fall`,
    remedy:
      'Correct the one that is off. If each count is only what came up since the last check, write "counts: new" under scoring in trial.yaml.',
  });
}

/**
 * Abnormal seedlings and dead seeds stay so; hard and fresh ones may still germinate.
 *
 * @param latest of each category the last check that told it; this one from now on
 */
function warnFalling(check: Check, latest: Map<string, Check>): void {
  for (const category of ['abnormal', 'dead'] as const) {
    const before = latest.get(category);
    const [now, then] = [check[category], before?.[category] ?? null];
    if (now !== null) latest.set(category, check);
    if (now === null || then === null || now >= then) continue;
    check.say('warning', category, {
      rule: 'category-falls',
      message: `found ${now} by day ${check.day}, fewer than the ${then} by day ${before?.day}`,
      remedy: 'Categories are totals as of that day: correct the one that is off, or say in a note why it fell.',
    });
  }
}

function refuseMoreThanSown(check: Check, soFar: number, total: number | null, sowing: Sowing | null): void {
  const { germinated, say } = check;
  if (sowing?.seeds == null) return;
  const { seeds, seedsByMass, id } = sowing;
  const sown = seedsByMass ? `about ${seeds} seeds by mass` : `${seeds} seeds`;
  const remedy = seedsByMass
    ? `Look up the count, the mass of sowing ${shown(id)} in sowings.csv and seeds_per_gram of its lot.`
    : `Look up the count, and the number of seeds of sowing ${shown(id)} in sowings.csv.`;
  if (total !== null && total > seeds) {
    const found = total === germinated ? `found ${germinated}` : `found ${germinated} new ones, ${total} in all`;
    say('error', 'germinated', {
      rule: 'count-above-seeds',
      message: `${found}, but ${sown} were sown in ${shown(id)}`,
      remedy,
    });
    return;
  }
  const others = CATEGORIES.flatMap((category) =>
    check[category] === null ? [] : [[category, check[category]] as const],
  );
  const sum = others.reduce((sum, [, number]) => sum + number, soFar);
  const [largest] = others.toSorted(([, a], [, b]) => b - a);
  if (sum <= seeds || !largest) return;
  say('error', largest[0], {
    rule: 'categories-above-seeds',
    message: `${soFar} germinated and ${others.map(([name, number]) => `${number} ${name}`).join(', ')} make ${sum}, but ${sown} were sown in ${shown(id)}`,
    remedy: `${remedy} Each seed counts once.`,
  });
}

/** Empty cells are named, except where they are checks still to come. */
function noticeEmpty(checks: readonly Check[], { status }: TrialContext): void {
  if (status === 'planned') return;
  const lastFilled = checks.findLastIndex(({ germinated }) => germinated !== null);
  checks.forEach(({ empty, say }, index) => {
    if (!empty || (status === 'growing' && index > lastFilled)) return;
    say('notice', 'germinated', {
      rule: 'empty-count',
      message: 'the cell is empty and was read as not checked, which is not zero',
      remedy: 'Write 0 where nothing had come up, or NC where it was not checked.',
    });
  });
}
