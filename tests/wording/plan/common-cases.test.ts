import { expect, test } from 'vitest';
import { commonCases } from '../../../src/wording/plan/common-cases.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { r } from '../../support/r.ts';

const [germination, means] = commonCases(wordsFor('en'));

test('more trays never show a difference less often, nor a larger difference', () => {
  const rows = germination?.rows.map((row) => row.slice(1, 5).map(Number)) ?? [];
  expect(rows).toHaveLength(6);
  for (const column of [0, 1, 2, 3]) {
    const shown = rows.map((row) => row[column] ?? NaN);
    expect(shown).toEqual(shown.toSorted((a, b) => a - b));
  }
  for (const row of rows) expect(row[2]).toBeGreaterThan(row[0] ?? NaN);
});

test('means are those of power.t.test', async () => {
  const inR = await r(
    'sapply(c(1, 1.5, 2, 3), function(d) sapply(c(2, 3, 4, 6, 8, 12), function(n) power.t.test(n, d, strict = TRUE)$power))',
  );
  const shown = [1, 2, 3, 4].flatMap((column) => means?.rows.map((row) => Number(row[column])) ?? []);
  expect(shown).toEqual(inR.map((power) => Math.round(100 * power)));
});
