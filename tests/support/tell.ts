import type { Analysis, Caveat, Comparison, Group, Result } from '../../src/analysis/analysis.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { inGerman } from './in-german.ts';
import { makeComparison } from './make-comparison.ts';
import { makeAnalysis, makeGroup, makeResult } from './make-result.ts';
import { makeTrial } from './make-trial.ts';

/** One comparison of jar with packet and all that its sentence is made from. */
export interface Telling {
  readonly estimate: number | null;
  readonly lower?: number | null;
  readonly upper?: number | null;
  /** Limits at 90 %; the 95 % ones where left out. */
  readonly ninety?: readonly [number, number];
  readonly margin?: number;
  readonly fixed?: boolean;
  readonly verdict?: Comparison['verdict'];
  readonly ceiling?: Comparison['ceiling'];
  readonly caveats?: readonly Caveat[];
  readonly comparison?: Partial<Comparison>;
  readonly result?: Partial<Result>;
  readonly jar?: Partial<Group>;
  readonly packet?: Partial<Group>;
  readonly trial?: Partial<Trial>;
}

export function told(telling: Telling) {
  const { estimate, lower = null, upper = null, ninety, margin, fixed = true, caveats = [] } = telling;
  const [low90, high90] = ninety ?? [lower, upper];
  const equivalence =
    margin === undefined || low90 === null || high90 === null
      ? null
      : {
          margin,
          fixedBeforehand: fixed,
          interval: { level: 0.9, lower: low90, upper: high90 },
          shown: low90 >= -margin && high90 <= margin,
        };
  const comparison = makeComparison({
    estimate,
    lower,
    upper,
    parts: {
      equivalence,
      verdict: telling.verdict ?? 'unclear',
      ceiling: telling.ceiling ?? 'none',
      ceilingFrom: caveats.map(({ id }) => id),
      units: { treatment: 6, control: 6, kind: 'sowing' },
      ...telling.comparison,
    },
  });
  const result = makeResult({
    matters: margin ?? null,
    groups: [
      makeGroup('packet', { units: 6, seeds: 300, count: 186, estimate: 62, ...telling.packet }),
      makeGroup('jar', { units: 6, seeds: 300, count: 264, estimate: 88, ...telling.jar }),
    ],
    comparisons: [comparison],
    ...telling.result,
  });
  const trial = makeTrial({ fixedBeforehand: fixed ? '2026-04-01' : null, ...telling.trial });
  const analysis: Analysis = makeAnalysis({ results: [result], caveats });
  return { trial, analysis, result, comparison };
}

/** The sentence of that comparison, in English; in German with German labels. */
export function tell(telling: Telling, language: 'en' | 'de' = 'en'): string {
  const { trial, analysis, result, comparison } = told(telling);
  const itself = language === 'de' ? inGerman(trial) : trial;
  return wordsFor(language).comparisonSentence(itself, analysis, result, comparison);
}
