/**
 * Writes tests/output/gallery.html: every chart on invented data, then those of the demonstration trials, on light and on dark paper.
 * `node tests/charts/gallery.ts`, then look at it, also in grey (`gallery.html#grey`).
 */
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { demonstrationCharts } from './demonstration-charts.ts';
import { galleryCharts } from './gallery-charts.ts';

const words = wordsFor('en');
const root = join(import.meta.dirname, '..', '..');
const face = (weight: number) => {
  const file = `@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-${weight}-normal.woff2`;
  const data = readFileSync(join(root, 'node_modules', file)).toString('base64');
  return `@font-face { font-family: 'Atkinson Hyperlegible Next'; font-weight: ${weight}; src: url(data:font/woff2;base64,${data}); }`;
};
const escaped = (text: string) => text.replace(/[&<>"]/g, (character) => `&#${character.charCodeAt(0)};`);

const figures: string[] = [];
for (const [name, chart] of Object.entries({ ...galleryCharts(words), ...(await demonstrationCharts(words)) })) {
  const id = `chart-${figures.length}`;
  figures.push(`<figure id="${id}">
    <p>${escaped(name)}</p>
    <figcaption><strong>${escaped(chart.title)}</strong><br>${escaped(chart.subtitle)}</figcaption>
    <div role="img" aria-label="${escaped(chart.description)}">${await renderSvg(chart.spec, id)}</div>
    <details><summary>Numbers</summary><p>${escaped(chart.description)}</p><table>
      <tr>${chart.table.head.map((cell) => `<th>${escaped(cell)}</th>`).join('')}</tr>
      ${chart.table.rows.map((row) => `<tr>${row.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`).join('')}
    </table></details>
  </figure>`);
}

const page = `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<title>Charts on invented data</title>
<style>
  ${face(400)} ${face(600)} ${face(700)}
  body { margin: 0; font: 14px/1.4 'Atkinson Hyperlegible Next', sans-serif; }
  main { display: grid; grid-template-columns: 1fr 1fr; }
  section { padding: 16px; background: var(--paper); color: var(--ink); }
  .light { --paper: #fbf8f0; --ink: #1d2427; } .dark { --paper: #171816; --ink: #ece7da; }
  figure { margin: 0 0 40px; max-width: 480px; } figure > p { margin: 0; opacity: .6; }
  svg { display: block; width: 100%; height: auto; }
  @media (max-width: 800px) { main { grid-template-columns: 1fr; } .dark { display: none; } :target ~ * .dark { display: block; } }
  :root:has(#grey:target) { filter: grayscale(1); }
</style>
<i id="grey"></i><main><section class="light">${figures.join('\n')}</section><section class="dark">${figures.join('\n').replaceAll('id="chart-', 'id="dark-chart-')}</section></main></html>`;
mkdirSync(join(root, 'tests', 'output'), { recursive: true });
writeFileSync(join(root, 'tests', 'output', 'gallery.html'), page);
