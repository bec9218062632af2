import { expect, test } from 'vitest';
import { proseProblemsOf, proseSaid } from './prose-said.ts';

const HTML = 'which a report may not hold';
const EXPRESSION = 'only plain values may stand in braces';
const LINK = 'found a link to ';
const PICTURE = 'found a picture at ';
const ESM = 'found an import or export; a report is text, not a program';
const RAW = 'found raw HTML: ';

/** What may not stand in report.mdx, and a part of what is said of it. */
const IN_MDX: readonly (readonly [text: string, message: string])[] = [
  ['import x from "node:fs"', ESM],
  ['import "https://a.example/x.js"', ESM],
  ['export default () => 1', ESM],
  ['export const getStaticPaths = 1', ESM],
  ['export {x} from "y"', ESM],
  ['import x from', 'that hold no plain value'],
  ['{import("x")}', EXPRESSION],
  ['{await fetch("x")}', EXPRESSION],
  ['{globalThis.process.env.HOME}', EXPRESSION],
  ['{import.meta.env}', EXPRESSION],
  ['{props.x}', EXPRESSION],
  ['{`a`}', EXPRESSION],
  ['{[1]}', EXPRESSION],
  ['{{a: 1}}', EXPRESSION],
  ['{(() => 1)()}', EXPRESSION],
  ['{1, 2}', EXPRESSION],
  ['{/x/}', EXPRESSION],
  ['{1n}', EXPRESSION],
  ['{<b/>}', EXPRESSION],
  ['{"a"; "b"}', 'that hold no plain value'],
  ['{', 'a { that is never closed'],
  ['{/* never closed', 'a { that is never closed'],
  ['<script>alert(1)</script>', `<script>, ${HTML}`],
  ['<SCRIPT>alert(1)</SCRIPT>', 'found <SCRIPT>, which is no component'],
  ['<Script src="x"/>', 'found <Script>, which is no component'],
  ['<iframe src="x"/>', `<iframe>, ${HTML}`],
  ['<style>{"p"}</style>', `<style>, ${HTML}`],
  ['<object data="x"/>', `<object>, ${HTML}`],
  ['<embed src="x"/>', `<embed>, ${HTML}`],
  ['<form action="x"></form>', `<form>, ${HTML}`],
  ['<input name="x"/>', `<input>, ${HTML}`],
  ['<link rel="x"/>', `<link>, ${HTML}`],
  ['<meta httpEquiv="refresh"/>', `<meta>, ${HTML}`],
  ['<base href="x"/>', `<base>, ${HTML}`],
  ['<svg><script>x</script></svg>', `<svg>, ${HTML}`],
  ['<math href="javascript:x"/>', `<math>, ${HTML}`],
  ['<img src="x" onerror="y"/>', `<img>, ${HTML}`],
  ['<video src="x"/>', `<video>, ${HTML}`],
  ['<template>x</template>', `<template>, ${HTML}`],
  ['<slot/>', `<slot>, ${HTML}`],
  ['<my-element/>', `<my-element>, ${HTML}`],
  ['<xlink:href/>', `<xlink:href>, ${HTML}`],
  ['<a.b/>', `<a.b>, ${HTML}`],
  ['<Num.constructor/>', 'found <Num.constructor>, which is no component'],
  ['<Fragment set:html="<script>"/>', 'found <Fragment>, which is no component'],
  ['<Astro/>', 'found <Astro>, which is no component'],
  ['<InShrt/>', 'Did you mean "InShort"?'],
  ['> quoted\n>\n> - <b>x <script>y</script></b>', `<script>, ${HTML}`],
  ['<b onclick="x">y</b>', 'found the attribute onclick'],
  ['<b onClick={"x"}>y</b>', 'found the attribute onClick'],
  ['<b ONFOCUS="x">y</b>', 'found the attribute ONFOCUS'],
  ['<b style="x">y</b>', 'found the attribute style'],
  ['<b class="x">y</b>', 'found the attribute class'],
  ['<b id="x">y</b>', 'found the attribute id'],
  ['<b is="x">y</b>', 'found the attribute is'],
  ['<a target="x" href="https://a.example">y</a>', 'found the attribute target'],
  ['<b set:html="x">y</b>', 'found the attribute set:html'],
  ['<InShort client:load/>', 'found the attribute client:load'],
  ['<InShort server:defer/>', 'found the attribute server:defer'],
  ['<InShort slot="x"/>', 'found the attribute slot; it takes none'],
  ['<Num of="count" children="x"/>', 'found the attribute children; allowed: outcome, lot, treatment, of'],
  ['<b {...x}>y</b>', EXPRESSION],
  ['<Num {...{of: "count"}}/>', EXPRESSION],
  ['<Num of={x}/>', EXPRESSION],
  ['<Num of={`count`}/>', EXPRESSION],
  ['<Num of={<b/>}/>', EXPRESSION],
  ['<Num of=<b/>/>', 'found a < that begins no component'],
  ['<q cite="javascript:x">y</q>', LINK],
  ['<a href>x</a>', LINK],
  ['<a href="javascript:x">y</a>', LINK],
  ['<a href={"javascript:x"}>y</a>', LINK],
  ['<a href="java&#115;cript:x">y</a>', 'found a link to "javascript:x"'],
  ['<a href="&#1;javascript:x">y</a>', LINK],
  ['<a href=" javascript:x">y</a>', LINK],
  ['<a href="java\tscript:x">y</a>', LINK],
  ['<javascript:alert(1)>', 'found a < that begins no component'],
  ['<!-- a comment -->', 'found <!, which begins a comment in HTML but not here'],
  ['<!DOCTYPE html>', 'found <!, which begins a comment in HTML but not here'],
  ['<?php x ?>', 'found a < that begins no component'],
  ['<b>never closed', 'is not closed'],
  ['<Claim is="unclear">\n\nnever closed', 'is not closed'],
  ['</b>', 'is not closed'],
  ['<b><i>x</b></i>', 'is not closed'],
];

