import { expect, test } from 'vitest';
import type { Block, PrintFact } from '../../../src/print/document.ts';
import { inTwo } from '../../../src/print/summary/in-two.ts';

const fact = (name: string, letters = 20): PrintFact => ({ name, values: ['x'.repeat(letters)] });
const namesOf = (block: Block | undefined): unknown => {
  if (block?.kind === 'facts') return block.facts.map(({ name }) => name);
  return block?.kind === 'columns' ? block.columns.map((column) => namesOf(column[0])) : null;
};

test('facts stand in two columns of about one length', () => {
  expect(inTwo(['a', 'b', 'c', 'd'].map((name) => fact(name))).map(namesOf)).toEqual([
    [
      ['a', 'b'],
      ['c', 'd'],
    ],
  ]);
  expect(inTwo([fact('a', 300), fact('b'), fact('c')]).map(namesOf)).toEqual([[['a'], ['b', 'c']]]);
});

test('a long fact has the whole width, above the columns or below, as it stands', () => {
  const facts = [fact('a'), fact('b', 900), fact('c'), fact('d'), fact('e'), fact('f', 500)];
  expect(inTwo(facts).map(namesOf)).toEqual([
    ['b'],
    [
      ['a', 'c'],
      ['d', 'e'],
    ],
    ['f'],
  ]);
});
