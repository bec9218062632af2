import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { checkTexts } from '../../../src/files/prose/check-texts.ts';
import { problemText } from '../../../src/trial/problem-text.ts';
import { proseSaid } from './prose-said.ts';

/* Reports with one mistake each, and exactly what their author is told. */

const said = (text: string, trial?: string) => proseSaid(`What came up:\n\n${text}\n`, trial);

test('an outcome, a lot or a treatment that the trial does not have', () => {
  expect(said('<Result outcome="germinaton"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result outcome>: found "germinaton"; allowed: germination, speed, height
      error: Did you mean "germination"?"
  `);
  expect(said('<Result lot="parsley"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result lot>: found "parsley"; allowed: parsley-2025
      error: Known here: parsley-2025."
  `);
  expect(said('<Result treatment="soked"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result treatment>: found "soked"; allowed: soaked
      error: Did you mean "soaked"?"
  `);
  expect(said('Up: <Num of="count" treatment="wet"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:5: <Num treatment>: found "wet"; allowed: dry, soaked
      error: Known here: dry, soaked."
  `);
});

test('a kind, a number, a table or a day that there is not', () => {
  expect(said('<Chart kind="curve"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Chart kind>: found "curve"; allowed: germination, units
      error: Known here: germination, units."
  `);
  expect(said('<Chart outcome="speed" kind="germination"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Chart kind>: found "germination"; allowed: units
      error: Known here: units."
  `);
  expect(said('<Table of="number"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Table of>: found "number"; allowed: groups, numbers, counts
      error: Did you mean "numbers"?"
  `);
  expect(said('<Num of="diference"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Num of>: found "diference"; allowed: difference, range, p, estimate, count, seeds, units
      error: Did you mean "difference"?"
  `);
  expect(said('<Num of="count" outcome="height" treatment="dry"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Num of="count">: this number could not be computed
      error: The report's caveats say why; take the component out."
  `);
  expect(said('<Photos/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Photos day>: this trial has nothing to show there
      error: Take the component out."
  `);
  expect(said('<Photos day="8"/>', 'herbs-lit-or-covered')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Photos day>: found "8"; allowed: 14
      error: Known here: 14."
  `);
});

test('an attribute that the component does not have, has twice, or without a value', () => {
  expect(said('<Result outcom="speed"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result>: found the attribute outcom; allowed: outcome, lot, treatment
      error: Did you mean "outcome"?"
  `);
  expect(said('<InShort lot="parsley-2025"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <InShort>: found the attribute lot; it takes none
      error: Take it out."
  `);
  expect(said('<Result outcome="speed" outcome="height"/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result>: found the attribute outcome twice
      error: Take one of them out."
  `);
  expect(said('<Result outcome/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result outcome>: found no value
      error: Write outcome="…", or take it out."
  `);
  expect(said('<Result outcome=""/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result outcome>: found no value
      error: Write outcome="…", or take it out."
  `);
});

test('words inside a component that shows none, and a component that there is not', () => {
  expect(said('<Result>Soaked came up more.</Result>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result>: found words inside it, which would not be shown
      error: Write <Result/> and the words before or after it."
  `);
  expect(said('<Resullt/>')).toMatchInlineSnapshot(`
    "report.mdx:3:1: found <Resullt>, which is no component
      error: Did you mean "Result"?"
  `);
});

test('a trial that is not over has nothing to show', () => {
  expect(said('<Result/>', 'spinach-fresh-or-old')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Result outcome>: this trial has nothing to show there
      error: Take the component out."
  `);
});

test('components that fit pass', () => {
  expect(said('<Photos day="14"/>\n\n<Photos day={14}/>\n\n<Photos/>', 'herbs-lit-or-covered')).toBe('');
  expect(
    said(
      '<InShort/>\n\n<Methods/>\n\n<Caveats/>\n\n<Chart kind="units"/>\n\n<Chart outcome="height"/>\n\n<Table of="numbers"/>',
    ),
  ).toBe('');
  expect(said('<Num of="difference"/>, <Num of="range"/>, p <Num of="p" outcome="height"/>')).toBe('');
});

test('a demonstration report uses every component', () => {
  const report = readFileSync(
    join(import.meta.dirname, '..', '..', '..', 'content/trials/herbs-lit-or-covered/report.mdx'),
    'utf8',
  );
  const used = new Set([...report.matchAll(/<([A-Z]\w+)/g)].map(([, name]) => name));
  expect([...used].toSorted()).toEqual(
    ['InShort', 'Result', 'Chart', 'Table', 'Num', 'Claim', 'Photos', 'Methods', 'Caveats'].toSorted(),
  );
});

test('two texts for one report', () => {
  const files = new Map(['report.md', 'report.mdx'].map((name) => [name, new TextEncoder().encode('Words.')]));
  const said = (given: typeof files) => checkTexts(given, 'trials/leek', null, 'en', analyse).map(problemText);
  expect(said(files)).toMatchInlineSnapshot(`
    [
      "trials/leek/report.md: there is a report.mdx as well, and a report shows one text
      error: Put all your words into one of the two and delete the other.",
    ]
  `);
  files.delete('report.md');
  expect(said(files)).toEqual([]);
});
