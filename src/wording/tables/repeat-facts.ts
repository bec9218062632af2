import type { Outcome, Trial } from '../../trial/trial.ts';
import { sentence } from '../sentence.ts';
import type { Words } from '../words.ts';
import { treatmentFact } from './treatment-fact.ts';

export interface Fact {
  readonly name: string;
  readonly values: readonly string[];
}

const BLIND = { yes: 'answer.yes', no: 'answer.no', unknown: 'answer.notRecorded' } as const;

/** What somebody must know to do the trial again on their own bench: a line each, in the order of the work. */
export function repeatFacts(words: Words, trial: Trial): readonly Fact[] {
  const { ui } = words;
  const { sowing, scoring } = trial;
  const facts: (readonly [string, readonly (string | null)[]])[] = [
    [ui['report.lots'], trial.lots.map((lot) => lotFact(words, trial, lot.id))],
    [ui['report.treatments'], trial.treatments.map((treatment) => treatmentFact(words, treatment))],
    [ui['repeat.container'], [sowing.container]],
    [ui['repeat.howMany'], howMany(words, trial)],
    [ui['repeat.assignment'], [ui[`assignment.${sowing.assignment}`]]],
    [ui['repeat.treated'], [ui[`treated.${sowing.treated}`]]],
    [ui['table.block'], [sowing.block]],
    ...Object.entries(trial.conditions).map(([name, value]) => [name, [value]] as const),
    [ui['repeat.scored'], [scoring.germinated]],
    [ui['repeat.blind'], [ui[BLIND[scoring.blind]]]],
    [ui['repeat.countDays'], [countDays(words, trial)]],
    [ui['repeat.outcomes'], trial.outcomes.map((outcome) => outcomeFact(words, outcome))],
  ];
  return facts
    .map(([name, values]) => ({ name, values: values.filter((value) => value !== null && value !== '') as string[] }))
    .filter(({ values }) => values.length > 0);
}

function lotFact(words: Words, trial: Trial, id: string): string {
  const lot = trial.lots.find((known) => known.id === id);
  const harvested = lot?.harvested ? `${words.ui['lot.harvested']} ${lot.harvested}` : null;
  return [words.lotName(trial, id), lot?.species, lot?.supplier, harvested].filter(Boolean).join(', ');
}

/** So many treatments, counted in each lot, are listed by name, each with its sowings. */
const LISTED = 6;

/**
 * "Sealed jar: 4 sowings of 50 seeds": a line a lot and treatment; without treatments while those are kept apart. Many
 * treatments that all have as many share one line.
 */
function howMany(words: Words, trial: Trial): readonly string[] {
  const groups = sowingsOfEach(words, trial);
  const [first] = groups;
  const alike = groups.length === trial.lots.length * trial.treatments.length && groups.every(({ text }) => text === first?.text); // prettier-ignore
  if (first && alike && groups.length > LISTED) {
    const numbers = {
      sowings: first.text,
      treatments: words.counted(trial.treatments.length, 'treatment'),
      lots: words.counted(trial.lots.length, 'lot'),
    };
    return [words.say(trial.lots.length > 1 ? 'repeat.ofEachInLots' : 'repeat.ofEach', numbers)];
  }
  return groups.map(({ names, text }) => [names, text].filter(Boolean).join(': '));
}

function sowingsOfEach(words: Words, trial: Trial): { readonly names: string; readonly text: string }[] {
  return trial.lots.flatMap((lot) =>
    [...trial.treatments.map(({ id }) => id), null].flatMap((treatment) => {
      const sowings = trial.sowings.filter((sowing) => sowing.lot === lot.id && sowing.treatment === treatment);
      if (sowings.length === 0) return [];
      const seeds = [...new Set(sowings.map((sowing) => sowing.seeds))].filter((number) => number !== null);
      // Of a series, what is sown before it is stored stands for every treatment.
      const isStart = sowings.every(({ stored }) => stored === 0);
      const untreated = isStart ? sentence(words.ui['chart.atStart']) : null;
      const names = [
        trial.lots.length > 1 ? words.lotName(trial, lot.id) : null,
        treatment === null ? untreated : words.treatmentLabel(trial, treatment),
      ].filter(Boolean);
      const text = words.say('repeat.sowings', {
        sowings: words.counted(sowings.length, 'sowing'),
        seeds: words.list(seeds.sort((a, b) => a - b).map((number) => words.number(number))),
      });
      return [{ names: names.join(', '), text }];
    }),
  );
}

function countDays(words: Words, trial: Trial): string {
  const counted = [...new Set(trial.counts.map(({ day }) => day))].sort((a, b) => a - b);
  const days = counted.length > 0 ? counted : trial.scoring.days;
  return words.list(days.map((day) => words.number(day)));
}

function outcomeFact(words: Words, { measure, column, day, matters }: Outcome): string {
  const name = column ?? words.measureName(measure);
  const on = typeof day === 'number' ? words.say('table.onDay', { day: words.number(day) }) : null;
  const margin = matters === null ? null : `${words.ui['stats.margin']}: ${words.number(matters)}`;
  return [name, on, margin].filter(Boolean).join('; ');
}
