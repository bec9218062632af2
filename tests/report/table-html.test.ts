import { expect, test } from 'vitest';
import { tableHtml } from '../../src/report/table-html.ts';

test('what most columns are is said once; others say it themselves', () => {
  const html = tableHtml({
    caption: 'c',
    head: ['Tray', 'Day 3', 'Day 4', 'Up', 'Note'],
    rows: [['a', '1', '−2', '3 of 4', 'wet']],
  });
  expect(html).toBe(
    '<table class="figures named"><caption>c</caption><thead><tr><th scope="col">Tray' +
      '<th scope="col" class="figure">Day 3<th scope="col" class="figure">Day 4' +
      '<th scope="col" class="short">Up<th scope="col">Note</thead>' +
      '<tbody><tr><th scope="row">a<td>1<td>−2<td class="short">3 of 4<td class="text">wet</tbody></table>',
  );
});

test('a table of words and long names needs no class; a column without anything is words', () => {
  expect(tableHtml({ caption: 'c', head: ['a', 'b'], rows: [['a name that goes on', '']] })).toContain(
    '<table><caption>',
  );
});

test('a long head over short cells may break, a short one need not', () => {
  const head = ['Lot', '4 trays', '10 per 100 settled by about'];
  const html = tableHtml({ caption: 'c', head, rows: [['Dill', '27 per 100', '20 trays']] });
  expect(html).toContain(
    '<th scope="col" class="short">4 trays<th scope="col" class="long">10 per 100 settled by about',
  );
});

test('nothing that a grower wrote becomes markup', () => {
  const html = tableHtml({ caption: '<b>', head: ['<i>', '&amp;'], rows: [['<script>', '<a href="x">']] });
  expect(html).not.toMatch(/<(?:b|i|script|a)\b/);
  expect(html).toContain('<caption>&lt;b&gt;</caption>');
  expect(html).toContain('&amp;amp;');
  expect(html).toContain('<td>&lt;a href="x"&gt;');
});

test('a name of several rows stands once, over all of them, and only within the name before it', () => {
  const rows = [
    ['Leek', 'Packet', 'a', '1'],
    ['Leek', 'Packet', 'b', '2'],
    ['Leek', 'Jar', 'c', '3'],
    ['Onion', 'Jar', 'd', '4'],
  ];
  const html = tableHtml({ caption: 'c', head: ['Lot', 'Treatment', 'Tray', 'Up'], rows, names: 3 });
  expect(html.slice(html.indexOf('<tbody>'))).toBe(
    '<tbody><tr><th scope="row" rowspan="3">Leek<th scope="row" rowspan="2">Packet<th scope="row">a<td>1' +
      '<tr><th scope="row">b<td>2<tr><th scope="row">Jar<th scope="row">c<td>3' +
      '<tr><th scope="row">Onion<th scope="row">Jar<th scope="row">d<td>4</tbody></table>',
  );
});

test('what columns side by side say alike at length stands once across them, where that is asked for', () => {
  const test = 'Welch t test, unequal variances';
  const rows = [
    ['Test', test, test, 'F test', test],
    ['p', '0.1', '0.1', '0.2', '0.3'],
  ];
  const shown = { caption: 'c', head: ['Value', 'Leek', 'Onion', 'All', 'Dill'], rows };
  expect(tableHtml({ ...shown, joined: true })).toContain(
    `<th scope="row">Test<td colspan="2">${test}<td>F test<td>${test}<tr>` +
      '<th scope="row">p<td>0.1<td>0.1<td>0.2<td>0.3</tbody>',
  );
  expect(tableHtml(shown)).not.toContain('colspan');
});

test('rows without a name have none: no header is empty', () => {
  const rows = [
    ['', 'a', '1'],
    ['', 'b', '2'],
    ['Jar', 'c', '3'],
  ];
  const html = tableHtml({ caption: 'c', head: ['Treatment', 'Tray', 'Up'], rows, names: 2 });
  expect(html).toContain('<tr><td rowspan="2"><th scope="row">a<td>1<tr><th scope="row">b<td>2<tr><th scope="row">Jar');
  expect(html).not.toMatch(/<th scope[^>]*><t/);
});
