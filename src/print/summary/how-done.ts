import { repeatFacts } from '../../wording/tables/repeat-facts.ts';
import type { PrintFact } from '../document.ts';
import type { About } from './about.ts';

/** Most lines in which a summary says how it was done; the report has them all. */
const LINES = 8;

/**
 * How it was done in eight lines: what one sowing is and how many there were stand in one, and the conditions in
 * the last.
 */
export function howDone({ trial, words }: About): PrintFact[] {
  const { ui } = words;
  const facts = repeatFacts(words, trial);
  const valuesOf = (name: string) => facts.find((fact) => fact.name === name)?.values ?? [];
  const conditions = Object.entries(trial.conditions).map(([name, value]) => `${name}: ${value}`);
  const lines: PrintFact[] = [
    { name: ui['report.lots'], values: valuesOf(ui['report.lots']) },
    { name: ui['report.treatments'], values: valuesOf(ui['report.treatments']) },
    { name: ui['repeat.container'], values: [...valuesOf(ui['repeat.container']), ...valuesOf(ui['repeat.howMany'])] },
    { name: ui['repeat.assignment'], values: [...valuesOf(ui['repeat.assignment']), ...valuesOf(ui['table.block'])] },
    { name: ui['repeat.treated'], values: valuesOf(ui['repeat.treated']) },
    { name: ui['repeat.scored'], values: valuesOf(ui['repeat.scored']) },
    { name: ui['repeat.countDays'], values: valuesOf(ui['repeat.countDays']) },
    { name: ui['report.conditions'], values: conditions },
  ];
  return lines.filter(({ values }) => values.length > 0).slice(0, LINES);
}
