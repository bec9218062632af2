import { expect, test } from 'vitest';
import { TABLE_FILES, YAML_FILES } from '../../../src/trial/schema/files.ts';
import { formatKeys } from '../../../src/trial/schema/format-keys.ts';
import { formatKind } from '../../../src/wording/tables/format-kind.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';

const told = (schema: Parameters<typeof formatKeys>[0], language: string) =>
  formatKeys(schema)
    .map((key) => `${key.path}${key.required ? '*' : ''}: ${formatKind(wordsFor(language), key)}`)
    .join('\n');

test('keys of a file are told with what is inside them, and whether they are needed', () => {
  expect(told(YAML_FILES['questions.yaml'], 'en')).toMatchInlineSnapshot(`
    "<id>.title*: text
    <id>.question*: text
    <id>.measure*: one of: germination, t50, mgt, maguire, spread, trait, moisture, storage
    <id>.matters: number
    <id>.trials*: a list of ids, or a list of entries, as below
    <id>.trials[].trial*: id
    <id>.trials[].outcome: id
    <id>.trials[].lot: id
    <id>.trials[].treatment: id
    <id>.trials[].control: id"
  `);
  expect(told(YAML_FILES['photos/captions.yaml'], 'en')).toMatchInlineSnapshot(`
    "<name>.caption: text
    <name>.alt: text
    <name>.sowing: text
    <name>.day: number"
  `);
});

test('a value that may be of two kinds names both', () => {
  const [day] = formatKeys(YAML_FILES['trial.yaml']).filter(({ path }) => path === 'outcomes[].day');
  expect(day && ['en', 'de'].map((language) => formatKind(wordsFor(language), day))).toMatchInlineSnapshot(`
    [
      "number, or a value for each name",
      "Zahl oder ein Wert zu jedem Namen",
    ]
  `);
});

test('cells that may be empty are told as what stands in them', () => {
  expect(told(TABLE_FILES['sowings.csv'], 'en')).toMatchInlineSnapshot(`
    "sowing*: text
    lot*: text
    treatment: text
    seeds: whole number
    batch: text
    tray: text
    block: text
    position: text
    label: text
    sown: date, such as 2026-04-04
    stored: number
    mass: number
    soak: number"
  `);
  expect(told(TABLE_FILES['weighings.csv'], 'de')).toMatchInlineSnapshot(`
    "lot*: Text
    treatment: Text
    stage*: eins von: before, after, oven-dry
    mass*: Zahl
    container: Zahl
    repeat: Text
    scale step: Zahl
    batch: Text
    date: Datum, etwa 2026-04-04"
  `);
});

test('every key is described, in every file', () => {
  for (const schema of Object.values({ ...YAML_FILES, ...TABLE_FILES })) {
    for (const { path, description, kinds } of formatKeys(schema)) {
      expect(description, path).toMatch(/\S/);
      expect(kinds.length, path).toBeGreaterThan(0);
    }
  }
});
