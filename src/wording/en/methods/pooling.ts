import type { MethodEntry } from '../../method-entry.ts';
import type { MethodId } from '../../method-ids.ts';

/** How several trials of one question are put together. */
export const pooling: Readonly<Record<Extract<MethodId, 'pooled' | 'pooled-spread' | 'pooled-next'>, MethodEntry>> = {
  pooled: {
    title: 'Several trials of one question',
    plain: [
      'Each trial gives one difference and how sure it is. What differs from garden to garden is measured and counted in, so that the answer is about gardens like these; with few trials the range is wide.',
      'A trial with one tray of a kind enters with half its seeds, as a dispersion of 2 would give. What else its one tray did is part of the spread between trials: so trials that cannot tell alone can answer together.',
      'Several lots of one trial are one answer, because trials are counted, not lots. Fewer than three trials are shown side by side and not put together.',
      'Where trials agree more closely than their own luck would have it, the wider of two ranges and the larger p are taken.',
      'Trials whose treatments do not match or whose files fail are named and left out; those that are planned, growing or given up are listed.',
    ],
    formula: [
      'SE = half the width of the trial’s 95 % range / 1.959964',
      'w = 1 / (SE² + τ²), μ = Σ w d / Σ w; τ² ≥ 0 by restricted maximum likelihood',
      's² = Σ w (d − μ)² / ((K − 1) Σ w); range μ ± t(0.975; K − 1) s',
      'where s² < 1 / Σ w: the wider of that and μ ± 1.959964 / √Σ w',
    ],
    checkedAgainst:
      'R, the likelihood by optimise() and its slope by uniroot(), relative difference below 1e-6 on fixed and random trials; printed fits of two sets of trials (vaccine trials; length of stay, Normand 1999), from memory, are met.',
  },
  'pooled-spread': {
    title: 'How much trials differ',
    plain: [
      'What trials differ by is held against the luck of their own trays. With few trials a difference between gardens would seldom show, and that is said.',
      'Each trial is left out in turn, to see whether one of them alone carries the answer.',
    ],
    formula: [
      'Q = Σ (d − μ₀)² / SE², on K − 1 df, μ₀ weighted by 1 / SE²',
      'I² = τ² / (τ² + v), v = (K − 1) Σ w / ((Σ w)² − Σ w²), w = 1 / SE²',
    ],
    checkedAgainst: 'R, the formulas written out and pchisq(); relative difference below 1e-6.',
  },
  'pooled-next': {
    title: 'Where a next repeat may fall',
    plain: [
      'The true difference of another garden may lie further off than the average of all; the result of one more trial further still, because that trial has its own luck. Only the latter is said to be where a next repeat may fall.',
    ],
    formula: [
      'true difference: μ ± t(0.975; K − 1) √(τ² + SE(μ)²), the larger of the two standard errors',
      'result: the same with the median SE² of the trials added',
    ],
    checkedAgainst: 'R, the formulas written out; relative difference below 1e-6.',
  },
};
