import type { Block, PrintFact } from '../document.ts';

/** Facts in two columns of about one length, read down the first and then down the second. */
export function inTwo(facts: readonly PrintFact[]): Block[] {
  const lengthOf = ({ name, values }: PrintFact) => name.length + values.join('; ').length + 30; // a line at least
  const half = facts.reduce((sum, fact) => sum + lengthOf(fact), 0) / 2;
  let sum = 0;
  const first = facts.filter((fact) => (sum += lengthOf(fact)) <= half + lengthOf(fact) / 2);
  return [
    {
      kind: 'columns',
      first: null,
      columns: [[{ kind: 'facts', facts: first }], [{ kind: 'facts', facts: facts.slice(first.length) }]],
    },
  ];
}
