import { expect, test } from 'vitest';
import { pooledNumbersTable } from '../../../src/wording/tables/pooled-numbers-table.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { FOUR, pool } from '../../support/pooled-trials.ts';

test.each(['en', 'de'])('%s: every number, and the answer without each trial', (language) => {
  const { head, rows } = pooledNumbersTable(wordsFor(language), pool(FOUR));
  expect([head, ...rows].map((row) => row.join(' | ')).join('\n')).toMatchSnapshot();
});

test('with three trials none is left out in turn', () => {
  const { rows } = pooledNumbersTable(wordsFor('en'), pool(FOUR.slice(0, 3)));
  expect(rows.filter(([name]) => name?.startsWith('Without'))).toEqual([]);
});
