import type { Block, PrintFact } from '../document.ts';

/** A fact of more letters has the whole width, above the columns. */
const LONG = 400;

/** Facts in two columns of about one length, read down the first and then down the second. */
export function inTwo(facts: readonly PrintFact[]): Block[] {
  const lengthOf = ({ name, values }: PrintFact) => name.length + values.join('; ').length + 30; // a line at least
  const long = facts.filter((fact) => lengthOf(fact) > LONG);
  const others = facts.filter((fact) => !long.includes(fact));
  const half = others.reduce((sum, fact) => sum + lengthOf(fact), 0) / 2;
  let sum = 0;
  const first = others.filter((fact) => (sum += lengthOf(fact)) <= half + lengthOf(fact) / 2);
  return [
    ...(long.length > 0 ? [{ kind: 'facts', facts: long } as const] : []),
    {
      kind: 'columns',
      first: null,
      columns: [[{ kind: 'facts', facts: first }], [{ kind: 'facts', facts: others.slice(first.length) }]],
    },
  ];
}
