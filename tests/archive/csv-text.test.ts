import { expect, test } from 'vitest';
import { csvText } from '../../src/archive/csv-text.ts';

const table = {
  head: ['sowing', 'note', 'value'],
  rows: [
    ['s1', 'said "fine", then\nleft', -1.5],
    ['-s2', '=HYPERLINK("http://x")', null],
    ['+3', '@sum', 0],
    ["'=1", '\tx', 1e-7],
  ],
};

test('cells that a spreadsheet would run are made safe, numbers keep their sign, null is empty', () => {
  expect(csvText(table)).toMatchInlineSnapshot(`
    "sowing,note,value
    s1,"said ""fine"", then
    left",-1.5
    '-s2,"'=HYPERLINK(""http://x"")",
    '+3,'@sum,0
    ''=1,'	x,1e-7
    "
  `);
});

test('the copy for spreadsheets differs in its byte order mark and line ends only', () => {
  const copy = csvText({ head: ['a'], rows: [['ä'], [1]] }, true);
  expect(copy).toBe('\uFEFFa\r\nä\r\n1\r\n');
});
