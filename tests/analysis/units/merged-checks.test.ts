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
