import type { Block, PrintFact } from '../document.ts';

/** A fact of more letters has the whole width, above or below the columns. */
const LONG = 400;

/** Facts in two columns of about one length, read down the first and then down the second. */
export function inTwo(facts: readonly PrintFact[]): Block[] {
  const short = facts.filter((fact) => lengthOf(fact) <= LONG);
  const isEarly = (fact: PrintFact) => facts.indexOf(fact) < facts.length / 2;
  const half = short.reduce((sum, fact) => sum + lengthOf(fact), 0) / 2;
  let sum = 0;
  const first = short.filter((fact) => (sum += lengthOf(fact)) <= half + lengthOf(fact) / 2);
  return [
    ...across(facts.filter((fact) => !short.includes(fact) && isEarly(fact))),
    {
      kind: 'columns',
      first: null,
      columns: [[{ kind: 'facts', facts: first }], [{ kind: 'facts', facts: short.slice(first.length) }]],
    },
    ...across(facts.filter((fact) => !short.includes(fact) && !isEarly(fact))),
  ];
}

const lengthOf = ({ name, values }: PrintFact) => name.length + values.join('; ').length + 30; // a line at least

const across = (facts: readonly PrintFact[]): Block[] => (facts.length > 0 ? [{ kind: 'facts', facts }] : []);
