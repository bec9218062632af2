import type { TopLevelSpec } from 'vega-lite';
import { beforeAll, expect, test } from 'vitest';
import { germinationCurves } from '../../src/charts/germination-curves.ts';
import { renderSvg } from '../../src/charts/render-svg.ts';
import { units } from '../../src/charts/units.ts';
import { invent } from './invented.ts';
import { words } from './plain-words.ts';
import { readSvg } from './read-svg.ts';

const { trial, analysis, result } = invent({
  treatments: [
    ['Packet', 0.6],
    ['Jar', 0.8],
  ],
});
const curves = germinationCurves(trial, analysis, result, 'leek', words);
let first: string;
beforeAll(async () => {
  first = await renderSvg(curves.spec, 'a');
});

test('the same chart gives the same bytes again, after other charts and beside others', async () => {
  const other = units(trial, analysis, result, 'leek', words);
  await renderSvg(other.spec, 'b');
  const together = await Promise.all([curves, other, curves].map(({ spec }) => renderSvg(spec, 'a')));
  expect(together[0]).toBe(first);
  expect(together[2]).toBe(first);
});

test('a chart of the same kind with other data does not leak into the next', async () => {
  const other = invent({
    treatments: [
      ['Soaked', 1],
      ['Dry', 0.1],
      ['Cold', 0.4],
    ],
    days: [2, 4],
  });
  await renderSvg(germinationCurves(other.trial, other.analysis, other.result, 'leek', words).spec, 'c');
  expect(await renderSvg(curves.spec, 'a')).toBe(first);
});

test('ticks and lines drawn before do not stand in front: the order is that of the data', async () => {
  const lines = Map.groupBy(curves.spec.datasets?.['sowings'] as { line: string }[], ({ line }) => line);
  const turned = {
    ...curves.spec,
    datasets: { ...curves.spec.datasets, sowings: [...lines.values()].toReversed().flat() },
  };
  const paths = (svg: string) => svg.match(/<path [^>]*stroke-linejoin="round"[^>]*>/g) ?? [];
  expect(paths(first).length).toBe(lines.size);
  expect(paths(await renderSvg(turned, 'a'))).toEqual(paths(first).toReversed());
  const early = invent({ treatments: [['Packet', 0.5]], days: [1, 7, 30] });
  await renderSvg(germinationCurves(early.trial, early.analysis, early.result, 'leek', words).spec, 'a');
  expect(await renderSvg(curves.spec, 'a')).toBe(first);
});

test('drawing leaves the specification as it was', async () => {
  const before = JSON.stringify(curves.spec);
  await renderSvg(curves.spec, 'a');
  expect(JSON.stringify(curves.spec)).toBe(before);
  const row = (curves.spec.datasets?.['checks'] as object[] | undefined)?.[0] ?? null;
  expect(row).not.toBeNull();
  expect(Object.getOwnPropertySymbols(Object(row))).toEqual([]);
});

test('holds nothing that the page’s content policy refuses: no style, script, link, picture or other host', () => {
  expect(first).not.toMatch(
    / style=|<style|<script|<image|<a |href|url\(|on\w+=|@import|https?:(?!\/\/www\.w3\.org\/2000\/svg")/,
  );
});

test('takes its ink from the page and carries its own size and one face', () => {
  const { root, drawn } = readSvg(first);
  expect(root).toMatchObject({
    width: '420',
    xmlns: 'http://www.w3.org/2000/svg',
    viewBox: `0 0 420 ${root['height']}`,
  });
  expect(first.match(/font-family/g)).toHaveLength(1);
  expect(drawn.filter(({ tag }) => tag === 'text').map(({ attributes }) => attributes['fill'])).toEqual(
    drawn.filter(({ tag }) => tag === 'text').map(() => 'currentColor'),
  );
});

test('open marks are filled with the paper they lie on', async () => {
  const fills = async (paper?: string) =>
    readSvg(await renderSvg(curves.spec, 'a', paper))
      .drawn.filter(({ layer }) => layer === 'keyMarks')
      .map(({ attributes }) => attributes['fill']);
  expect(await fills()).toEqual(['var(--paper, none)', '#2372b5']);
  expect(await fills('#ffffff')).toEqual(['#ffffff', '#2372b5']);
});

const clipped: TopLevelSpec = {
  width: 40,
  height: 40,
  padding: { left: 0, top: 0, right: 0, bottom: 0 },
  datasets: { rows: [{ a: 1, text: '#clip0 id="clip0" font-family="x" 1.23456' }] },
  data: { name: 'rows' },
  layer: [
    { mark: { type: 'bar', clip: true }, encoding: { y: { field: 'a', type: 'quantitative' } } },
    { mark: 'text', encoding: { text: { field: 'text', type: 'nominal' } } },
  ],
};

test('ids inside are numbered by chart, not by process, and labels that look like code stay as they are', async () => {
  const svg = await renderSvg(clipped, 'fig');
  expect([...svg.matchAll(/<clipPath id="([^"]+)"/g)].map(([, id]) => id)).toEqual(['fig-1']);
  expect(svg).toContain('url(#fig-1)');
  expect(await renderSvg(clipped, 'fig')).toBe(svg);
  expect(readSvg(svg).drawn.find(({ layer }) => layer === 'layer_1')?.lines).toEqual([
    '#clip0 id="clip0" font-family="x" 1.23456',
  ]);
});

test('what Vega-Lite would only warn about stops the build', async () => {
  const wrong = {
    ...clipped,
    layer: [{ mark: 'bar', encoding: { y: { field: 'a', type: 'quantitative', bin: 'x' }, nonsense: { field: 'a' } } }],
  };
  await expect(renderSvg(wrong as unknown as TopLevelSpec, 'fig')).rejects.toThrow('could not be drawn');
});

test('a dataset that the specification does not know stops the build', async () => {
  await expect(renderSvg({ ...clipped, datasets: { elsewhere: [] } }, 'fig')).rejects.toThrow('elsewhere');
});
