import { expect, test } from 'vitest';
import { drawable } from '../../src/print/drawable.ts';

const drawn = (text: string) => drawable(`<svg font-family="Verdana"><text>${text}</text></svg>`);
const own = (text: string) => `<svg font-family="Atkinson Hyperlegible Next"><text>${text}</text></svg>`;

test.each([
  ['Sealed jar &amp; “lid”', 'Sealed jar &amp; “lid”'],
  ['🌱 &lt;b&gt;', '[U+1F331] &lt;b&gt;'],
  ['φ 2', '<tspan font-family="Source Serif 4">φ 2</tspan>'],
  ['יבש 24 h', '<tspan font-family="Noto Sans Hebrew">יבש 24 h</tspan>'],
  ['יבש ماء', '<tspan font-family="Noto Sans Hebrew">יבש [U+0645][U+0627][U+0621]</tspan>'],
])('%s', (text, expected) => {
  expect(drawn(text)).toBe(own(expected));
});
