import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import type { Comparison, Result, UnitValue } from '../../../src/analysis/analysis.ts';
import { countsTable } from '../../../src/wording/tables/counts-table.ts';
import { groupsTable, spreadTable } from '../../../src/wording/tables/groups-table.ts';
import { numbersTable } from '../../../src/wording/tables/numbers-table.ts';
import { repeatFacts } from '../../../src/wording/tables/repeat-facts.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makeGroup, makeResult } from '../../support/make-result.ts';
import { germinationTrial, makeLot, makeOutcome, makeTreatment } from '../../support/make-trial.ts';

const words = wordsFor('en');
const trial = germinationTrial(
  {
    packet: [
      [31, 50],
      [28, 50],
      [33, 50],
      [30, 50],
    ],
    jar: [
      [41, 50],
      [45, 50],
      [43, 50],
      [40, 50],
    ],
  },
  { outcomes: [makeOutcome({ matters: 10 })], conditions: { light: 'north window' } },
);
const result = analyse(trial).results[0] as Result;
const asText = ({ head, rows }: { head: readonly string[]; rows: readonly (readonly string[])[] }) =>
  [head, ...rows].map((row) => row.join(' | ')).join('\n');

test('a statistician finds every number of a comparison', () => {
  expect(asText(numbersTable(words, trial, result.comparisons))).toMatchInlineSnapshot(`
    "Value | Sealed jar against Paper packet
    Difference | 23.50 percentage points
    95 % interval | 13.07 to 33.28
    Method | Newcombe hybrid score, effective seed numbers, t quantile
    Units | 4 and 4
    Dispersion φ | 0.558
    df of φ | 6
    φ* used | 1.000
    df used (ν) | 7
    Test | score test, F with dispersion φ*
    Statistic | 27.857
    df | 1; 7
    p | 0.001
    p adjusted (Holm) | 0.001
    Permutation p | 0.029
    Arrangements | 70 (all of them)
    Risk ratio | 1.385
    Odds ratio | 3.485
    Cohen’s h | 0.540
    Smallest difference that matters | 10.0 percentage points (fixed beforehand)
    90 % interval | 15.18 to 31.40
    90 % interval inside the margin | no
    Detectable difference (80 % power) | 16.1 percentage points
    Verdict | matters
    Ceiling | none"
  `);
});

test('what one comparison lacks stays empty beside one that has it; what none has is not listed', () => {
  const { rows } = numbersTable(words, trial, [
    makeComparison({ estimate: 2, parts: { detectable: 11.2 } }),
    makeComparison({ estimate: null }),
  ]);
  const row = (name: string) => rows.find(([first]) => first === name);
  expect(row(words.ui['stats.detectable'])?.slice(1)).toEqual(['11.2 percentage points', '']);
  expect(row(words.ui['stats.permutation'])).toBeUndefined();
});

test('a limit that does not exist is written as infinite, not as zero', () => {
  const open = makeComparison({ estimate: 2, parts: { welch: { level: 0.95, lower: null, upper: 4 } } });
  expect(numbersTable(words, trial, [open]).rows).toContainEqual([words.ui['stats.welch'], '−∞ to 4.00']);
});

test('a number that only a later comparison has stands where it belongs', () => {
  const [full] = result.comparisons as [Comparison];
  const { head, rows } = numbersTable(words, trial, [{ ...full, permutation: null, dispersion: null }, full]);
  expect(head).toHaveLength(3);
  expect(rows.map(([label]) => label)).toEqual(numbersTable(words, trial, [full]).rows.map(([label]) => label));
});

test('treatments by unit, count and range', () => {
  expect(asText(groupsTable(words, trial, result, 'leek'))).toMatchInlineSnapshot(`
    "Treatment | Units | Came up of sown | Estimate | 95 % interval
    Paper packet | 4 trays | 122 of 200 | 61.0 % | 52.7 to 68.8
    Sealed jar | 4 trays | 169 of 200 | 84.5 % | 77.5 to 89.6"
  `);
});

test('with one tray of a kind its range is said to hold the luck of seeds only', () => {
  const one = germinationTrial({ packet: [[25, 30]], jar: [[27, 30]] });
  const alone = analyse(one).results[0] as Result;
  expect(groupsTable(words, one, alone, 'leek').rows).toEqual([
    ['Paper packet', '1 tray', '25 of 30', '83 %', '66 to 93 (seed\u00A0luck\u00A0only)'],
    ['Sealed jar', '1 tray', '27 of 30', '90 %', '74 to 97 (seed\u00A0luck\u00A0only)'],
  ]);
});

test('what was sown once at the start of a series is one row', () => {
  const at = (treatment: string, stored: number, unit: string) => ({
    group: makeGroup(treatment, { stored }),
    value: { lot: 'leek', treatment, stored, unit },
  });
  const all = [at('packet', 0, 's1'), at('jar', 0, 's1'), at('packet', 2, 'p1'), at('jar', 2, 'j1')];
  const of = (found: typeof all) =>
    makeResult({ groups: found.map(({ group }) => group), values: found.map(({ value }) => value as UnitValue) });
  const names = (found: typeof all) => groupsTable(words, trial, of(found), 'leek').rows.map((row) => row.slice(0, 2));
  expect(names(all)).toEqual([
    ['Paper packet and Sealed jar', '0 years'],
    ['Paper packet', '2 years'],
    ['Sealed jar', '2 years'],
  ]);
  expect(names([at('packet', 0, 's1'), at('jar', 0, 's2')]), 'each with trays of its own').toHaveLength(2);
});

