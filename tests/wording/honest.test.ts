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

/** What each language says where, for the checks below. */
const LANGUAGES = [
  {
    language: 'en',
    claim: /(came up (more|less)|were (probably )?(taller|shorter|heavier|lighter|up earlier|up later))/,
    claimsLess: /came up less|shorter|lighter|earlier/,
    alike: /any difference is smaller than/,
    beyond: /all (of that range is )?beyond/,
    probably: 'probably',
    cannotTell: /^Cannot tell\./,
    oneEach: /one tray of each/,
    units: /\d and \d trays/,
    judged: 'judges likeness',
    rangeFrom: '',
    range: '{number}(?: ({word}))? to {number} (\\w+)',
    number: '(just over |just under |less than )?([\\d.,]+)(?: mm| days?| g)?',
    word: 'fewer|more|earlier|later|taller|shorter|heavier|lighter',
    down: ['fewer', 'earlier', 'shorter', 'lighter'],
    over: 'just over ',
    size: (text: string) => Number(text.replaceAll(',', '')),
    alikeMark: /alike|too small/,
  },
  {
    language: 'de',
    claim:
      /(gingen (wahrscheinlich )?(mehr|weniger) Samen auf|waren die \S+ (wahrscheinlich )?(höher|niedriger|schwerer|leichter)|ging die Saat (wahrscheinlich )?(früher|später))/,
    claimsLess: /weniger Samen|niedriger|leichter|früher/,
    alike: /Jeder Unterschied ist kleiner als/,
    beyond: /alles jenseits|der ganze Bereich liegt jenseits/,
    probably: 'wahrscheinlich',
    cannotTell: /^Das lässt sich nicht sagen\./,
    oneEach: /je (?:eine Schale|Behandlung)/,
    units: /\d und \d Schalen/,
    judged: 'gleich genug“ entscheidet: ',
    rangeFrom: 'zwischen ',
    range: '{number}(?: ({word}))? (?:bis|und) {number} (\\p{L}+)',
    number: '(?<![\\d,])(knapp über |knapp unter |unter )?([\\d.,]+)(?:.mm|.Tage?|.g)?',
    word: 'weniger|mehr|früher|später|höher|niedriger|schwerer|leichter',
    down: ['weniger', 'früher', 'niedriger', 'leichter'],
    over: 'knapp über ',
    size: (text: string) => Number(text.replaceAll(',', '.')),
    alikeMark: /gleich genug|zu klein/,
  },
] as const;
const seeded = { seed: 20261125, numRuns: 4000 };

test.each(LANGUAGES)('$language: no sentence claims what its interval does not carry', (says) => {
  const words = wordsFor(says.language);
  fc.assert(
    fc.property(comparison, ({ trial, analysis, result, comparison: it }) => {
      const sentence = words.comparisonSentence(trial, analysis, result, it);
      const { lower, upper } = it.interval ?? { lower: null, upper: null };
      if (lower === null || upper === null) return;
      const margin = it.equivalence?.margin ?? Infinity;
      if (says.claim.test(sentence)) {
        expect(it.ceiling, sentence).not.toBe('cause-unclear');
        expect(says.claimsLess.test(says.claim.exec(sentence)?.[0] ?? '') ? upper < 0 : lower > 0).toBe(true);
        expect(sentence.includes(says.probably)).toBe(it.ceiling === 'probably');
      }
      if (says.beyond.test(sentence)) expect(lower > margin || upper < -margin).toBe(true);
      if (says.alike.test(sentence)) {
        const { interval, fixedBeforehand } = it.equivalence ?? { interval: null, fixedBeforehand: false };
        expect([fixedBeforehand, it.ceiling !== 'cause-unclear', it.units.treatment >= 3]).toEqual([true, true, true]);
        expect((interval?.lower ?? -Infinity) >= -margin && (interval?.upper ?? Infinity) <= margin).toBe(true);
      }
      if (it.units.treatment === 1) expect(sentence).toMatch(says.cannotTell);
    }),
    seeded,
  );
});

/** "3 to 21 more" -> both limits, each with a word that says on which side of its number it lies. */
/** The sentence from where its range begins: behind what else is in it that could be taken for one. */
function rangeOf({ judged, rangeFrom }: (typeof LANGUAGES)[number], sentence: string): string {
  const start = sentence.includes(judged) ? judged : rangeFrom;
  return sentence.includes(start) ? sentence.slice(sentence.indexOf(start)) : '';
}

function limitsIn(says: (typeof LANGUAGES)[number], sentence: string): readonly [number, number] | null {
  const pattern = says.range.replaceAll('{number}', says.number).replace('{word}', says.word);
  const found = new RegExp(pattern, 'u').exec(sentence);
  if (found === null) return null;
  const [, nearOne = '', one = '', directionOne, nearTwo = '', two = '', direction = ''] = found;
  const down: readonly string[] = says.down;
  const size = (text: string, side: string) => says.size(text) + (side === says.over ? 1e-6 : side === '' ? 0 : -1e-6);
  const signed = (text: string, side: string, word: string) => (down.includes(word) ? -1 : 1) * size(text, side);
  const both = [signed(one, nearOne, directionOne ?? direction), signed(two, nearTwo, direction)];
  return [Math.min(...both), Math.max(...both)];
}

test.each(LANGUAGES)(
  '$language: a printed range lies on the same side of zero and of the margin as the interval it stands for',
  (says) => {
    const words = wordsFor(says.language);
    let read = 0;
    fc.assert(
      fc.property(comparison, ({ trial, analysis, result, comparison: it }) => {
        const sentence = words.comparisonSentence(trial, analysis, result, it);
        const printed = limitsIn(says, rangeOf(says, sentence));
        if (printed === null || it.interval === null) return;
        read += 1;
        const margin = it.equivalence?.margin ?? null;
        const judged = sentence.includes(says.judged) ? it.equivalence?.interval : it.interval;
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
  },
);

test.each(LANGUAGES)('$language: no sentence, headline or mark has a hole or a forbidden word in it', (says) => {
  const words = wordsFor(says.language);
  fc.assert(
    fc.property(comparison, ({ trial, analysis, result, comparison: it }) => {
      const text = [
        words.comparisonSentence(trial, analysis, result, it),
        words.headline(trial, analysis, result, it),
        words.verdict(result, it).words,
      ].join('\n');
      expect(text).not.toMatch(
        /undefined|NaN|null|Infinity|95.% (?:chance|Wahrscheinlichkeit)|signifi[ck]an|bewei[st]|% (?:more|mehr)|−|  |\.\./,
      );
      expect(text).toMatch(it.units.treatment === 1 ? says.oneEach : says.units);
    }),
    seeded,
  );
});

test.each(LANGUAGES)('$language: a headline and its mark claim no more than the sentence', (says) => {
  const words = wordsFor(says.language);
  fc.assert(
    fc.property(comparison, ({ trial, analysis, result, comparison: it }) => {
      const { words: mark, shape } = words.verdict(result, it);
      const headline = words.headline(trial, analysis, result, it);
      const claims = (it.verdict === 'matters' || it.verdict === 'different') && it.ceiling !== 'cause-unclear';
      expect(shape === 'above' || shape === 'below').toBe(claims);
      expect(says.alikeMark.test(mark)).toBe(it.verdict === 'same' && it.ceiling !== 'cause-unclear');
      if (it.ceiling === 'probably' && claims)
        expect([mark, headline].every((text) => text.includes(says.probably))).toBe(true);
      if (it.verdict === 'untestable') expect(headline).toContain(words.ui['chart.cannotTell']);
    }),
    seeded,
  );
});
