import type { MethodId } from '../../method-ids.ts';
import type { MethodEntry } from '../../method-entry.ts';

/** How seed that is tested again and again keeps. */
export const storage: Readonly<Record<Extract<MethodId, 'storage'>, MethodEntry>> = {
  storage: {
    title: 'How long seed keeps',
    plain: [
      'Germination at each test is turned into probits, which make the S of its fall a straight line, and the line is fitted to the counts by maximum likelihood; the half-life is the time at which it is at 50 of 100, with Fieller’s range.',
      'The unit is the jar or packet that was opened: many trays from one jar are one unit, for they share its luck. Ranges are widened by φ*, as much as jars scatter about the line beyond seed luck. A jar opened again at a later test is taken for another one, which makes ranges too narrow: open each jar once.',
      'A line needs three test times, at two of which some seed came up and some did not. A half-life is given only where the line is at half between the first and the last test, and only where its fall is told from none. Nothing is said of later times.',
      'Lines are compared only where every kind had two jars or more at each test after the start: do they fall at one slope, does one line do for all. What was sown at the start, before the kinds were parted, serves every line and counts once.',
    ],
    formula: [
      'probit(p) = Kᵢ − t / σ, half-life = Kᵢ σ',
      'φ* = max(1, (X² + 2) / (df + 1)), ν = max(2, df + 1), df = units − 2 (units − parameters for several lines)',
      'Fieller: all t with (Kᵢ − t/σ)² ≤ t²(0.975; ν) var(Kᵢ − t/σ); none where g ≥ 1',
      'lines: F = (rise of the deviance / parameters saved) / φ* on (parameters saved, ν)',
    ],
    checkedAgainst:
      'R, glm(family = binomial("probit")) on the rotenone data of Martin (1942, in Finney), the beetles of Bliss (1935) and random series; Fieller’s quadratic and deviances of nested fits in R; relative difference below 1e-6.',
  },
};
