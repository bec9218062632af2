import { expect, test } from 'vitest';
import { problemText } from '../../src/trial/problem-text.ts';
import { readChanged, TRIAL_FILES, type TextFiles } from './trial-files.ts';

const said = (changed: TextFiles, site: TextFiles = {}) =>
  readChanged(changed, site).problems.map(problemText).join('\n');
const YAML = TRIAL_FILES['trial.yaml'];
const more = (text: string) => said({ 'trial.yaml': YAML + text });
const changed = (from: string, to: string) => said({ 'trial.yaml': YAML.replace(from, to) });

test('an empty folder', () => {
  expect(said({ 'trial.yaml': null, 'sowings.csv': null, 'counts.csv': null })).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml: there is no trial.yaml, which says what was asked and done
      error: Create it with the keys title, question, status, authors, sown, lots and treatments."
  `);
});
test('a finished trial with no records', () => {
  expect(said({ 'counts.csv': null })).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:3:1 status: the trial is finished, but there is none of counts.csv, measurements.csv and weighings.csv
      error: Add what was counted, measured or weighed, or write "status: growing"."
  `);
});
test('keys that are missing, unknown or misspelt', () => {
  expect(said({ 'trial.yaml': 'title: x\n' })).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:1 question: is missing
      error: Give a value for question (The question in one sentence).
    trials/leek/trial.yaml:1:1 status: is missing
      error: Give a value for status (How far the trial is).
    trials/leek/trial.yaml:1:1 authors: is missing
      error: Give a value for authors (Ids of people.yaml, in order of printing).
    trials/leek/trial.yaml:1:1 lots: is missing
      error: Give a value for lots (Ids of lots.yaml).
    trials/leek/trial.yaml:1:1 treatments: is missing
      error: Give a value for treatments (What was done or not done; one is the control)."
  `);
  expect(more('sumary: x\nfoo: 1\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:1 sumary: unknown key "sumary"
      error: Did you mean "summary"?
    trials/leek/trial.yaml:14:1 foo: unknown key "foo"
      error: Known here: title, question, status, authors, varies, sown, finished, licence, lots, treatments, sowing, scoring, and more."
  `);
  expect(changed('label: Sealed jar', 'lable: Sealed jar')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:12:5 treatments[1].lable: unknown key "lable"
      error: Did you mean "label"?"
  `);
  expect(changed('status: finished', 'status: finnished')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:3:1 status: expected one of planned, growing, finished, abandoned; found "finnished"
      error: Did you mean "finished"?"
  `);
  expect(changed('status: finished', 'status:')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:3:1 status: is missing
      error: Give a value for status (How far the trial is)."
  `);
  expect(changed('sown: 2026-04-04\n', '')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:1 sown: is missing; only a planned trial has no day 0 yet
      error: Give the date on which the seed was sown, such as 2026-04-04."
  `);
});
test('values of another shape', () => {
  expect(changed('authors: [mara]', 'authors: mara')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:4:1 authors: expected a list, such as [first, second]; found "mara"
      error: Put it into square brackets, or write one "- entry" a line."
  `);
  expect(changed('title: Jar or packet', 'title: [Jar]')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:1 title: expected one text or number; found a list
      error: Write a single value; quote it where it holds a colon or begins with a sign."
  `);
  expect(more('scoring: blind\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:1 scoring: expected keys with values, such as "name: Mara"; found "blind"
      error: Write one "key: value" a line, indented below it."
  `);
  expect(more('outcomes:\n  - id: germination\n    measure: germination\n    day: { leek-2025: ten }\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:16:12 outcomes[0].day.leek-2025: expected a day after sowing, such as 14; found "ten"
      error: Write digits only."
  `);
  expect(more('outcomes:\n  - id: germination\n    measure: germination\n    matters: 5 %\n    day: day 14\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:16:5 outcomes[0].matters: expected a smallest difference that matters, such as 10; found "5 %", a percentage
      error: Write the number itself, without a percent sign.
    trials/leek/trial.yaml:17:5 outcomes[0].day: expected a day after sowing, such as 14; found "day 14"
      error: Write digits only."
  `);
});
test('two controls, or none', () => {
  expect(more('    control: true\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:5 treatments[1].control: "packet" and "jar" are both the control; every treatment is compared with one control
      error: Keep "control: true" at one of them."
  `);
  expect(changed('    control: true\n', '')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:7:1 treatments: no treatment is the control, so there is nothing to compare with
      error: Write "control: true" below the treatment that the others are compared with."
  `);
});
test('ids that lead nowhere or stand twice', () => {
  expect(changed('[mara]', '[mara, tom]')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:4:17 authors[1]: there is no person "tom" in people.yaml
      error: Known here: mara."
  `);
  expect(changed('[leek-2025]', '[leek-2052]')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:6:8 lots[0]: there is no lot "leek-2052" in lots.yaml
      error: Did you mean "leek-2025"?"
  `);
  expect(changed('[leek-2025]', '[leek-2025, leek-2025]')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:6:19 lots[1]: the lot "leek-2025" is listed twice
      error: Take one of the two out."
  `);
  expect(changed('id: jar', 'id: packet')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:11:5 treatments[1].id: two treatments have the id "packet"
      error: Give each treatment its own id."
  `);
  expect(changed('id: jar', 'id: na')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:11:5 treatments[1].id: expected an id such as leek-2025; found "na", which means "no value" in a table
      error: Use letters a to z, digits and hyphens, at most 64; the full name goes into a label or title."
  `);
  expect(changed('id: jar', 'id: Sealed jar!')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:11:5 treatments[1].id: expected an id such as leek-2025; found "Sealed jar!"
      error: Use letters a to z, digits and hyphens, at most 64; the full name goes into a label or title."
  `);
  expect(more('roles: { tom: [counted] }\nimpression: { cress: quick }\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:10 roles.tom: there is no person "tom" in people.yaml
      error: Known here: mara.
    trials/leek/trial.yaml:14:15 impression.cress: there is no lot "cress" in trial.yaml
      error: Known here: leek-2025."
  `);
});
test('a treatment and a lot that were not sown', () => {
  expect(more('  - id: fridge\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:5 treatments[2]: no sowing has the treatment "fridge"
      error: Give its sowings this treatment in sowings.csv, or take the treatment out."
  `);
  expect(
    said(
      { 'trial.yaml': YAML.replace('[leek-2025]', '[leek-2025, cress]') },
      {
        'lots.yaml':
          'leek-2025: { crop: leek, species: Allium porrum }\ncress: { crop: cress, species: Lepidium sativum }\n',
      },
    ),
  ).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:6:19 lots[1]: no sowing is of the lot "cress"
      warning: Add its sowings, or take the lot out."
  `);
});
test('dates', () => {
  expect(changed('2026-04-04', '4/3/26')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:5:1 sown: expected a date such as 2026-04-03; found "4/3/26", which is 4 March to one reader and 3 April to another
      error: Write 2026-03-04 or 2026-04-03, whichever you mean."
  `);
  expect(changed('2026-04-04', '2026-02-30')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:5:1 sown: expected a date such as 2026-04-03; found "2026-02-30", and February 2026 has 28 days
      error: Look the date up; one digit is off."
  `);
  expect(more('finished: 2026-04-01\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:1 finished: 2026-04-01 is before the sowing on 2026-04-04
      error: Look both dates up; one of them is off."
  `);
});
test('outcomes', () => {
  const outcome = (...lines: readonly string[]) =>
    more(`outcomes:\n  - id: main\n${lines.map((line) => `    ${line}\n`).join('')}`);
  expect(outcome('measure: storage')).toMatchInlineSnapshot(`
    "trials/leek/sowings.csv:2:1 stored: sowing "s01" has no storage time, which the outcome "main" needs of every sowing
      error: Add the column "stored (years)" with the time in storage when each was sown: 0 for a sowing at the start."
  `);
  expect(outcome('measure: trait')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:14:5 outcomes[0].column: is missing; a trait is a column of measurements.csv
      error: Give the heading of the column, such as "column: height".
    trials/leek/trial.yaml:15:5 outcomes[0].measure: the measure "trait" needs measurements.csv, which is not there
      error: Add measurements.csv, or take the outcome out."
  `);
  expect(outcome('measure: trait', 'column: height')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:15:5 outcomes[0].measure: the measure "trait" needs measurements.csv, which is not there
      error: Add measurements.csv, or take the outcome out."
  `);
  expect(outcome('measure: germination', 'column: height')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:16:5 outcomes[0].column: found the column "height", but the measure "germination" needs none
      error: Write "measure: trait" to compare a column of measurements.csv, or take the column out."
  `);
  expect(outcome('measure: moisture')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:15:5 outcomes[0].measure: the measure "moisture" needs weighings.csv, which is not there
      error: Add weighings.csv, or take the outcome out."
  `);
  expect(outcome('measure: germination', 'day: { cress: 6 }')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:16:12 outcomes[0].day.cress: there is no lot "cress" in trial.yaml
      error: Known here: leek-2025."
  `);
  expect(
    said({
      'trial.yaml': `${YAML}outcomes: [{ id: h, measure: trait, column: hight }]\n`,
      'measurements.csv': 'sowing,day,height (mm)\ns01,8,20\n',
    }),
  ).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:37 outcomes[0].column: there is no column "hight" in measurements.csv
      error: Did you mean "height"?"
  `);
});
test('deviations', () => {
  expect(more('deviations:\n  - day: 6\n    sowings: [s7]\n    what: dropped\n    action: left-out\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:15:15 deviations[0].sowings[0]: there is no sowing "s7" in sowings.csv
      error: Known here: s01, s02, s03, s04."
  `);
  expect(more('deviations:\n  - day: 6\n    what: dropped\n    action: left-out\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:14:5 deviations[0].sowings: something was left out, but no sowing is named
      error: Name the sowings that are left out of the comparison, or write "kept"."
  `);
  expect(more('deviations:\n  - date: 2026-04-01\n    sowings: [s01]\n    what: dropped\n    action: removed\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:17:5 deviations[0].action: expected one of left-out, kept; found "removed"
      error: Write one of these words as it stands here."
  `);
  expect(more('deviations:\n  - date: 2026-04-01\n    sowings: [s01]\n    what: dropped\n    action: kept\n'))
    .toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:14:5 deviations[0].date: 2026-04-01 is before day 0, 2026-04-04
      error: Look both dates up; one of them is off."
  `);
});
test('links and licences', () => {
  expect(more('repeats: javascript:alert(1)\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:1 repeats: expected a web address such as https://example.org/trial; found "javascript:alert(1)"
      error: Write the whole address, beginning with https:// or http://."
  `);
  expect(more('licence: free to use\ndoi: https://example.org/x\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:1 licence: expected an SPDX licence id such as CC-BY-4.0 or CC0-1.0; found "free to use"
      error: Look the short name up at https://spdx.org/licenses/.
    trials/leek/trial.yaml:14:1 doi: expected a DOI such as 10.1000/182; found "https://example.org/x"
      error: Copy the part that begins with "10."."
  `);
});
test('mistakes of YAML', () => {
  expect(changed('title: Jar or packet', 'title: Jar: or packet')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:8: a second "key:" stands inside a value, or the line is indented too far
      error: Put the whole text into double quotes where it holds a colon and a blank, and begin every key of one list at the same column."
  `);
  expect(changed('title: Jar or packet', 'title:Jar or packet')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:1: a line without "key: value", or a key that runs over two lines
      error: Put a blank behind the colon (title: Leek), and check how far the lines are indented."
  `);
  expect(changed('title: Jar or packet', 'title: "Jar or packet')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:8: a quotation mark or bracket opens here and is not closed
      error: Close it; a text with such a sign in it goes into quotes of the other kind."
  `);
  expect(changed('  - id: jar', '\t- id: jar')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:11:1: a tab stands at the beginning of the line
      error: Indent with blanks, not with tabs."
  `);
  expect(changed('[mara]', '[mara')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:4:10: a bracket opens here and is not closed, or the line is indented too little
      error: Close the bracket, or indent the line."
  `);
  expect(changed('title: Jar or packet', 'title: @jar')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:8: a value begins with a sign that YAML keeps for itself
      error: Put the whole value into double quotes."
  `);
  expect(changed('title: Jar or packet', "title: 'Jar's'")).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:8: something stands here that does not fit the lines before it
      error: Check indentation, quotation marks and brackets; put a text with ' or : into double quotes."
  `);
  expect(more('title: again\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:1: the same key stands twice
      error: Keep one of the two."
  `);
  expect(more('summary: *none\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:10: an alias (*) leads nowhere, into itself, is one of more than 100, or repeats too much
      error: Write the text out, or put it into double quotes where it begins with a star."
  `);
  expect(more('conditions: &a { place: *a }\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:25: an alias (*) leads nowhere, into itself, is one of more than 100, or repeats too much
      error: Write the text out, or put it into double quotes where it begins with a star."
  `);
  expect(more('summary: !!binary aGVsbG8=\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:19: a tag beginning with "!" stands here
      error: Put the value into double quotes."
  `);
  expect(more('? [a]\n: b\n')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:13:3: a key is a list or holds keys itself
      error: Write keys as plain words; put a text with brackets into double quotes."
  `);
  expect(more(`conditions: ${'['.repeat(5000)}\n`)).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml: lists and keys are nested too deeply
      error: Compare with the example in the description of the data format."
  `);
  expect(said({ 'trial.yaml': '- a\n- b\n' })).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:1: expected keys with values, such as "name: Mara"; found a list
      error: Write one "key: value" a line, indented below it."
  `);
});
test('aliases without end are stopped', () => {
  const bomb = [
    'conditions:',
    '  a: &a [x, x, x, x, x, x, x, x, x]',
    ...'bcdefgh'
      .split('')
      .map((key, index) => `  ${key}: &${key} [${Array(9).fill(`*${'abcdefg'[index]}`).join(', ')}]`),
  ].join('\n');
  expect(more(`${bomb}\n`).split('\n').slice(0, 2)).toMatchInlineSnapshot(`
    [
      "trials/leek/trial.yaml:16:10: an alias (*) leads nowhere, into itself, is one of more than 100, or repeats too much",
      "  error: Write the text out, or put it into double quotes where it begins with a star.",
    ]
  `);
});
test('what an alias repeats is bounded, and so is a file', () => {
  const list = `conditions:\n  a: &a [${'x,'.repeat(150)}x]\n  b: [${Array(99).fill('*a').join(', ')}]\n`;
  expect(more(list).split('\n')[0]).toMatch(/^trials\/leek\/trial\.yaml:15:\d+: an alias \(\*\) .* repeats too much$/);
  expect(more(`summary: ${'long '.repeat(400_000)}\n`)).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml: the file is larger than 500 kB, more than a file of this kind needs
      error: Keep only what belongs to it; long tables belong into CSV files."
  `);
});
test('invisible signs are refused, however they are written', () => {
  expect(changed('Jar or packet', 'Jar \u202Eor packet')).toMatchInlineSnapshot(`
    "trials/leek/trial.yaml:1:12: an invisible sign that turns the direction of reading (U+202E) stands here
      error: Delete it, or type the words anew: it often comes along when text is copied from another program."
  `);
  for (const [written, code] of [
    ['\\e[2J', '001B'],
    ['\\0', '0000'],
    ['\\x9b', '009B'],
    ['\\u202e', '202E'],
    ['\\uffff', 'FFFF'],
    ['\\ud83c', 'D83C'],
    ['\\a', '0007'],
  ]) {
    expect(changed('Jar or packet', `"Jar ${written} or"`), written).toMatch(
      `trials/leek/trial.yaml:1:8: an invisible ${code === '202E' ? 'sign that turns the direction of reading' : 'control character'} (U+${code}) stands here`,
    );
    expect(more(`conditions: { "${written}": x }\n`), written).toContain(`(U+${code}) stands here`);
  }
  expect(changed('Jar or packet', '"Jar\\tor \\U0001F331"')).toBe('');
});
test("a trial's own lots and people", () => {
  expect(said({ 'lots.yaml': 'leek-2025:\n  crop: leek\n  species: Allium porrum\n  seeds_per_gram: 400\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/lots.yaml:1:1 leek-2025: "leek-2025" stands in the site's file too, with another seeds_per_gram
      error: Take it out here, make both say the same, or use another id if it is something else."
  `);
  expect(said({ 'people.yaml': 'mara:\n  name: Mara Other\n' })).toMatchInlineSnapshot(`
    "trials/leek/people.yaml:1:1 mara: "mara" stands in the site's file too, with another name
      error: Take it out here, make both say the same, or use another id if it is something else."
  `);
  expect(said({ 'lots.yaml': 'cress:\n  species: Lepidium sativum\n' })).toMatchInlineSnapshot(`
    "trials/leek/lots.yaml:1:1 cress.crop: is missing
      error: Give a value for crop (Everyday name of the crop, such as leek)."
  `);
  expect(said({ 'people.yaml': 'tom:\n  name: Tom\n  url: ftp://example.org\n  orcid: 0000-0002-1825-0098\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/people.yaml:3:3 tom.url: expected a web address such as https://example.org/trial; found "ftp://example.org"
      error: Write the whole address, beginning with https:// or http://.
    trials/leek/people.yaml:4:3 tom.orcid: expected an ORCID id such as 0000-0002-1825-0097; found "0000-0002-1825-0098"
      error: Copy the 16 digits from your ORCID page; the last one checks the others."
  `);
  expect(said({ 'people.yaml': 'mara:\n  name: Mara Example\n' })).toBe('');
});
test('a plan', () => {
  expect(said({ 'plan.yaml': 'fixed: 2026-04-01\nquestion: Does it?\n' })).toMatchInlineSnapshot(`
    "trials/leek/plan.yaml:1:1 digest: the plan has no digest, so no one can see whether it was changed after it was fixed
      warning: The digest of the plan as it stands is 9604e9fca039603984ea5d351ebf12ad29731cbeb2422390654b7cd41663dc8e. Whoever has the old sheet can see that they differ."
  `);
  expect(said({ 'plan.yaml': `fixed: 2026-04-01\ndigest: ${'0'.repeat(64)}\nquestion: Does it?\n` }))
    .toMatchInlineSnapshot(`
    "trials/leek/plan.yaml:2:1 digest: the digest does not fit the plan: it was changed after it was fixed
      warning: The digest of the plan as it stands is 9604e9fca039603984ea5d351ebf12ad29731cbeb2422390654b7cd41663dc8e. Whoever has the old sheet can see that they differ."
  `);
  expect(said({ 'plan.yaml': 'question: Does it?\ndigest: abc\n' })).toMatchInlineSnapshot(`
    "trials/leek/plan.yaml:1:1 fixed: is missing
      error: Give a value for fixed (Date on which the plan was fixed).
    trials/leek/plan.yaml:2:1 digest: expected a SHA-256 digest of 64 digits and letters a to f; found "abc"
      error: Leave it as the tool wrote it; without a digest the plan is taken as stated by the authors."
  `);
  expect(said({ 'plan.yaml': 'fixed: 2026-04-01\nseed: .nan\n' })).toMatchInlineSnapshot(`
    "trials/leek/plan.yaml: the plan holds a number or alias that JSON cannot, so it has no digest
      error: Write numbers as digits, and every text out in full."
  `);
});
test('files that nothing reads', () => {
  expect(
    said({
      'count.csv': 'x',
      'counts.xlsx': 'x',
      'photos/8-s01.heic': '',
      'photos/captions.yaml': '9-s01.jpg: { caption: x }\n',
      'photos/8-s01.jpg': '',
      '.DS_Store': '',
      'sheets/sowing.pdf': '',
    }),
  ).toMatchInlineSnapshot(`
    "trials/leek/count.csv: nothing reads a file of this name
      warning: Should it be named "counts.csv"?
    trials/leek/counts.xlsx: nothing reads a file of this name
      warning: Should it be named "counts.csv"?
    trials/leek/photos/8-s01.heic: this is a HEIC picture, which few browsers show; it cannot be published
      error: Save it as JPEG. Most phones take JPEG in place of HEIC once their camera is set to the more compatible format.
    trials/leek/photos/captions.yaml:1:1 9-s01.jpg: there is no picture "9-s01.jpg" in photos/
      warning: Did you mean "8-s01.jpg"?
    trials/leek/photos/captions.yaml:1:1: the picture "8-s01.jpg" has no text for readers who cannot see it
      warning: Say in a sentence what it shows, in photos/captions.yaml: under "8-s01.jpg:", the line "alt: …"."
  `);
});
