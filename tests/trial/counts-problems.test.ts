import { expect, test } from 'vitest';
import { problemText } from '../../src/trial/problem-text.ts';
import { readChanged, TRIAL_FILES, type TextFiles } from './trial-files.ts';

const said = (changed: TextFiles) => readChanged(changed).problems.map(problemText).join('\n');
const counts = (...rows: readonly string[]) =>
  said({ 'counts.csv': ['sowing,day,germinated', ...rows, ''].join('\n') });
const cell = (text: string) => counts(`s01,5,${text}`, 's02,5,1', 's03,5,1', 's04,5,1');

test('a count above the seeds sown', () => {
  expect(cell('52')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: found 52, but 50 seeds were sown in "s01"
      error: Look up the count, and the number of seeds of sowing "s01" in sowings.csv."
  `);
});
test('totals that fall', () => {
  expect(counts('s01,5,12', 's01,8,11', 's02,5,1', 's03,5,1', 's04,5,1')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:3:7 germinated: found 11 by day 8, fewer than the 12 by day 5: totals so far cannot fall
      error: Correct the one that is off. If each count is only what came up since the last check, write "counts: new" under scoring in trial.yaml."
  `);
});
test('a sowing checked twice on one day', () => {
  expect(counts('s01,5,12', 's01,5.0,12', 's02,5,1', 's03,5,1', 's04,5,1')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:3:1 sowing: sowing "s01" was checked on day 5 in line 2 already
      error: Keep the one that is right and take the other out."
  `);
});
test('an unknown sowing', () => {
  expect(counts('s1,5,12', 's02,5,1', 's03,5,1', 's04,5,1')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:1 sowing: there is no sowing "s1" in sowings.csv
      error: Did you mean "s01"?"
  `);
});
test('germinated and other categories above the seeds sown', () => {
  expect(said({ 'counts.csv': 'sowing,day,germinated,abnormal,dead\ns01,5,45,2,4\ns02,5,1,,\ns03,5,1,,\ns04,5,1,,\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:12 dead: 45 germinated and 2 abnormal, 4 dead make 51, but 50 seeds were sown in "s01"
      error: Look up the count, and the number of seeds of sowing "s01" in sowings.csv. Each seed counts once."
  `);
});
test('numbers that leave something open', () => {
  expect(cell('~20')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "~20", which leaves the number open
      error: Write the number that was counted or read; put the doubt into a note."
  `);
  expect(cell('20+')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "20+", which leaves the number open
      error: Write the number that was counted or read; put the doubt into a note."
  `);
  expect(cell('18-20')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "18-20", a range
      error: Write the one number that was counted or read; put the doubt into a note."
  `);
  expect(cell('18–20')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "18–20", a range
      error: Write the one number that was counted or read; put the doubt into a note."
  `);
  expect(cell('40%')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "40%", a percentage
      error: Write the number itself, without a percent sign."
  `);
  expect(cell('12 seeds')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "12 seeds", a number with something behind it
      error: Leave only the number in the cell; a unit belongs in the heading, such as "height (cm)"."
  `);
  expect(cell('12.5')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "12.5", which is not whole
      error: Look the number up; there are no parts of these."
  `);
  expect(cell('-3')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "-3", which is below zero
      error: Look the number up; take the minus sign out."
  `);
  expect(cell('3/4/26')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "3/4/26", a date; spreadsheets turn cells such as 3-4 into dates
      error: Type the number again and format the cell as a number."
  `);
  expect(cell('"1,000"')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "1,000", where the comma could mark decimals or thousands
      error: Write decimals with a point, such as 4.2, and no mark for thousands."
  `);
  expect(cell('twelve')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: expected a whole number of seeds, such as 12; found "twelve"
      error: Write digits only."
  `);
});
test('spreadsheet errors and formulas', () => {
  expect(cell('#REF!')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: found the spreadsheet error "#REF!"
      error: Mend the cell in the spreadsheet, or write NC where there is no value, and save again."
  `);
  expect(cell('=SUM(B2:B5)')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: found the formula "=SUM(B2:B5)" in place of its result
      error: Paste the value over the formula (paste special: values) and save again."
  `);
});
test('an ambiguous, a foreign and an impossible date', () => {
  const date = (text: string) =>
    said({
      'counts.csv': `sowing,date,germinated\ns01,${text},5\ns02,2026-04-09,1\ns03,2026-04-09,1\ns04,2026-04-09,1\n`,
    });
  expect(date('3/4/26')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 date: expected a date such as 2026-04-03; found "3/4/26", which is 3 April to one reader and 4 March to another
      error: Write 2026-04-03 or 2026-03-04, whichever you mean."
  `);
  expect(date('13.4.2026')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 date: expected a date such as 2026-04-03; found "13.4.2026"
      error: Write 2026-04-13."
  `);
  expect(date('2026-02-30')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 date: expected a date such as 2026-04-03; found "2026-02-30", and February 2026 has 28 days
      error: Look the date up; one digit is off."
  `);
  expect(date('46121')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 date: expected a date such as 2026-04-03; found "46121", which looks like a spreadsheet's inner number of a day
      error: Format the column as text. Write dates as year-month-day, such as 2026-04-03."
  `);
  expect(date('9 April')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 date: expected a date such as 2026-04-03; found "9 April"
      error: Write dates as year-month-day, such as 2026-04-03."
  `);
  expect(date('2026-04-03')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 date: 2026-04-03 is before sowing "s01" was sown, on 2026-04-04
      error: Look both dates up; one of them is off."
  `);
  expect(date('NC')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 date: is missing
      error: Give the days since sowing, or a date in a column "date"."
  `);
});
test('a day before sowing, and a date in the day column', () => {
  expect(counts('s01,-1,0', 's02,5,1', 's03,5,1', 's04,5,1')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 day: expected a day after sowing, such as 8; found "-1", which is below zero
      error: Look the number up; take the minus sign out."
  `);
  expect(counts('s01,2026-04-09,0', 's02,5,1', 's03,5,1', 's04,5,1')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 day: expected a day after sowing, such as 8; found "2026-04-09", a date
      error: Give dates in a column "date", such as 2026-04-12, or the days since sowing here."
  `);
});
test('day and date that differ', () => {
  expect(
    said({
      'counts.csv':
        'sowing,day,date,germinated\ns01,5,2026-04-10,5\ns02,5,2026-04-09,1\ns03,5,2026-04-09,1\ns04,5,2026-04-09,1\n',
    }),
  ).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 day: day 5 and 2026-04-10 are not the same day: that date is day 6 of this sowing
      error: Correct the one that is off, or keep only one of the two columns."
  `);
});
test('missing, misspelt, repeated, merged and two-line headings', () => {
  expect(said({ 'counts.csv': 'sowing,germinated\ns01,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:1 day: there is neither a column "day" nor a column "date"
      error: Add the column "day" with the days since sowing, or "date" with dates such as 2026-04-12."
  `);
  expect(said({ 'counts.csv': 'sowing,day,germintaed\ns01,5,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:1 germinated: there is no column "germinated"; the headings are "sowing", "day", "germintaed"
      error: Should "germintaed" be "germinated"?"
  `);
  expect(said({ 'counts.csv': 'sowing,day,germinated,Germinated\ns01,5,5,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:23 Germinated: the heading "Germinated" stands twice, first in cell C1
      error: Give each column its own heading, or take one column out."
  `);
  expect(said({ 'counts.csv': 'sowing,day,germinated,\ns01,5,5,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:23: column D has values but no heading, as happens with merged cells and with titles above a table
      error: Delete rows above the headings, unmerge cells, and give every column its own heading in one row."
  `);
  expect(said({ 'counts.csv': ',Leek trial,\nsowing,day,germinated\ns01,5,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:1: columns A, C have values but no heading, as happens with merged cells and with titles above a table
      error: Delete rows above the headings, unmerge cells, and give every column its own heading in one row."
  `);
  expect(said({ 'counts.csv': 'sowing,day,germinated\n,(days),(seeds)\ns01,5,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:1: the headings run over two rows
      error: Keep one row of headings; units go into brackets behind the name, such as "height (cm)"."
  `);
  expect(said({ 'counts.csv': 'sowing,"day\n3","day\n5"\ns01,5,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:8: the heading "day 3" runs over two lines
      error: Write each heading in one line of one cell, such as "day 3".
    trials/leek/counts.csv:2:4: the heading "day 5" runs over two lines
      error: Write each heading in one line of one cell, such as "day 3"."
  `);
  expect(said({ 'counts.csv': 'sowing,day,germinated (%)\ns01,5,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:12 germinated (%): this column holds numbers of seeds; found the unit "%"
      error: Write the numbers that were counted, and no unit in the heading."
  `);
});
test('an unknown column is a warning', () => {
  expect(said({ 'counts.csv': 'sowing,day,germinated,abnormals\ns01,5,5,1\ns02,5,5,1\ns03,5,5,1\ns04,5,5,1\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:23 abnormals: the column "abnormals" is not known here and was not read
      warning: Did you mean "abnormal"?"
  `);
});
test('rows of another length', () => {
  expect(counts('s01,5', 's02,5,1', 's03,5,1', 's04,5,1')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:1: this row has 2 cells and there are 3 headings
      error: Give every column its cell, also the empty ones, or save the table again from a spreadsheet."
  `);
  expect(counts('s01,5,1,5', 's02,5,1', 's03,5,1', 's04,5,1')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:9: this row has 4 cells and there are 3 headings
      error: Look for a comma inside a number or a note: write decimals with a point and put notes into quotation marks."
  `);
});
test('wide: headings that are no days', () => {
  const wide = (day: string) => said({ 'counts.csv': `sowing,day 5,${day}\ns01,1,2\ns02,1,2\ns03,1,2\ns04,1,2\n` });
  expect(wide('8')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:14 8: expected a count day such as "day 3" or a date such as 2026-04-07; found "8"
      error: Write "day 8" if that is the number of days after sowing."
  `);
  expect(wide('3/4/26')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:14 3/4/26: expected a date such as 2026-04-03; found "3/4/26", which is 3 April to one reader and 4 March to another
      error: Write 2026-04-03 or 2026-03-04, whichever you mean."
  `);
  expect(wide('2026-04-31')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:14 2026-04-31: expected a date such as 2026-04-03; found "2026-04-31", and April 2026 has 30 days
      error: Look the date up; one digit is off."
  `);
  expect(wide('day 8 pm')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:14 day 8 pm: expected a count day such as "day 3" or a date such as 2026-04-07; found "day 8 pm"
      error: Write "day 8" if that is the number of days after sowing."
  `);
  expect(wide('remark')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:1:14 remark: the column "remark" is not known here and was not read
      warning: A count day is headed by its number or its date, such as "day 5" or "2026-04-09". Known here: scorer."
  `);
  expect(wide('2026-04-09')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 2026-04-09: sowing "s01" was checked on day 5 in cell B2 already
      error: Keep the one that is right and take the other out.
    trials/leek/counts.csv:3:7 2026-04-09: sowing "s02" was checked on day 5 in cell B3 already
      error: Keep the one that is right and take the other out.
    trials/leek/counts.csv:4:7 2026-04-09: sowing "s03" was checked on day 5 in cell B4 already
      error: Keep the one that is right and take the other out.
    trials/leek/counts.csv:5:7 2026-04-09: sowing "s04" was checked on day 5 in cell B5 already
      error: Keep the one that is right and take the other out."
  `);
  expect(wide('2026-03-09')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 2026-03-09: 2026-03-09 is before sowing "s01" was sown, on 2026-04-04
      error: Look both dates up; one of them is off.
    trials/leek/counts.csv:3:7 2026-03-09: 2026-03-09 is before sowing "s02" was sown, on 2026-04-04
      error: Look both dates up; one of them is off.
    trials/leek/counts.csv:4:7 2026-03-09: 2026-03-09 is before sowing "s03" was sown, on 2026-04-04
      error: Look both dates up; one of them is off.
    trials/leek/counts.csv:5:7 2026-03-09: 2026-03-09 is before sowing "s04" was sown, on 2026-04-04
      error: Look both dates up; one of them is off."
  `);
});
test('an empty cell is a notice, NC is silent', () => {
  const wide = (a: string) => said({ 'counts.csv': `sowing,day 5,day 8\ns01,${a},2\ns02,1,2\ns03,1,2\ns04,1,2\n` });
  expect(wide('')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:5 day 5: the cell is empty and was read as not checked, which is not zero
      notice: Write 0 where nothing had come up, or NC where it was not checked."
  `);
  expect(wide('NC')).toBe('');
  expect(cell('')).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7 germinated: the cell is empty and was read as not checked, which is not zero
      notice: Write 0 where nothing had come up, or NC where it was not checked."
  `);
  expect(cell('n/a')).toBe('');
});
test('files that are no tables', () => {
  expect(said({ 'counts.csv': new Uint8Array([0x50, 0x4b, 3, 4, 20, 0]) })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv: this is a spreadsheet workbook (or a zip) under another name, not text
      error: Open it in the spreadsheet and save the sheet as CSV UTF-8; renaming does not change what is inside."
  `);
  expect(said({ 'counts.csv': new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1]) })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv: this is a spreadsheet workbook (or a zip) under another name, not text
      error: Open it in the spreadsheet and save the sheet as CSV UTF-8; renaming does not change what is inside."
  `);
  expect(said({ 'counts.csv': new Uint8Array([115, 0, 48, 0, 49, 0]) })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv: this is not a text file, or its letters are broken
      error: Save it again as CSV UTF-8 (tables) or as plain text UTF-8."
  `);
  expect(said({ 'counts.csv': '' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv: the file is empty; the first row must hold the headings
      error: Fill it in, or take the file out of the folder."
  `);
  expect(said({ 'counts.csv': 'sowing,day,germinated\ns01,5,"1\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:7: a quotation mark opens here and is never closed
      error: Close it, or take it out; a quotation mark inside a quoted cell is written twice."
  `);
  expect(said({ 'counts.csv': 'sowing,day,germinated\ns01,5,1\u0007\n' })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:8: an invisible control character (U+0007) stands here
      error: Delete it, or save the file again as UTF-8: the letters may have been broken on the way."
  `);
  expect(said({ 'counts.csv': new Uint8Array(20_000_001) })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv: the file is larger than 20 MB, more than any trial needs
      error: Keep only the rows of this trial; pictures belong in photos/."
  `);
  expect(said({ 'counts.csv': `sowing,day,germinated,note\ns01,5,5,${'x'.repeat(10_001)}\n` })).toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:9 note: this cell holds 10001 characters; at most 10,000 are read
      error: Shorten it; a quotation mark that was never closed can swallow the rows below."
  `);
});
test('numbers with commas and with points in one file', () => {
  expect(said({ 'counts.csv': 'sowing;day;germinated\ns01;5,5;1\ns02;5.5;1\ns03;5,5;1\ns04;5,5;1\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/counts.csv:3:5 day: numbers in this file use both decimal points and decimal commas; found "5.5" after the other kind
      error: Use one of the two throughout the file."
  `);
});
test('counts: new that add up to more than was sown', () => {
  const yaml = { 'trial.yaml': TRIAL_FILES['trial.yaml'] + 'scoring:\n  counts: new\n' };
  expect(said({ ...yaml, 'counts.csv': 'sowing,day 5,day 8\ns01,30,21\ns02,1,2\ns03,1,2\ns04,1,2\n' }))
    .toMatchInlineSnapshot(`
    "trials/leek/counts.csv:2:8 day 8: found 21 new ones, 51 in all, but 50 seeds were sown in "s01"
      error: Look up the count, and the number of seeds of sowing "s01" in sowings.csv."
  `);
});
test('fates.csv that says otherwise than counts.csv', () => {
  expect(
    said({
      'counts.csv': 'sowing,day,germinated,dead\ns01,5,1,3\ns02,5,1,0\ns03,5,1,0\ns04,5,1,0\n',
      'fates.csv': 'sowing,day,dead\ns01,5,4\n',
    }),
  ).toMatchInlineSnapshot(`
    "trials/leek/fates.csv:2:7 dead: found 4 dead seeds here and 3 in line 2 of counts.csv
      error: Keep the right number, and give it in one file only."
  `);
  expect(said({ 'fates.csv': 'sowing,day,abnormal,dead\ns01,8,6,5\n' })).toMatchInlineSnapshot(`
    "trials/leek/fates.csv:2:7 abnormal: 40 germinated and 6 abnormal, 5 dead make 51, but 50 seeds were sown in "s01"
      error: Look up the count, and the number of seeds of sowing "s01" in sowings.csv. Each seed counts once."
  `);
});