/** What may not stand in report.md. */
const IN_MD: readonly (readonly [text: string, message: string])[] = [
  ['<script>alert(1)</script>', RAW],
  ['<SCRIPT\n>alert(1)</SCRIPT>', RAW],
  ['a <img src=x onerror=alert(1)> b', RAW],
  ['<svg onload=alert(1)>', RAW],
  ['<iframe src="x"></iframe>', RAW],
  ['<style>p{}</style>', RAW],
  ['<Claim is="higher">x</Claim>', RAW],
  ['</section></main>', RAW],
  ['a </p> b', RAW],
  ['<?php x ?>', RAW],
  ['<!DOCTYPE html>', RAW],
  ['<![CDATA[x]]>', RAW],
  ['<!-- a --><script>alert(1)</script><!-- b -->', RAW],
  ['<!--><script>alert(1)</script>-->', RAW],
  ['<!---><script>alert(1)</script>-->', RAW],
  ['<!-- a --!><script>alert(1)</script> -->', RAW],
  ['<!-- never closed\n\n<script>x</script>', RAW],
  ['<javascript:alert(1)>', LINK],
  ['<vbscript:x>', LINK],
];

/** What may stand in neither. */
const IN_BOTH: readonly (readonly [text: string, message: string])[] = [
  ['[x](javascript:alert(1))', 'found a link to "javascript:alert(1)"'],
  ['[x](JaVaScRiPt:alert(1))', LINK],
  ['[x](java&#115;cript:alert(1))', 'found a link to "javascript:alert(1)"'],
  ['[x](&#x6A;avascript:alert(1))', LINK],
  ['[x](javascript&colon;alert(1))', 'found a link to "javascript:alert(1)"'],
  ['[x](&#1;javascript:x)', LINK],
  ['[x](<java&Tab;script:x>)', LINK],
  ['[x](<java&NewLine;script:x>)', LINK],
  ['[x](< javascript:x>)', LINK],
  ['[x](data:text/html,x)', LINK],
  ['[x](vbscript:x)', LINK],
  ['[x](blob:x)', LINK],
  ['[x](file:///etc/passwd)', LINK],
  ['[x](//a.example)', LINK],
  ['[x](</\\a.example>)', LINK],
  ['[x](https:a.example)', LINK],
  ['[x][1]\n\n[1]: javascript:x', LINK],
  ['[![x](photos/a.jpg)](javascript:x)', LINK],
  ['A[^1]\n\n[^1]: [x](javascript:x)', LINK],
  ['a | b\n--|--\n[x](javascript:x) | y', LINK],
  ['![x](javascript:x)', PICTURE],
  ['![x](data:image/svg+xml,x)', PICTURE],
  ['![x](https://a.example/x.png)', PICTURE],
  ['![x](//a.example/x.png)', PICTURE],
  ['![x][1]\n\n[1]: https://a.example/x.png', PICTURE],
  ['![1]\n\n[1]: https://a.example/x.png', PICTURE],
  ['![x](photos/../../other/photos/x.jpg)', PICTURE],
  ['![x](photos/%2e%2e/x.jpg)', PICTURE],
  ['![x](photos/a.svg)', PICTURE],
  ['![x](photos/a.jpg)', 'there is no picture photos/a.jpg'],
  ['12 \u202E34', 'turns the direction of reading (U+202E)'],
  ['12 &#8238;34', 'turns the direction of reading (U+202E)'],
  ['12 &#x2067;34', 'turns the direction of reading (U+2067)'],
  ['a \u001B[2J', 'an invisible control character (U+001B)'],
  ['---\nlayout: /etc/x.astro\n---\n\nx', 'a block of settings'],
];

