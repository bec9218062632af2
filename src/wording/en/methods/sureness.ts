import type { MethodId } from '../../method-ids.ts';
import type { MethodEntry } from '../../method-entry.ts';

/** How a verdict comes about, and what is said beside it. */
export const sureness: Readonly<
  Record<
    Extract<
      MethodId,
      | 'permutation'
      | 'effect-sizes'
      | 'many'
      | 'verdict'
      | 'detectable'
      | 'planning'
      | 'agreement'
      | 'caveats'
      | 'moisture'
      | 'software'
    >,
    MethodEntry
  >
> = {
  permutation: {
    title: 'Shuffling the labels',
    plain: [
      'The labels of the trays are shuffled in every possible way (or 20,000 times, from a fixed seed), and it is counted how often luck alone gives a difference as large.',
      'It is left out where there are too few trays for any such count to fall below 5 in 100.',
    ],
    formula: ['all arrangements: p = share with |difference| at least as large', 'drawn: p = (b + 1) / (m + 1)'],
    checkedAgainst:
      'Full enumeration in R; Fisher’s count for Darwin’s maize (1,726 of 32,768, both sides; from memory, equal to R).',
  },
  'effect-sizes': {
    title: 'Other measures of size',
    plain: [
      'For shares: risk ratio, odds ratio and Cohen’s h, which carry no range here; for means of two trays or more of each kind: Hedges’ g with a range, and the Hodges–Lehmann shift.',
    ],
    formula: ['h = 2 arcsin √p₁ − 2 arcsin √p₂', 'g = J d, J = 1 − 3/(4 df − 1); range from the noncentral t'],
    checkedAgainst: 'R, the formulas written out and pt(ncp = …); for g relative difference below 1e-7.',
  },
  many: {
    title: 'Many comparisons',
    plain: [
      'Where several lots or treatments are compared, p is raised by Holm’s rule; a difference that does not pass it is called “probably” at most.',
    ],
    formula: ['sorted p: max over earlier ones of (m − i + 1) p, at most 1'],
    checkedAgainst: 'R, p.adjust(method = "holm"); relative difference below 1e-9.',
  },
  verdict: {
    title: 'How the finding is chosen',
    plain: [
      'A difference is said only where the 95 % range leaves out zero; that it matters, only where the whole range lies beyond the smallest difference that matters; likeness, only where the 90 % range lies inside it, with three units or more of each and that size fixed before the first count.',
      'Two one-sided tests at 5 % are the same as a 90 % range inside the margin; so likeness is judged by that range.',
      'With fewer than 5 seedlings in all, nothing is compared. A p-value never decides a sentence.',
      'A range that leaves out zero and lies inside the margin says: there is a small difference, too small to matter.',
    ],
    formula: [
      'untestable: fewer than 2 units of a kind',
      'same: margin M fixed beforehand, 3 units or more of each, −M ≤ l₉₀ and u₉₀ ≤ M',
      'matters: l₉₅ > M or u₉₅ < −M',
      'different: l₉₅ > 0 or u₉₅ < 0',
      'unclear: all else',
    ],
    checkedAgainst: 'A test for each rule and for its edges.',
  },
  detectable: {
    title: 'What a trial of this size can show',
    plain: [
      'The detectable difference is the one that a trial with this spread and this number of trays shows 4 times in 5; the number of trays that would settle a question is worked out the other way round.',
    ],
    formula: ['d = (t(0.975; ν) + t(0.80; ν)) √(φ* (p₀q₀/N₀ + p₁q₁/N₁))', 'means: noncentral t on Welch’s df'],
    checkedAgainst: 'R, uniroot() on the formula, relative difference below 1e-9, and power.t.test(), below 1e-7.',
  },
  planning: {
    title: 'What a plan could show',
    plain: [
      'Before sowing, trials of the planned size are drawn at random many times over, once with the difference that matters and once with none, and each is put through the analysis that a report uses; so often it would be shown, or seem to be there.',
      'Trays vary by a beta-binomial distribution, tray means and times by a normal one, each by the spread that is assumed; each share is given with its Monte Carlo error. The same seed draws the same trials everywhere.',
      'A formula stands beside it: the equation of the detectable difference solved for the chance; it knows nothing of the ends of the scale and of gaps between checks.',
    ],
    formula: [
      'φ = 1 + (n − 1) ρ for trays of n seeds',
      'chance = P(T ≤ d / se − t(0.975; ν)), se = √(φ* (p₀q₀ + p₁q₁) / N)',
      'time to half: sd = √(sd² between trays + (π/2) sd² of seeds / seeds that come up)',
    ],
    checkedAgainst:
      'R, power.t.test() below 1e-7 and power.prop.test() within 3 points for many trays; simulation against the table of false alarms that the method was chosen by, within its Monte Carlo error.',
  },
  agreement: {
    title: 'Do trays of a kind agree',
    plain: [
      'The gap between the highest and the lowest tray is held against what seed luck gives: for two or four sowings of 100 a public table, else a formula.',
      'Trays that agree too well are put as a question, never as an accusation.',
    ],
    formula: ['q(0.975; k, ∞) √(p (100 − p) / n)'],
    checkedAgainst:
      'The table of 7 CFR 201.55, all rows; R, qtukey(). The formula meets 36 of its 49 rows for four sowings.',
  },
  caveats: {
    title: 'Caveats',
    plain: [
      'Fixed rules look for what can mislead: a serious one means that no cause is claimed, a caution that “probably” is said, a note that it stands beside the result.',
    ],
    formula: [],
    checkedAgainst: 'A test for each rule, with a trial that trips it and one that does not.',
  },
  moisture: {
    title: 'Water lost and moisture',
    plain: [
      'Water lost is the mass lost, of the seed’s mass at the start. How moist seed is can be said only where its moisture at the start or its oven-dry mass is known.',
      'A mass read in steps of s may be half a step more or less; what both readings allow is given.',
      'Moisture is of the whole mass (wet basis).',
    ],
    formula: [
      'water lost % = 100 (m₀ − m₁) / m₀',
      'oven: 100 (M₂ − M₃) / (M₂ − M₁), M₁ the container',
      'after drying: 100 − (100 − c₀) m₀ / m₁',
    ],
    checkedAgainst: 'Worked figures (10.00389 % and others), computed in R.',
  },
  software: {
    title: 'Software',
    plain: [
      'The same files give the same numbers, byte for byte: fixed seeds, fixed order, no clock.',
      'Numbers are rounded only where they are shown, and never across zero or the smallest difference that matters.',
    ],
    formula: [],
    checkedAgainst:
      'R (base and stats) in the project’s own tests; the R script beside the data recomputes the headline numbers.',
  },
};
