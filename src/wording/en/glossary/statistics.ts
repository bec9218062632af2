/** Words of statistics: id, term, meaning. */
export const statistics: readonly (readonly [id: string, term: string, meaning: string])[] = [
  ['arrangements', 'Arrangements', 'All ways in which the labels of the trays could have fallen.'],
  ['ceiling', 'Ceiling', 'The most that the caveats let a sentence say: anything, “probably”, or no cause at all.'],
  [
    'cohens-h',
    'Cohen’s h',
    'A difference of two shares on a scale on which 0.2 is small and 0.8 large, near 0 and 100 as well.',
  ],
  [
    'confounded',
    'Confounded',
    'Two things always came together, so that nobody can tell which of them made the difference.',
  ],
  [
    'correlation',
    'Correlation within a unit (ρ, ICC)',
    'How alike seeds or plants of one tray are: 0 not at all more than others, 1 wholly.',
  ],
  [
    'degrees-of-freedom',
    'Degrees of freedom (df, ν)',
    'How many free pieces of information a spread was measured from; the more, the surer.',
  ],
  ['detectable', 'Detectable difference', 'The difference that a trial of this size and spread shows 4 times in 5.'],
  ['digest', 'Digest (SHA-256)', 'A fingerprint of a file. One digit changed, and it is another.'],
  [
    'dispersion',
    'Dispersion (φ)',
    'How much trays of a kind differ, compared with seed luck alone: 1 is seed luck, 4 is four times its variance.',
  ],
  [
    'dispersion-used',
    'Dispersion used (φ*)',
    'φ pulled a little towards 2 and never below 1, so that few trays do not look surer than they are.',
  ],
  [
    'effect-size',
    'Effect size',
    'How large a difference is, on some scale; the plain difference is the first of them.',
  ],
  [
    'effective-number',
    'Effective number of seeds',
    'As many seeds as would tell the same if each had its own luck: fewer than were sown.',
  ],
  [
    'equivalence',
    'Likeness (equivalence)',
    'Any difference is smaller than what was to matter. It needs that size fixed beforehand.',
  ],
  ['f', 'F', 'A test figure: spread between kinds against spread within kinds.'],
  [
    'probit',
    'Probit',
    'A share on another scale: how far it lies from half, in standard deviations of a bell curve. 50 of 100 is 0, 84 of 100 is 1, 16 of 100 is −1.',
  ],
  [
    'survival-line',
    'Survival line',
    'The straight line by which germination, in probits, falls with time in storage. Kᵢ is where it starts; σ is the time in which it falls by one probit.',
  ],
  ['fieller', 'Fieller limits', 'A range for the ratio of two estimates, such as a half-life.'],
  [
    'hedges-g',
    'Hedges’ g',
    'A difference of two means in units of the spread between trays, corrected for small numbers.',
  ],
  [
    'hodges-lehmann',
    'Hodges–Lehmann shift',
    'The median of all differences between a tray of one kind and a tray of the other.',
  ],
  [
    'holm',
    'Holm’s rule',
    'Raises p-values where several comparisons are made, so that luck among many is not taken for a finding.',
  ],
  [
    'interval',
    'Interval (95 %)',
    'The range of true differences that the data fit with. Of many ranges made so, about 95 in 100 hold the true value.',
  ],
  [
    'margin',
    'Smallest difference that matters (margin)',
    'The size below which a difference would change nothing for the grower. Fixed before counting.',
  ],
  ['odds-ratio', 'Odds ratio', 'Seeds up per seed not up in one kind, divided by the same in the other.'],
  [
    'p-value',
    'p-value',
    'How often luck alone would give a difference at least as large, if there were none. It says nothing about size.',
  ],
  [
    'permutation',
    'Permutation test',
    'Shuffles the labels of the trays and counts how often luck gives a difference as large.',
  ],
  ['power', 'Power', 'How often a trial shows a difference that is really there.'],
  ['random', 'Random placing', 'Places drawn by lot, so that no kind gets the better ones by choice or habit.'],
  [
    'replication',
    'Replication',
    'Several separate trays of each kind. Without it, luck of a tray cannot be told from the treatment.',
  ],
  ['risk-ratio', 'Risk ratio', 'The share that came up in one kind divided by the share in the other.'],
  ['sd', 'Standard deviation (sd)', 'How far units lie from their mean, on the whole.'],
  ['t', 't', 'A test figure: a difference against its own uncertainty.'],
  [
    'tipping',
    'Tipping point',
    'How alike the seeds of one tray would have to be for a difference to be no more than luck.',
  ],
  [
    'unit',
    'Unit',
    'What was treated separately: tray, batch or block. The number of units, not of seeds, carries a finding.',
  ],
  [
    'verdict',
    'Verdict',
    'Which of five findings a comparison falls under: cannot tell, alike, a difference that matters, a difference, not settled.',
  ],
  ['welch', 'Welch’s t', 'Compares two means whose units may vary differently.'],
  [
    'i-squared',
    'I²',
    'How much of the scatter between trials is more than the luck of each: 0 % none, near 100 % nearly all.',
  ],
  [
    'mantel-haenszel',
    'Mantel–Haenszel difference',
    'One difference out of several lots: each lot compared within itself, lots with more seed counting more.',
  ],
  [
    'prediction',
    'Prediction interval',
    'Where the true difference on one more bench may lie; wider than the interval of the mean of all trials.',
  ],
  ['q', 'Q', 'A test figure: how far trials lie from their common result, against the luck of each.'],
  [
    'score-test',
    'Score test',
    'A test of two shares that measures their luck as it would be if there were no difference.',
  ],
  ['tau-squared', 'τ²', 'How much the true differences vary from trial to trial, as a variance.'],
  [
    'wilson',
    'Wilson and Newcombe intervals',
    'Ranges for a share and for the difference of two shares that stay within what can be, near none and near all too.',
  ],
];
