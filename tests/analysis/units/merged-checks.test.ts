import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mergedChecks } from '../../../src/analysis/units/merged-checks.ts';

test('counts are added on days on which all sowings are known', () => {
  const a = { seeds: 50, checks: [{ day: 5, total: 10 }, { day: 8, total: 20 }, { day: 14, total: 30 }] }; // prettier-ignore
  const b = { seeds: 25, checks: [{ day: 5, total: 7 }, { day: 9, total: 20 }, { day: 14, total: 25 }] }; // prettier-ignore
  expect(mergedChecks([a, b])).toEqual([{ day: 5, total: 17 }, { day: 14, total: 55 }]); // prettier-ignore
});

test('of one sowing alone every day counts, once', () => {
  const checks = [{ day: 5, total: 10 }, { day: 5, total: 12 }, { day: 9, total: 20 }]; // prettier-ignore
  expect(mergedChecks([{ seeds: 50, checks: checks.slice(1) }])).toEqual(checks.slice(1));
  expect(mergedChecks([{ seeds: 50, checks }])).toEqual(checks.slice(1));
});

test('a sowing that is full stays known', () => {
  const a = { seeds: 10, checks: [{ day: 5, total: 10 }] };
  const b = { seeds: 25, checks: [{ day: 5, total: 7 }, { day: 9, total: 20 }] }; // prettier-ignore
  expect(mergedChecks([a, b])).toEqual([{ day: 5, total: 17 }, { day: 9, total: 30 }]); // prettier-ignore
});

const sowing = fc
  .record({
    seeds: fc.constantFrom(null, 3, 10),
    days: fc.uniqueArray(fc.integer({ min: 1, max: 9 }), { maxLength: 6 }),
    news: fc.array(fc.integer({ min: 0, max: 4 }), { minLength: 6, maxLength: 6 }),
  })
  .map(({ seeds, days, news }) => {
    let total = 0;
    const checks = days
      .toSorted((a, b) => a - b)
      .map((day, index) => ({ day, total: (total = Math.min(seeds ?? 40, total + (news[index] ?? 0))) }));
    return { seeds, checks };
  });

test('whatever the days, it is the sum on each day on which every sowing was checked or full before', () => {
  fc.assert(
    fc.property(fc.array(sowing, { minLength: 1, maxLength: 4 }), (sowings) => {
      const expected = [1, 2, 3, 4, 5, 6, 7, 8, 9].flatMap((day) => {
        const totals = sowings.map(({ seeds, checks }) => {
          const last = checks.findLast((check) => check.day <= day);
          return last && (last.day === day || last.total === seeds) ? last.total : null;
        });
        const isCheck = sowings.some(({ checks }) => checks.some((check) => check.day === day));
        return isCheck && !totals.includes(null)
          ? [{ day, total: totals.reduce<number>((sum, total) => sum + (total ?? 0), 0) }]
          : [];
      });
      expect(mergedChecks(sowings)).toEqual(expected);
    }),
    { seed: 20261125 },
  );
});