const refused = (text: string, ending: string, message: string) => {
  const errors = proseProblemsOf(`Fine.\n\n${text}`, 'parsley-soaked-a-day', ending).filter(
    ({ level }) => level === 'error',
  );
  // Settings stand at the very beginning or they are none.
  const found = text.startsWith('---') ? proseProblemsOf(text, undefined, ending) : errors;
  expect(found.map((one) => `${one.message} ${one.remedy}`).join('\n')).toContain(message);
  for (const { line, column } of found) {
    expect(line).toBeGreaterThanOrEqual(text.startsWith('---') ? 1 : 3);
    expect(column).toBeGreaterThanOrEqual(1);
  }
};

test.each(IN_MDX)('report.mdx refuses %s', (text, message) => refused(text, 'mdx', message));
test.each(IN_MD)('report.md refuses %s', (text, message) => refused(text, 'md', message));
test.each(IN_BOTH)('both refuse %s', (text, message) => {
  refused(text, 'mdx', message);
  refused(text, 'md', message);
});

test.each([
  ['import this into your garden book', 'md'],
  ['Import duties are high.', 'mdx'],
  ['`<script>` and &lt;script&gt; are read as they are', 'mdx'],
  ['`<script>` and \\<script> are read as they are', 'md'],
  ['```js\nalert(1)\n```', 'mdx'],
  ['<!-- a note to myself -->', 'md'],
  ['{/* a note to myself */}', 'mdx'],
  ['{14} {-1.5} {"jar"} {true}', 'mdx'],
  ['<details open><summary>More</summary>x</details>', 'mdx'],
  ['H<sub>2</sub>O, <abbr title="Time">T</abbr>, <time datetime="2026-04-04">April</time>', 'mdx'],
  [
    '[a](https://a.example), [b](http://a.example), [c](mailto:a@b.example), [d](#x), [e](../peas/), [f](/glossary/)',
    'md',
  ],
  ['www.a.example and a@b.example', 'mdx'],
  ['It was 5 < 6 and 7 > 6.', 'mdx'],
])('lets pass: %s', (text, ending) => {
  expect(proseSaid(text, undefined, ending)).toBe('');
});

test('what would take a parser without end is refused', () => {
  const said = (text: string, ending: string) => proseSaid(text, undefined, ending).split('\n')[0];
  for (const ending of ['md', 'mdx']) {
    expect(said('> '.repeat(5000), ending)).toMatch(
      /^report\.mdx?(:1:1)?: quotes, lists or elements stand within one another too/,
    );
    expect(said(`Fine.\n\n${'> '.repeat(70)}x`, ending)).toMatch(
      /^report\.mdx?:3:1: quotes, lists or elements stand within/,
    );
    expect(said('[a]('.repeat(20_001), ending)).toBe(
      `report.${ending}: the text is longer than 80 kB, some 12,000 words`,
    );
  }
});

test('everything is said at once, in the order of the text', () => {
  expect(proseSaid('{1 + 1}\n\n<script/>\n\n[x](javascript:x)\n\nIt works.')).toMatchInlineSnapshot(`
    "report.mdx:1:1: found the expression {"1 + 1"}; only plain values may stand in braces, such as {14} or {"jar"}
      error: Write the words or the number itself.
    report.mdx:3:1: found <script>, which a report may not hold
      error: Write it in Markdown, or use a component.
    report.mdx:5:1: found a link to "javascript:x"
      error: Links begin with https://, http://, mailto:, / or #.
    report.mdx:7:4: found "works": it promises the same for every other seed and bench
      warning: Write instead: what came up, in how many of how many, in this trial."
  `);
});
