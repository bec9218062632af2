import type { Analysis, Comparison, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { saying, type Saying } from './findings/saying.ts';
import { lotsName } from './lots-name.ts';
import { sizeText } from './size-text.ts';
import { storedName } from './stored-name.ts';
import { verdictMark } from './verdict-mark.ts';

/** The finding in one short line: "Dichtes Glas: 12 mehr je 100 (3 bis 21 mehr)"; it claims no more than the sentence. */
export function headline(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): string {
  const { stored } = comparison;
  const pieces = saying(trial, analysis, result, comparison);
  const where = trial.lots.length > 1 ? `, ${lotsName(trial, comparison)}` : '';
  const when = stored === null ? '' : `, ${storedName(stored)}`;
  return `${pieces.name}${where}${when}: ${finding(pieces, verdictMark(result, comparison).words)}`;
}

function finding({ facts, judged, estimate, bareRange, probably, units, words }: Saying, mark: string): string {
  const range = bareRange === null ? '' : ` (${judged}${bareRange})`;
  switch (facts.case) {
    case 'matters':
    case 'different':
    case 'small-not-agreed':
      return facts.coarse && facts.case !== 'matters'
        ? `${mark}, um wie viel, ist nicht bekannt`
        : `${probably}${estimate}${range}`;
    case 'small':
    case 'same':
      return `${probably}gleich genug, innerhalb von ${sizeText(facts.margin ?? 0, words)}${range}`;
    case 'cause-unclear':
    case 'same-cause-unclear':
      return `${estimate}${range}, Ursache unklar`;
    case 'untestable':
      return `${mark}, ${units}`;
    case 'unclear':
    case 'likeness-not-agreed':
      return bareRange === null ? mark : `${mark} (${judged}${bareRange}${words.after})`;
    case 'hardly-any':
    case 'no-number':
      return mark;
  }
}
