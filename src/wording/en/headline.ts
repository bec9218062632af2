import type { Analysis, Comparison, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { saying, type Saying } from './findings/saying.ts';
import { lotsName } from './lots-name.ts';
import { storedName } from './stored-name.ts';
import { verdictMark } from './verdict-mark.ts';

/** The finding in one short line: "Sealed jar: 12 more per 100 (3 to 21 more)"; it claims no more than the sentence. */
export function headline(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): string {
  const { stored } = comparison;
  const pieces = saying(trial, analysis, result, comparison);
  const where = trial.lots.length > 1 ? `, ${lotsName(trial, comparison)}` : '';
  const when = stored === null ? '' : `, ${storedName(stored)}`;
  return `${pieces.name}${where}${when}: ${finding(pieces, verdictMark(result, comparison).words)}`;
}

function finding({ facts, judged, estimate, range, bareRange, probably, units, margin }: Saying, mark: string): string {
  switch (facts.case) {
    case 'matters':
    case 'different':
    case 'small-not-agreed':
      return facts.coarse && facts.case !== 'matters'
        ? `${mark}, by how long is not known`
        : `${probably}${estimate} (${judged}${bareRange})`;
    case 'small':
    case 'same':
      return `${probably}alike within ${margin} (${judged}${bareRange})`;
    case 'cause-unclear':
    case 'same-cause-unclear':
      return `${estimate} (${judged}${bareRange}), cause unclear`;
    case 'untestable':
      return `${mark}, ${units}`;
    case 'unclear':
    case 'likeness-not-agreed':
      return range === null ? mark : `${mark} (${judged}${range})`;
    case 'hardly-any':
    case 'no-number':
      return mark;
  }
}
