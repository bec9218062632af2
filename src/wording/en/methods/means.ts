import type { MethodId } from '../../method-ids.ts';
import type { MethodEntry } from '../../method-entry.ts';

/** How means of units are compared, and what speed means. */
export const means: Readonly<Record<Extract<MethodId, 'means' | 'times' | 'coarse' | 'blocks' | 'lots'>, MethodEntry>> =
  {
    means: {
      title: 'Means of trays',
      plain: [
        'Plants are averaged within their tray first; where there are two trays or more of each kind, their means are compared by Welch’s t, which lets the two kinds vary differently.',
        'Where all trays of both kinds read alike, there is no range: the readings are too coarse to show how trays differ.',
      ],
      formula: [
        't = (m₁ − m₂) / √(s₁²/k₁ + s₂²/k₂)',
        'df = (s₁²/k₁ + s₂²/k₂)² / ((s₁²/k₁)²/(k₁ − 1) + (s₂²/k₂)²/(k₂ − 1))',
      ],
      checkedAgainst: 'R, t.test() on the sleep and maize data and on random data; relative difference below 1e-9.',
    },
    times: {
      title: 'How fast seed came up',
      plain: [
        'Each tray gives one value: the day by which half of what came up was up (T50), the mean day, the days between a quarter and three quarters, or Maguire’s rate.',
        'Seeds that did not come up have no time. A seedling is seen only at a check, so every such value leans on when the checks were.',
        'Maguire’s rate mixes how many came up with how fast.',
      ],
      formula: [
        'T50: straight line between checks to N/2 (Coolbear et al. used (N + 1)/2)',
        'mean time = Σ n t / N',
        'spread = T75 − T25',
        'Maguire = 100 Σ (n / t) / seeds sown',
      ],
      checkedAgainst: 'Definitions applied in R to constructed counts; no printed example could be read.',
    },
    coarse: {
      title: 'Checks that lie far apart',
      plain: [
        'Where one gap between checks holds more than 0.6 of what came up, a lag is known only as far as the check days tell; the range is widened to hold what they allow.',
        'That there is a lag may still be safe; how long it is, is then not said.',
      ],
      formula: ['range = hull of Welch’s interval and (L₂ − U₁, U₂ − L₁), L and U the checks before and after half'],
      checkedAgainst:
        'Simulated trials: with coarse checks the range of the interpolated lag alone holds the true lag in as few as 0 to 60 of 100.',
    },
    blocks: {
      title: 'Blocks',
      plain: [
        'Where three blocks or more each hold every kind, kinds are compared within each block, so that what a shelf or a day does to all its trays falls out.',
        'The number of blocks is then the number of units.',
      ],
      formula: [
        'shares: p = mean of block percentages; φ_B = s²(differences) / v; φ* = max(1, (2 + (b − 1) φ_B) / b), ν = b',
        'n* = (b² / Σ 1/n_b) / φ*',
        'means: paired t on the block differences, df = b − 1',
      ],
      checkedAgainst: 'R, t.test(paired = TRUE) and the formulas written out; relative difference below 1e-9.',
    },
    lots: {
      title: 'Several lots together',
      plain: [
        'Each lot is compared by itself; lots of the same crop (or where the trial says so) are then put together, weighted by how much each one tells, and what is said holds for these lots.',
        'Whether the lots differ in their difference is tested as well.',
      ],
      formula: [
        'D = Σ w d / Σ w, w = n₁ n₂ / (n₁ + n₂)',
        'se² = φ* Σ w² v / (Σ w)², D ± t(ν) se',
        'do lots differ: F = Σ (d − D′)² / v / ((L − 1) φ*) on (L − 1, ν)',
      ],
      checkedAgainst: 'R, the formulas written out on fixed and random data; relative difference below 1e-9.',
    },
  };
