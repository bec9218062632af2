import { describe, expect, test } from 'vitest';
import type { Chart } from '../../src/charts/chart.ts';
import { differences } from '../../src/charts/differences.ts';
import { germinationCurves } from '../../src/charts/germination-curves.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { textWidth } from '../../src/charts/text-width.ts';
import { survival } from '../../src/charts/survival.ts';
import { trait } from '../../src/charts/trait.ts';
import { units } from '../../src/charts/units.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { galleryCharts } from './gallery-charts.ts';
import { inventSeries } from './invented-series.ts';
import { invent, inventHeights } from './invented.ts';
import { readSvg } from './read-svg.ts';

const words = wordsFor('en');

const HOSTILE = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "'; DROP --&amp;&lt; \\ ]]> <!--",
  'Gießkanne 🌱👩‍🌾 中文标签',
  'ערבית עם עברית \u202Eabc',
  'no\u0000thing\u0007 lone \uD83C end',
  'Wort'.repeat(60),
  '   ',
  'datum.value ${x} {{y}} #clip0',
];

function chartsWith(labels: readonly string[], trays = 3): Record<string, Chart> {
  const shares = labels.map((label, index) => [label, 0.3 + (0.6 * index) / labels.length] as const);
  const { trial, analysis, result } = invent({ treatments: shares, trays, matters: 10, blocks: true });
  const series = inventSeries(Object.fromEntries(labels.map((label, index) => [`${index} ${label}`, -0.1 * index])), [0, 1, 2, 4]); // prettier-ignore
  const grown = inventHeights(
    labels.map((label, index) => [label, 30 + 4 * index]),
    trays,
    5,
  );
  return {
    curves: germinationCurves(trial, analysis, result, 'leek', words),
    differences: differences(trial, analysis, result, words),
    units: units(trial, analysis, result, 'leek', words),
    survival: survival(series.trial, series.analysis, series.result, 'leek', words),
    trait: trait(grown.trial, grown.analysis, grown.result, 'leek', words),
  };
}

async function expectSound(chart: Chart) {
  const svg = await renderSvg(chart.spec, 'figure');
  const { root, drawn } = readSvg(svg);
  const [width, height] = [Number(root['width']), Number(root['height'])];
  expect(width).toBe(420);
  for (const { tag, x, y, lines, attributes, layer } of drawn) {
    expect(svg).not.toMatch(/NaN|undefined|Infinity/);
    if (tag !== 'text') continue;
    const size = Number.parseFloat(attributes['font-size'] ?? '');
    expect(size).toBeGreaterThanOrEqual(13);
    const room = Math.max(0, ...lines.map((line) => textWidth(line, size)));
    const start = { start: x, middle: x - room / 2, end: x - room }[attributes['text-anchor'] ?? 'start'] ?? x;
    expect(start, `${layer}: ${lines.join(' ')}`).toBeGreaterThanOrEqual(-1);
    expect(start + room, `${layer}: ${lines.join(' ')}`).toBeLessThanOrEqual(width + 1);
    expect(y).toBeGreaterThanOrEqual(size / 2);
    expect(y + (lines.length - 1) * 17).toBeLessThanOrEqual(height);
  }
  for (const row of chart.table.rows) expect(row).toHaveLength(chart.table.head.length);
  return drawn;
}

test.each(Object.entries(galleryCharts(words)))('gallery: %s is sound', async (_, chart) => {
  await expectSound(chart);
  expect([chart.title, chart.subtitle, chart.description].every((text) => text.length > 0 && !/[{}]/.test(text))).toBe(
    true,
  );
});

describe.each(Array.from({ length: 12 }, (_, index) => index + 1))('%d treatments', (count) => {
  const labels = Array.from({ length: count }, (_, index) =>
    index % 3 === 2 ? 'Sealed jar with silica gel in the fridge' : `T${index}`,
  );
  test.each(Object.keys(chartsWith(labels)))('%s', async (kind) => {
    await expectSound(chartsWith(labels)[kind] as Chart);
  });
});

test.each(['curves', 'differences', 'units', 'trait'])('hostile labels come out as text in %s', async (kind) => {
  const drawn = await expectSound(chartsWith(HOSTILE, 2)[kind] as Chart);
  expect(new Set(drawn.map(({ tag }) => tag))).toEqual(new Set(['line', 'path', 'text']));
  const said = drawn.flatMap(({ lines }) => lines).join('');
  for (const part of ['<img', '&lt;', '中文', '👩‍🌾', 'עברית', '#clip0']) expect(said).toContain(part);
  for (const forbidden of ['\u0000', '\u0007']) expect(said).not.toContain(forbidden);
  expect(said.isWellFormed()).toBe(true);
});

test.each(['curves', 'differences', 'units', 'trait'])('%s of one sowing each is sound', async (kind) => {
  await expectSound(chartsWith(['Packet', 'Jar'], 1)[kind] as Chart);
});
