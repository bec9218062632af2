import { expect, test } from 'vitest';
import { problemText } from '../../src/trial/problem-text.ts';
import { readSite } from '../../src/trial/read-site.ts';
import { readTrial } from '../../src/trial/read-trial.ts';
import { filesOf, readChanged, SITE_FILES, TRIAL_FILES, type TextFiles } from './trial-files.ts';

const said = (changed: TextFiles, site: TextFiles = {}) =>
  readChanged(changed, site).problems.map(problemText).join('\n');
const YAML = TRIAL_FILES['trial.yaml'];
const sowings = (text: string) =>
  said({ 'sowings.csv': text, 'counts.csv': null, 'trial.yaml': YAML.replace('finished', 'growing') });
const ROWS = 's01,leek-2025,packet,50\ns02,leek-2025,jar,50\n';

test('sowings.csv that is missing', () => {
  expect(said({ 'sowings.csv': null })).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv: there is no sowings.csv, which lists the containers or rows that were sown
      error: Create it with the columns sowing, lot, treatment and seeds, a row for each."
  `);
});
test('sowings: ids, references, numbers', () => {
  expect(sowings(`sowing,lot,treatment,seeds\n${ROWS}s01,leek-2025,jar,50\n`)).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:4:1 sowing: sowing "s01" stands in line 2 already
      error: Give each sowing its own id."
  `);
  expect(sowings(`sowing,lot,treatment,seeds\n${ROWS}s03,leek,Sealed jar,50\n`)).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:4:5 lot: there is no lot "leek" in trial.yaml
      error: Known here: leek-2025.
    trials/leek/sowings.csv:4:10 treatment: there is no treatment "Sealed jar" in trial.yaml
      error: That is its label; write its id, "jar"."
  `);
  expect(sowings(`sowing,lot,treatment,seeds\n${ROWS}s03,leek-2025,jar,0\n`)).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:4:19 seeds: expected a whole number of seeds, such as 12; found "0", which is below 1
      error: Look the number up."
  `);
  expect(sowings(`sowing,lot,treatment,seeds\n${ROWS}s03,leek-2025,jar,\n`)).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:4:19 seeds: the number of seeds sown is not known; counts of this sowing are shown but not compared
      warning: Give the number of seeds, or their mass."
  `);
  expect(sowings(`sowing,lot,treatment,seeds\n${ROWS},leek-2025,jar,50\n`)).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:4:1 sowing: is missing
      error: Give a value for sowing (Id of the sowing: one container or row sown at one time)."
  `);
  expect(sowings(`sowing,lot,treatment\ns01,leek-2025,packet\ns02,leek-2025,jar\n`)).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:1:1 seeds: there is neither a column "seeds" nor a column "mass"
      error: Add the column "seeds" with the number of seeds sown."
  `);
});
test('sowings: labels that could mean two sowings', () => {
  expect(sowings('sowing,lot,treatment,seeds,label\ns01,leek-2025,packet,50,s02\ns02,leek-2025,jar,50,\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:2:25 label: the label "s02" is also the id of sowing "s02"
      error: Use a label that names one sowing only; counts could belong to either."
  `);
  expect(sowings('sowing,lot,treatment,seeds,label\ns01,leek-2025,packet,50,K\ns02,leek-2025,jar,50,K\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:3:22 label: the label "K" is also the label of sowing "s01"
      error: Use a label that names one sowing only; counts could belong to either."
  `);
});
test('sowings: units', () => {
  expect(sowings('sowing,lot,treatment,seeds,mass\ns01,leek-2025,packet,50,1\ns02,leek-2025,jar,50,1\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:1:28 mass: no unit in the heading; g was assumed
      notice: Write "mass (g)", or the unit you used."
  `);
  expect(sowings('sowing,lot,treatment,seeds,stored (moons)\ns01,leek-2025,packet,50,1\ns02,leek-2025,jar,50,1\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:1:28 stored (moons): expected a unit of time, such as years; found "moons"
      error: Units understood: mm, cm, m, in, mg, g, kg, oz, lb, °C, °F, h, days, weeks, months, years, %."
  `);
  expect(sowings('sowing,lot,treatment,mass (cm)\ns01,leek-2025,packet,50\ns02,leek-2025,jar,1\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:1:22 mass (cm): expected a unit of mass, such as g; found "cm"
      error: Units understood: mm, cm, m, in, mg, g, kg, oz, lb, °C, °F, h, days, weeks, months, years, %."
  `);
  expect(sowings('sowing,lot,treatment,mass (mg)\ns01,leek-2025,packet,1\ns02,leek-2025,jar,100\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:2:22 mass (mg): 0.001 g at 380 seeds per gram is less than one seed
      error: Look up the mass, its unit in the heading, and seeds_per_gram in lots.yaml."
  `);
});
test('treatments that are missing or contradict key.csv', () => {
  expect(sowings('sowing,lot,seeds\ns01,leek-2025,50\ns02,leek-2025,50\n')).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:2:1 treatment: sowing "s01" has no treatment, and there is no key.csv
      error: Write the treatment into this row, or add key.csv with the columns sowing and treatment.
    trials/leek/sowings.csv:3:1 treatment: sowing "s02" has no treatment, and there is no key.csv
      error: Write the treatment into this row, or add key.csv with the columns sowing and treatment."
  `);
  const key = (text: string) =>
    said({
      'sowings.csv': 'sowing,lot,seeds,treatment\ns01,leek-2025,50,packet\ns02,leek-2025,50,\ns03,leek-2025,50,\n',
      'counts.csv': null,
      'trial.yaml': YAML.replace('finished', 'growing'),
      'key.csv': text,
    });
  expect(key('sowing,treatment\ns01,jar\ns02,jar\n')).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:2:18 treatment: sowing "s01" has the treatment "packet" here and "jar" in key.csv
      error: Keep the right one of the two.
    trials/leek/key.csv: there is no row for "s03"
      error: Give every sowing its treatment, here or in sowings.csv."
  `);
  expect(key('sowing,treatment\ns02,jar\ns03,jra\ns02,jar\ns9,jar\n')).toMatchInlineSnapshot(`
    "trials/leek/key.csv:3:5 treatment: there is no treatment "jra" in trial.yaml
      error: Did you mean "jar"?
    trials/leek/key.csv:4:1 sowing: sowing "s02" stands here for the second time
      error: Keep the row that is right and take the other out.
    trials/leek/key.csv:5:1 sowing: there is no sowing "s9" in sowings.csv
      error: Known here: s01, s02, s03."
  `);
});
test('another key than the sealed one', () => {
  expect(
    said({
      'plan.yaml': `fixed: 2026-04-01\ndigest: bf8a42e4c94b2aebc5f6b2e1c9e8b23ec2b6e7f1d8cf2d2e2e1d6c2be7a9f3d1\nkey_sha256: ${'a'.repeat(64)}\n`,
      'key.csv': 'sowing,treatment\ns01,packet\n',
    }),
  ).toMatchInlineSnapshot(`
    "trials/leek/plan.yaml:2:1 digest: the digest does not fit the plan: it was changed after it was fixed
      warning: The digest of the plan as it stands is d1e06ba8174c6b0335a8678134cc553fd91e752c655a43db1472fa539556588a. Whoever has the old sheet can see that they differ.
    trials/leek/key.csv: this is not the key that was sealed with the plan: its SHA-256 is another one than key_sha256 in plan.yaml
      warning: Put the key back as the tool wrote it, byte for byte, or say among the deviations why it was changed."
  `);
});
test('measurements', () => {
  const measured = (text: string) => said({ 'measurements.csv': text });
  expect(measured('sowing,day,plant,height (cm)\ns01,8,1,12\ns01,8,1,13\ns02,8,,5\ns02,8,,6\n')).toMatchInlineSnapshot(`
    "trials/leek/measurements.csv:3:1 plant: plant "1" of sowing "s01" was measured on day 8 in line 2 already
      error: Number the plants of a sowing in the column "plant", or keep the row that is right.
    trials/leek/measurements.csv:5:1 plant: sowing "s02" was measured on day 8 in line 4 already
      error: Number the plants of a sowing in the column "plant", or keep the row that is right."
  `);
  expect(measured('sowing,day,height (cm)\ns01,8,12 cm\ns02,8,-3\n')).toMatchInlineSnapshot(`
    "trials/leek/measurements.csv:2:7 height (cm): expected a number, such as 42; found "12 cm", a number with something behind it
      error: Leave only the number in the cell; a unit belongs in the heading, such as "height (cm)".
    trials/leek/measurements.csv:3:7 height (cm): expected a number, such as 42; found "-3", which is below zero
      error: Look the number up; only temperatures can be below zero."
  `);
  expect(measured('sowing,day,vigour (1 to 5),colour,empty\ns01,8,3,green,\ns02,8,4,pale,\n')).toMatchInlineSnapshot(`
    "trials/leek/measurements.csv:1:12 vigour (1 to 5): the unit "1 to 5" of "vigour" is not known here; it is printed as it stands
      warning: Units understood: mm, cm, m, in, mg, g, kg, oz, lb, °C, °F, h, days, weeks, months, years, %.
    trials/leek/measurements.csv:1:28 colour: the column "colour" holds words, not numbers, and was not read as a trait
      warning: Only numbers can be compared; notes on a sowing go into events.csv or the report.
    trials/leek/measurements.csv:1:35 empty: the column "empty" holds no value, and was not read as a trait
      notice: Only numbers can be compared; notes on a sowing go into events.csv or the report."
  `);
  expect(measured('sowing,day,height_mm,leaves\ns01,8,12,3\n')).toMatchInlineSnapshot(`
    "trials/leek/measurements.csv:1:12 height_mm: the unit of "height_mm" is not in brackets, so its numbers are printed without a unit
      warning: Write "height (mm)" here, and "column: height" under outcomes in trial.yaml."
  `);
  expect(measured('sowing,day,height (cm),Height (mm)\ns01,8,12,120\n')).toMatchInlineSnapshot(`
    "trials/leek/measurements.csv:1:24 Height (mm): the heading "Height" stands twice, first in cell C1
      error: Give each column its own heading, or take one column out."
  `);
  expect(measured('sowing,height\ns01,12\n')).toMatchInlineSnapshot(`
    "trials/leek/measurements.csv:1:1 day: there is neither a column "day" nor a column "date"
      error: Add the column "day" with the days since sowing, or "date" with dates such as 2026-04-12."
  `);
});
test('weighings', () => {
  const weighed = (text: string) => said({ 'weighings.csv': text });
  expect(weighed('lot,treatment,stage,mass (g)\nleek-2025,jar,befor,10\nleek-2025,,after,9\n')).toMatchInlineSnapshot(`
    "trials/leek/weighings.csv:2:15 stage: expected one of before, after, oven-dry; found "befor"
      error: Did you mean "before"?
    trials/leek/weighings.csv:3:11 treatment: a weighing after treatment has no treatment
      error: Write which treatment these seeds had."
  `);
  expect(weighed('lot,treatment,stage,mass (g),container (g)\nleek-2025,jar,before,10,12\nleek-2025,jar,after,0,\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/weighings.csv:2:22 mass (g): found 10 g with the container, not more than the 12 g of the container alone
      error: Look both masses up, and their units in the headings.
    trials/leek/weighings.csv:3:21 mass (g): found a mass of 0 g; seed weighs something
      error: Look both masses up, and their units in the headings."
  `);
  expect(
    weighed('lot,treatment,stage,mass (g)\nleek-2025,jar,before,10\nleek-2025,jar,before,10.1\ncress,tin,before,3\n'),
  ).toMatchInlineSnapshot(`
    "trials/leek/weighings.csv:3:15 stage: the same seeds were weighed at the stage "before" in line 2 already
      error: Number the weighings in a column "repeat", or keep the row that is right.
    trials/leek/weighings.csv:4:1 lot: there is no lot "cress" in trial.yaml
      error: Known here: leek-2025.
    trials/leek/weighings.csv:4:7 treatment: there is no treatment "tin" in trial.yaml
      error: Known here: packet, jar."
  `);
});
test('events', () => {
  expect(
    said({
      'events.csv':
        'day,sowing,what,action\n6,s7,dropped,left-out\n6,,dropped,left-out\n,s01,dropped,kept\n6,s01,,care\n',
    }),
  ).toMatchInlineSnapshot(`
    "trials/leek/events.csv:2:3 sowing: there is no sowing "s7" in sowings.csv
      error: Known here: s01, s02, s03, s04.
    trials/leek/events.csv:3:3 sowing: something was left out, but no sowing is named
      error: Name the sowings that are left out of the comparison, or write "kept".
    trials/leek/events.csv:4:1 day: is missing
      error: Give the day after sowing, or a date.
    trials/leek/events.csv:5:7 what: is missing
      error: Give a value for what (What happened or was done)."
  `);
});
test('an old count date before the sowing of its own tray', () => {
  expect(
    said({
      'sowings.csv': 'sowing,lot,treatment,seeds,sown\ns01,leek-2025,packet,50,2026-04-10\ns02,leek-2025,jar,50,\n',
      'counts.csv': 'sowing,date,germinated\ns01,2026-04-09,1\ns02,2026-04-09,1\n',
    }),
  ).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 date: 2026-04-09 is before sowing "s01" was sown, on 2026-04-10
      error: Look both dates up; one of them is off."
  `);
});
test('site files', () => {
  const site = (files: TextFiles) =>
    readSite(filesOf(SITE_FILES, files), 'content', new Map([['leek', null]]))
      .problems.map(problemText)
      .join('\n');
  expect(site({ 'site.yaml': null })).toMatchInlineSnapshot(`
    "content/site.yaml: there is no site.yaml, which says who publishes
      error: Create it with the keys name, base, language and licence."
  `);
  expect(
    site({
      'site.yaml':
        'name: x\nbase: example.org\nlanguage: english please\nlicence: CC-BY-4.0\ncontact: javascript:alert(1)\nunits: imperial\n',
    }),
  ).toMatchInlineSnapshot(`
    "content/site.yaml:2:1 base: expected a web address such as https://example.org/trial; found "example.org"
      error: Write the whole address, beginning with https:// or http://.
    content/site.yaml:3:1 language: expected a language tag such as en or en-GB; found "english please"
      error: Write the two or three letters of the language, with the country behind a hyphen where it matters.
    content/site.yaml:5:1 contact: expected a web address, a mailto: address or plain text; found "javascript:alert(1)"
      error: Links may begin with https://, http:// or mailto: only.
    content/site.yaml:6:1 units: expected one of metric, us; found "imperial"
      error: Write one of these words as it stands here."
  `);
  expect(site({ 'lots.yaml': 'leek-2025:\n  species: Allium porrum\n  harvested: last year\n  moisture: 9,5\n' }))
    .toMatchInlineSnapshot(`
    "content/lots.yaml:1:1 leek-2025.crop: is missing
      error: Give a value for crop (Everyday name of the crop, such as leek).
    content/lots.yaml:3:3 leek-2025.harvested: expected a year such as 2025, or a date such as 2025-09-14; found "last year"
      error: Write the year alone where the day is not known.
    content/lots.yaml:4:3 leek-2025.moisture: expected a moisture content in %, such as 9.5; found "9,5", where the comma could mark decimals or thousands
      error: Write decimals with a point, such as 4.2, and no mark for thousands."
  `);
  expect(
    site({
      'questions.yaml':
        'jar:\n  title: Jar\n  question: Does it?\n  measure: germination\n  trials: [leek, lek, { trial: leek, lott: a }]\n',
    }),
  ).toMatchInlineSnapshot(`
    "content/questions.yaml:5:38 jar.trials[2].lott: unknown key "lott"
      error: Did you mean "lot"?"
  `);
});
test('a finished trial whose tables hold nothing', () => {
  expect(said({ 'counts.csv': 'sowing,day,germinated\ns01,5,NC\ns02,5,NC\ns03,5,NC\ns04,5,NC\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:3:1 status: the trial is finished, but its tables hold no count, measurement or weighing
      error: Fill in what was counted, measured or weighed, or write "status: growing"."
  `);
});
test('UTF-8 with a lost byte is not taken for another encoding', () => {
  const text = new TextEncoder().encode('sowing,day,germinated,note\ns01,5,1,frühé Blüte\n');
  expect(said({ 'counts.csv': Uint8Array.from([...text].toSpliced(-9, 1)) })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv: this is not a text file, or its letters are broken
      error: Save it again as CSV UTF-8 (tables) or as plain text UTF-8."
  `);
});
test('abnormal or dead seeds that come back are a warning, hard and fresh ones may germinate', () => {
  expect(
    said({
      'counts.csv': 'sowing,day,germinated,dead,hard\ns01,5,1,3,9\ns01,8,1,2,4\ns02,5,1,,\ns03,5,1,,\ns04,5,1,,\n',
    }),
  ).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:3:9 dead: found 2 by day 8, fewer than the 3 by day 5
      warning: Categories are totals as of that day: correct the one that is off, or say in a note why it fell."
  `);
});
test("a mistake in the site's people or lots is not repeated in every trial", () => {
  const site = readSite(filesOf(SITE_FILES, { 'lots.yaml': 'leek-2025: { species: Allium porrum }\n' }), '.');
  const { trial, problems } = readTrial({ id: 'leek', folder: 'leek', files: filesOf(TRIAL_FILES), ...site });
  expect(site.problems.map(problemText)).toHaveLength(1);
  expect(problems).toEqual([]);
  expect(trial).toBeNull(); // its lot is not known
});
test('tables and lists without measure are refused at once', () => {
  expect(said({ 'counts.csv': `${','.repeat(2500)}x\n` })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:1: the table has 2501 columns and 0 rows, more than any trial needs
      error: Keep only the rows and columns of this trial; many count days go into the long layout."
  `);
  expect(said({ 'counts.csv': 'a,\n'.repeat(600_000) })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv: the table has more than 250,000 cells, more than any trial needs
      error: Keep only the rows and columns of this trial."
  `);
  const many = Array.from({ length: 1500 }, (_, index) => `p${index}`).join(', ');
  expect(said({ 'trial.yaml': YAML.replace('[mara]', `[${many}]`) })).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:4:1 authors: has more than 1000 entries
      error: Shorten it."
  `);
});
test('a long lots.yaml is read in reasonable time, with repeated keys named', () => {
  const lots = Array.from({ length: 20_000 }, (_, index) => `l${index}: { crop: a, species: b }\n`).join('');
  expect(said({ 'lots.yaml': `${lots}l7: { crop: a, species: b }\n` })).toMatchInlineSnapshot(`
    "trials/leek/lots.yaml: the file is larger than 500 kB, more than a file of this kind needs
      error: Keep only what belongs to it; long tables belong into CSV files."
  `);
});
test('rows that end before columns that may be empty are read, and said once', () => {
  expect(said({ 'counts.csv': 'sowing,day,germinated,dead,note\ns01,5,1,0,wet\ns02,5,1\ns03,5,1,0\ns04,5,1\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/counts.csv:3:1: this row and 2 more end before the last column, here before "dead"; what is missing was read as empty
      notice: Spreadsheets do this where the last cells are empty; if they are not, save the table again as CSV."
  `);
  expect(said({ 'counts.csv': 'sowing,day 5,day 8\ns01,1,2\ns02,1\ns03,1,2\ns04,1,2\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:3:1: this row ends before the last column, here before "day 8"; what is missing was read as empty
      notice: Spreadsheets do this where the last cells are empty; if they are not, save the table again as CSV.
    trials/leek/counts.csv:3:5 day 8: the cell is empty and was read as not checked, which is not zero
      notice: Write 0 where nothing had come up, or NC where it was not checked."
  `);
  expect(said({ 'counts.csv': 'sowing,day,germinated,dead\ns01,5,1,0\ns02,1\ns03,5,1,0\ns04,5,1,0\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/counts.csv:3:1: this row has 2 cells and there are 4 headings
      error: Give every column its cell, also the empty ones, or save the table again from a spreadsheet."
  `);
});

test('a storage series: every sowing has its time in storage', () => {
  const series = (text: string) =>
    said({
      'sowings.csv': text,
      'counts.csv': null,
      'trial.yaml': `${YAML.replace('finished', 'growing')}outcomes:\n  - id: keeping\n    measure: storage\n`,
    });
  expect(series(`sowing,lot,treatment,seeds\n${ROWS}`)).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:2:1 stored: sowing "s01" has no storage time, which the outcome "keeping" needs of every sowing
      error: Add the column "stored (years)" with the time in storage when each was sown: 0 for a sowing at the start."
  `);
  expect(
    series(
      'sowing,lot,treatment,seeds,stored (years)\ns01,leek-2025,,50,0\ns02,leek-2025,jar,50,1\ns03,leek-2025,packet,50,\n',
    ),
  ).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:4:1 stored: sowing "s03" has no storage time, which the outcome "keeping" needs of every sowing
      error: Add the column "stored (years)" with the time in storage when each was sown: 0 for a sowing at the start."
  `);
  expect(series('sowing,lot,treatment,seeds,stored (years)\ns01,leek-2025,,50,0\ns02,leek-2025,jar,50,1\n')).toBe('');
});
