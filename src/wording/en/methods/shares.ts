import type { MethodId } from '../../method-ids.ts';
import type { MethodEntry } from '../../method-entry.ts';

/** The unit, and how shares of seeds that came up are compared. */
export const shares: Readonly<
  Record<Extract<MethodId, 'unit' | 'share' | 'dispersion' | 'difference' | 'score-test' | 'one-unit'>, MethodEntry>
> = {
  unit: {
    title: 'What is counted as one',
    plain: [
      'The unit is what was treated separately: the tray, or the batch where several trays were treated together.',
      'Seeds of one tray share that tray’s luck: its warmth, its water, its corner of the bench. To count each seed as a trial of its own makes false differences common.',
      'Sowings that share a tray are added together, then sowings of one batch, where every treatment has two batches or more.',
    ],
    formula: [],
    checkedAgainst:
      'Simulated in R, 20,000 trials a setting: with seeds counted as independent, up to 35 of 100 trials without a difference report one at four trays each.',
  },
  share: {
    title: 'How many of 100 came up',
    plain: [
      'The share is all that came up of all that was sown; its range is a Wilson score interval in which the seeds are made fewer by as much as trays differ beyond seed luck.',
      'With one unit the range covers seed luck only, and the page says so.',
    ],
    formula: [
      'p = Σx / Σn',
      'n* = Σn / φ*',
      'limits = (p + t²/2n* ± t √(p(1 − p)/n* + t²/4n*²)) / (1 + t²/n*), t = t(0.975; ν)',
    ],
    checkedAgainst: 'R, prop.test(correct = FALSE), with z in place of t; relative difference below 1e-9.',
  },
  dispersion: {
    title: 'How much trays differ beyond seed luck',
    plain: [
      'φ compares the spread of trays of a kind with what seed luck alone would give: 1 is seed luck, 4 is four times the variance.',
      'So that two trays that agree by luck do not look sure, one extra degree of freedom that holds φ = 2 is mixed in. The 2 is an assumption. φ* is never below 1.',
    ],
    formula: [
      'φ = X² / df, X² = Σ (x − n p)² / (n p (1 − p)) over the groups of the lot, df = Σ (k − 1)',
      'φ* = max(1, (X² + 2) / (df + 1)), ν = max(2, df + 1)',
    ],
    checkedAgainst: 'R, Pearson statistic of glm(family = binomial); relative difference below 1e-9.',
  },
  difference: {
    title: 'The difference of two shares',
    plain: [
      'The range of the difference is Newcombe’s hybrid score interval, with the seeds made fewer by φ* and Student’s t in place of the normal quantile.',
      'It stays within what is possible and keeps its promise near 0 and 100 of 100.',
    ],
    formula: ['L = d − √((p₁ − l₁)² + (u₂ − p₂)²), U = d + √((u₁ − p₁)² + (p₂ − l₂)²), l and u as for one share'],
    checkedAgainst:
      'Newcombe’s printed examples (from memory, equal to R) and R on random data; relative difference below 1e-9. Simulated in R in 375 settings: the range holds the true difference in at least 92 of 100 trials.',
  },
  'score-test': {
    title: 'Test of the difference',
    plain: [
      'The pooled chi-square of the 2 × 2 table is divided by φ* and read as F; the test decides no sentence, the range does.',
    ],
    formula: ['F = X²(2 × 2, no correction) / φ* on (1, ν)'],
    checkedAgainst:
      'R, Pearson statistics of glm() and prop.test(), and pf(); relative difference below 1e-9. Simulated in R in 375 settings: at most 8 of 100 trials without a difference give p below 0.05.',
  },
  'one-unit': {
    title: 'One tray of each',
    plain: [
      'With one unit of a treatment there is no test and no verdict: ordinary tray-to-tray luck cannot be measured.',
      'The range then covers seed luck only. The tipping point says how alike the seeds of a tray would have to be for the range to take in zero.',
    ],
    formula: ['n / (1 + (n − 1) ρ) in place of n, with the smallest ρ at which the range takes in zero'],
    checkedAgainst: 'R, the same search with uniroot().',
  },
};
