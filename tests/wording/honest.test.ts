import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Comparison } from '../../src/analysis/analysis.ts';
import { verdictOf } from '../../src/analysis/verdict/verdict-of.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeCaveat } from '../support/make-result.ts';
import { told } from '../support/tell.ts';

/** Comparisons with the verdict that the analysis itself gives them, at and around zero and the margin. */
const near = (line: number) => fc.constantFrom(line, line - 0.001, line + 0.001, line - 0.4, line + 0.4);
const limit = fc.oneof(fc.double({ min: -60, max: 60, noNaN: true }), near(0), near(10), near(-10), near(2.5));
const MEASURES = [
  { measure: 'germination', unit: '%', column: null },
  { measure: 't50', unit: 'days', column: null },
  { measure: 'trait', unit: 'mm', column: 'height' },
  { measure: 'trait', unit: 'g', column: 'mass' },
] as const;

const comparison = fc
  .record({
    limits: fc.tuple(limit, limit, limit).map((three) => three.sort((a, b) => a - b)),
    shrink: fc.double({ min: 0.5, max: 1, noNaN: true }),
    margin: fc.constantFrom(undefined, 2.5, 10),
    fixed: fc.boolean(),
    ceiling: fc.constantFrom('none', 'probably', 'cause-unclear'),
    units: fc.constantFrom(1, 2, 3, 6),
    of: fc.constantFrom(...MEASURES),
  })
  .map(({ limits, shrink, margin, fixed, ceiling, units, of }) => {
    const [lower = 0, estimate = 0, upper = 0] = limits;
    const ninety = [estimate - shrink * (estimate - lower), estimate + shrink * (upper - estimate)] as const;
    const interval = { lower, upper };
    const { verdict } = verdictOf({
      replicated: units > 1,
      units,
      germinated: of.measure === 'germination' ? 450 : null,
      margin: margin ?? null,
      marginFixed: fixed,
      interval,
      ninety: { lower: ninety[0], upper: ninety[1] },
      own: interval,
      neverSame: false,
    });
    const caveats = {
      none: [],
      probably: [makeCaveat('not-randomised', { evidence: { assignment: 'by-hand' } })],
      'cause-unclear': [
        makeCaveat('confounded-place', {
          weight: 'serious',
          evidence: { treatment: 'jar', control: 'packet', values: { treatment: ['left'], control: ['right'] } },
        }),
      ],
    }[ceiling];
    return told({
      estimate,
      lower,
      upper,
      ninety,
      margin,
      fixed,
      verdict,
      caveats,
      ceiling: ceiling as Comparison['ceiling'],
      comparison: { units: { treatment: units, control: units, kind: 'sowing' } },
      result: { ...of },
    });
  });

const words = wordsFor('en');
const CLAIM = /(came up (more|less)|were (probably )?(taller|shorter|heavier|lighter|up earlier|up later))/;
const ALIKE = /any difference is smaller than/;
const seeded = { seed: 20261125, numRuns: 4000 };

test('no sentence claims what its interval does not carry', () => {
  fc.assert(
    fc.property(comparison, ({ trial, analysis, result, comparison: it }) => {
      const sentence = words.comparisonSentence(trial, analysis, result, it);
      const { lower, upper } = it.interval ?? { lower: null, upper: null };
      if (lower === null || upper === null) return;
      const margin = it.equivalence?.margin ?? Infinity;
      if (CLAIM.test(sentence)) {
        expect(it.ceiling, sentence).not.toBe('cause-unclear');
        expect(
          /came up less|shorter|lighter|earlier/.test(CLAIM.exec(sentence)?.[0] ?? '') ? upper < 0 : lower > 0,
        ).toBe(true);
        expect(sentence.includes('probably')).toBe(it.ceiling === 'probably');
      }
      if (/all (of that range is )?beyond/.test(sentence)) expect(lower > margin || upper < -margin).toBe(true);
      if (ALIKE.test(sentence)) {
        const { interval, fixedBeforehand } = it.equivalence ?? { interval: null, fixedBeforehand: false };
        expect([fixedBeforehand, it.ceiling !== 'cause-unclear', it.units.treatment >= 3]).toEqual([true, true, true]);
        expect((interval?.lower ?? -Infinity) >= -margin && (interval?.upper ?? Infinity) <= margin).toBe(true);
      }
      if (it.units.treatment === 1) expect(sentence).toMatch(/^Cannot tell\./);
    }),
    seeded,
  );
});

