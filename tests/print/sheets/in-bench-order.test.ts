import { expect, test } from 'vitest';
import { inBenchOrder } from '../../../src/print/sheets/in-bench-order.ts';
import { makeSowing } from '../../support/make-trial.ts';

const at = (id: string, block: string | null, position: string | null) => makeSowing(id, 'jar', { block, position });

test('sowings stand by block and place, numbers by size, equal places as listed', () => {
  const listed = [
    at('a', 'shelf 2', '1-1'),
    at('b', 'shelf 1', '10-1'),
    at('c', 'shelf 1', '2-1'),
    at('d', 'shelf 1', '2-1'),
  ];
  expect(inBenchOrder(listed).map(({ id }) => id)).toEqual(['c', 'd', 'b', 'a']);
  expect(listed.map(({ id }) => id)).toEqual(['a', 'b', 'c', 'd']);
});

test('without places the order of the list stands', () => {
  expect(inBenchOrder([at('b', null, null), at('a', null, null)]).map(({ id }) => id)).toEqual(['b', 'a']);
});
