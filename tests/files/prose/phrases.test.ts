import { expect, test } from 'vitest';
import { problemText } from '../../../src/trial/problem-text.ts';
import { readTrialFolder } from '../../../src/files/read-trial-folder.ts';
import { temporaryContent } from '../temporary-content.ts';
import { TRIAL_FILES } from '../../trial/trial-files.ts';
import { proseProblemsOf, proseSaid } from './prose-said.ts';

test('a phrase that nothing supports is a warning with its place, the reason and an offer', () => {
  expect(proseSaid('# Soaking\n\nIt is slow,\nand *soaking* works. Then\n\n- there was **no\n  difference**.'))
    .toMatchInlineSnapshot(`
      "report.mdx:4:15: found "works": it promises the same for every other seed and bench
        warning: Write instead: what came up, in how many of how many, in this trial.
      report.mdx:6:15: found "no difference": a difference that was not seen may still be there
        warning: Write instead: “a difference could not be shown”, with the range."
    `);
});

test('the same in Markdown', () => {
  expect(proseSaid('A | B\n--|--\n1 | It proves it', undefined, 'md')).toContain('report.md:3:8: found "proves"');
});

test('inside a claim it is an error, wherever the claim ends', () => {
  const problems = proseProblemsOf('It proves this: <Claim is="higher">Soaking *works*.</Claim> It works.');
  expect(problems.map(({ level, column, rule }) => [level, column, rule])).toEqual([
    ['warning', 4, 'phrase-proves'],
    ['error', 45, 'phrase-works'],
    ['warning', 64, 'phrase-works'],
  ]);
  expect(problems[1]?.message).toBe('the claim says "works": it promises the same for every other seed and bench');
});

test.each([
  ['across emphasis', 'There was no *real* difference.', 1, 11],
  ['behind an entity', 'Salt &amp; soap: it proves it.', 1, 21],
  ['behind an escape', '\\*\\*\\* it proves it', 1, 11],
  ['in a plain value in braces', 'Soaking {"works"}.', 1, 11],
  ['in what a picture shows', '![Soaking works](photos/a.jpg)', 1, 11],
  ['in a heading', 'A\n\n## It works', 3, 7],
  ['in a footnote', 'A[^1]\n\n[^1]: It works', 3, 10],
  ['in an element', 'A <b>it works</b>', 1, 9],
])('is found %s', (_, text, line, column) => {
  expect(proseProblemsOf(text).filter(({ level }) => level === 'warning')).toMatchObject([{ line, column }]);
});

test.each([
  ['in an address', '[a](https://example.org/it-works)'],
  ['in a comment', 'A {/* it works */}'],
  ['across two paragraphs', 'There was no\n\ndifference between them.'],
])('is not found %s', (_, text) => {
  expect(proseProblemsOf(text)).toEqual([]);
});

test('the longer of two phrases in one place is the one that is named', () => {
  expect(proseProblemsOf('It was almost significant.').map(({ rule }) => rule)).toEqual(['phrase-trend']);
});

test('what doubled is named only where fewer than five came up in some group', async () => {
  expect(proseProblemsOf('It doubled.')).toEqual([]);
  expect(proseProblemsOf('It doubled.', 'leek-wet-start').map(({ rule }) => rule)).toEqual(['phrase-doubled']);
});

test('title, summary and impression are read as well, and nothing else of trial.yaml', async () => {
  const content = await temporaryContent({
    'trials/leek/trial.yaml': `${TRIAL_FILES['trial.yaml'].replace('Jar or packet', 'The jar works')}summary: >
  A long text, in which there was no
  difference to be seen.
impression:
  leek-2025: "It proves itself"
conditions:
  place: where everything works
`,
  });
  const { trial, problems } = await readTrialFolder(`${content}/trials/leek`);
  expect(trial).not.toBeNull();
  expect(problems.map((problem) => problemText({ ...problem, file: 'trial.yaml' })).join('\n')).toMatchInlineSnapshot(`
    "trial.yaml:1:16 title: found "works": it promises the same for every other seed and bench
      warning: Write instead: what came up, in how many of how many, in this trial.
    trial.yaml:14:35 summary: found "no difference": a difference that was not seen may still be there
      warning: Write instead: “a difference could not be shown”, with the range.
    trial.yaml:17:18 impression.leek-2025: found "proves": one trial proves nothing; it fits with some answers and not with others
      warning: Write instead: “the data fit with …”, with the range."
  `);
});