/** "3 to 21 more" -> both limits, each with a word that says on which side of its number it lies. */
const NUMBER = '(just over |just under |less than )?([\\d.,]+)(?: mm| days?| g)?';
const RANGE = new RegExp(
  `${NUMBER}(?: (fewer|more|earlier|later|taller|shorter|heavier|lighter))? to ${NUMBER} (\\w+)`,
);
const DOWN = ['fewer', 'earlier', 'shorter', 'lighter'];

function limitsIn(sentence: string): readonly [number, number] | null {
  const found = RANGE.exec(sentence);
  if (found === null) return null;
  const [, nearOne = '', one = '', directionOne, nearTwo = '', two = '', direction = ''] = found;
  const size = (text: string, side: string) =>
    Number(text.replaceAll(',', '')) + (side.startsWith('just over') ? 1e-6 : side === '' ? 0 : -1e-6);
  const signed = (text: string, side: string, word: string) => (DOWN.includes(word) ? -1 : 1) * size(text, side);
  const both = [signed(one, nearOne, directionOne ?? direction), signed(two, nearTwo, direction)];
  return [Math.min(...both), Math.max(...both)];
}

test('a printed range lies on the same side of zero and of the margin as the interval it stands for', () => {
  let read = 0;
  fc.assert(
    fc.property(comparison, ({ trial, analysis, result, comparison: it }) => {
      const sentence = words.comparisonSentence(trial, analysis, result, it);
      const printed = limitsIn(sentence.split('likeness, ').at(-1) ?? '');
      if (printed === null || it.interval === null) return;
      read += 1;
      const margin = it.equivalence?.margin ?? null;
      const judged = sentence.includes('judges likeness') ? it.equivalence?.interval : it.interval;
      const real = [judged?.lower ?? 0, judged?.upper ?? 0];
      for (const line of [0, ...(margin === null ? [] : [margin, -margin])]) {
        expect(
          printed.map((each) => Math.sign(each - line) + 0),
          `${sentence} [${real}] at ${line}`,
        ).toEqual(real.map((each) => Math.sign(each - line) + 0));
      }
    }),
    seeded,
  );
  expect(read).toBeGreaterThan(1000);
});

test('no sentence, headline or mark has a hole or a forbidden word in it', () => {
  fc.assert(
    fc.property(comparison, ({ trial, analysis, result, comparison: it }) => {
      const text = [
        words.comparisonSentence(trial, analysis, result, it),
        words.headline(trial, analysis, result, it),
        words.verdict(result, it).words,
      ].join('\n');
      expect(text).not.toMatch(/undefined|NaN|null|Infinity|95 % chance|significan|% more|−|  |\.\./);
      expect(text).toMatch(it.units.treatment === 1 ? /one tray of each/ : /\d and \d trays/);
    }),
    seeded,
  );
});

test('a headline and its mark claim no more than the sentence', () => {
  fc.assert(
    fc.property(comparison, ({ trial, analysis, result, comparison: it }) => {
      const { words: mark, shape } = words.verdict(result, it);
      const headline = words.headline(trial, analysis, result, it);
      const claims = (it.verdict === 'matters' || it.verdict === 'different') && it.ceiling !== 'cause-unclear';
      expect(shape === 'above' || shape === 'below').toBe(claims);
      expect(mark.includes('alike') || mark.includes('too small')).toBe(
        it.verdict === 'same' && it.ceiling !== 'cause-unclear',
      );
      if (it.ceiling === 'probably' && claims)
        expect([mark, headline].every((text) => text.includes('probably'))).toBe(true);
      if (it.verdict === 'untestable') expect(headline).toContain('cannot tell');
    }),
    seeded,
  );
});