test('spread is told of means, and of nothing where there is none', () => {
  expect(spreadTable(words, trial, makeResult(), 'leek').rows).toEqual([]);
  const means = makeResult({ measure: 'trait', groups: [makeGroup('jar', { sd: 1.5, icc: 0.123456 })] });
  expect(asText(spreadTable(words, trial, means, 'leek'))).toMatchInlineSnapshot(`
    "Treatment | sd between units | Correlation of plants within a unit
    Sealed jar | 1.500 | 0.123"
  `);
});

test('counts so far do not tell the treatments', () => {
  const blind = countsTable(words, trial, false);
  expect(asText(blind)).not.toContain('Sealed jar');
  expect(blind.rows).toHaveLength(8);
  expect(asText(countsTable(words, trial, true))).toContain('Sealed jar | leek-jar-1 | 50 | 41');
});

test('what to know before sowing it again', () => {
  const facts = repeatFacts(words, {
    ...trial,
    treatments: [
      makeTreatment('packet', { label: 'Paper packet', control: true }),
      makeTreatment('jar', { label: 'Sealed jar', soakHours: 6 }),
    ],
  });
  expect(facts.map(({ name, values }) => `${name}: ${values.join(' / ')}`).join('\n')).toMatchInlineSnapshot(`
    "Seed: Leek, Allium porrum
    Treatments: Paper packet (control) / Sealed jar; soaked for 6 h
    One sowing is: tray
    How many: Paper packet: 4 sowings of 50 seeds / Sealed jar: 4 sowings of 50 seeds
    Which place for which treatment: at random
    How the treatment was given: each sowing by itself
    light: north window
    Counts as up: loop visible
    Counted without knowing which is which: yes
    Days of counting: 14
    What is compared: Came up; Day 14; Smallest difference that matters: 10"
  `);
});

test('several lots stand in one table, named first; one lot is not named', () => {
  const two = {
    ...trial,
    lots: [...trial.lots, makeLot('onion', 'onion')],
    sowings: [...trial.sowings, ...trial.sowings.map((sowing) => ({ ...sowing, id: `o-${sowing.id}`, lot: 'onion' }))],
    counts: [...trial.counts, ...trial.counts.map((count) => ({ ...count, sowing: `o-${count.sowing}` }))],
  };
  const found = analyse(two).results[0] as Result;
  const lots = ['leek', 'onion'];
  const groups = groupsTable(words, two, found, lots);
  expect(groups.names).toBe(2);
  expect(asText(groups)).toMatchInlineSnapshot(`
    "Lot | Treatment | Units | Came up of sown | Estimate | 95 % interval
    Leek | Paper packet | 4 trays | 122 of 200 | 61.0 % | 52.7 to 68.8
    Leek | Sealed jar | 4 trays | 169 of 200 | 84.5 % | 77.5 to 89.6
    Onion | Paper packet | 4 trays | 122 of 200 | 61.0 % | 52.7 to 68.8
    Onion | Sealed jar | 4 trays | 169 of 200 | 84.5 % | 77.5 to 89.6"
  `);
  const byLot = { ...found, day: null, days: { leek: 14, onion: 21 } };
  expect(groupsTable(words, two, byLot, lots).rows.map((row) => row[2])).toEqual(['14', '14', '21', '21']);
  const alone = groupsTable(words, two, found, 'onion');
  expect(alone.names).toBe(1);
  expect(groups.rows.slice(2).map(([, ...row]) => row)).toEqual(alone.rows);
  expect(spreadTable(words, two, found, lots).head.length).not.toBe(2);
  const counted = countsTable(words, two, true);
  expect(counted.head.slice(0, counted.names)).toEqual(['Lot', 'Treatment', 'Sowing']);
  const blind = countsTable(words, two, false);
  expect(blind.head.slice(0, blind.names)).toEqual(['Lot', 'Sowing']);
});

test('many treatments with as many sowings each are told in one line, others by name', () => {
  const ways = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
  const many = germinationTrial(Object.fromEntries(ways.map((way) => [way, [[40, 50]] as const])), {
    treatments: ways.map((way) => makeTreatment(way)),
  });
  const howMany = (of: typeof many, language = 'en') =>
    repeatFacts(wordsFor(language), of).find(({ name }) => /^(How many|Wie viele)/.test(name))?.values;
  expect(howMany(many)).toEqual(['1 sowing of 50 seeds for each of 7 treatments']);
  expect(howMany(many, 'de')).toEqual(['1 Aussaat mit 50 Samen für jede der 7 Behandlungen']);
  expect(howMany({ ...many, sowings: many.sowings.slice(1) })).toHaveLength(6);
  const start = many.sowings.slice(0, 1).map((sowing) => ({ ...sowing, treatment: null, stored: 0 }));
  expect(howMany({ ...many, sowings: start })).toEqual(['At the start: 1 sowing of 50 seeds']);
  expect(howMany({ ...many, sowings: start.map((sowing) => ({ ...sowing, stored: null })) })).toEqual([
    '1 sowing of 50 seeds',
  ]);
});
