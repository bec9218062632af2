import { expect, test } from 'vitest';
import { tableHtml } from '../../src/report/table-html.ts';

test('what most columns are is said once; others say it themselves', () => {
  const html = tableHtml('c', ['Tray', 'Day 3', 'Day 4', 'Up', 'Note'], [['a', '1', '−2', '3 of 4', 'wet']]);
  expect(html).toBe(
    '<table class="figures"><caption>c</caption><thead><tr><th scope="col">Tray' +
      '<th scope="col" class="figure">Day 3<th scope="col" class="figure">Day 4' +
      '<th scope="col" class="short">Up<th scope="col">Note</thead>' +
      '<tbody><tr><th scope="row">a<td>1<td>−2<td class="short">3 of 4<td class="text">wet</tbody></table>',
  );
});

test('a table of words needs no class; a column without anything is words', () => {
  expect(tableHtml('c', ['a', 'b'], [['x', '']])).toContain('<table><caption>');
});

test('nothing that a grower wrote becomes markup', () => {
  const html = tableHtml('<b>', ['<i>', '&amp;'], [['<script>', '<a href="x">']]);
  expect(html).not.toMatch(/<(?:b|i|script|a)\b/);
  expect(html).toContain('<caption>&lt;b&gt;</caption>');
  expect(html).toContain('&amp;amp;');
  expect(html).toContain('<td>&lt;a href="x"&gt;');
});
