import type { Analysis, Comparison, Result } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import { finding, type Facts } from '../../finding.ts';
import { label } from '../../label.ts';
import { differenceText } from '../difference-text.ts';
import { differenceWords, type DifferenceWords } from '../difference-words.ts';
import { fitText } from '../fit-text.ts';
import type { Noun } from '../noun.ts';
import { quotedLabel } from '../quoted-label.ts';
import { rangeText } from '../range-text.ts';
import { sizeText } from '../size-text.ts';
import { unitNoun } from '../unit-noun.ts';
import { reasonsText } from './reasons-text.ts';
import { unitsOfEach } from './units-of-each.ts';

/** The pieces that the German result sentences of every measure are put together from. */
export interface Saying {
  readonly trial: Trial;
  readonly result: Result;
  readonly comparison: Comparison;
  readonly facts: Facts;
  readonly words: DifferenceWords;
  /** The treatment's label as it stands. */
  readonly name: string;
  /** "bei „Dichtes Glas“": where something was seen. */
  readonly atB: string;
  readonly atA: string;
  /** "12 mehr je 100". */
  readonly estimate: string;
  /** "3 bis 21 mehr", without what follows the direction; null without an interval. */
  readonly bareRange: string | null;
  /** "zu allem zwischen 3 und 21 mehr je 100", after "die Daten passen"; null without an interval. */
  readonly fits: string | null;
  /** "die Daten passen zu allem zwischen 3 und 21 mehr", or the narrower range that judges likeness, and "; "; may be empty. */
  readonly fitting: string;
  /** Where likeness is judged by the narrower interval, the words that say so before the range. */
  readonly judged: string;
  /** "Schwelle von 10 je 100", "Schwelle von 2 Tagen"; empty where none was given. */
  readonly threshold: string;
  /** The same with its meaning: "Schwelle von 10 je 100, ab der ein Unterschied zählen sollte". */
  readonly thresholdSet: string;
  /** "6 und 6 Schalen". */
  readonly units: string;
  /** What stood on the bench, also where blocks are compared. */
  readonly tray: Noun;
  /** "wahrscheinlich " or nothing. */
  readonly probably: string;
  /** "Wir sagen „wahrscheinlich“, denn …", or nothing. */
  readonly because: string;
  /** The reason clauses, joined. */
  readonly reasons: string;
}

/** Puts the facts of a comparison into German pieces. */
export function saying(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): Saying {
  const facts = finding(trial, analysis, result, comparison);
  const words = differenceWords(result.measure, result.column, result.unit);
  const bare = { ...words, after: '' };
  const { limits, estimate, margin } = facts;
  const reasons = reasonsText(trial, analysis, facts.reasons);
  const bareRange = limits && rangeText(limits.lower, limits.upper, bare);
  const judged = facts.judgedByNarrower ? 'nach dem Bereich, der über „gleich genug“ entscheidet: ' : '';
  const threshold = margin === null ? '' : `Schwelle von ${sizeText(margin, words)}`;
  return {
    trial,
    result,
    comparison,
    facts,
    words,
    name: label(trial, comparison.treatment),
    atB: `bei ${quotedLabel(trial, comparison.treatment)}`,
    atA: `bei ${quotedLabel(trial, comparison.control)}`,
    estimate: estimate ? differenceText(estimate, words) : '',
    bareRange,
    fits: limits && fitText(limits.lower, limits.upper, words),
    fitting:
      limits === null
        ? ''
        : judged === ''
          ? `die Daten passen ${fitText(limits.lower, limits.upper, bare)}; `
          : `${judged}${bareRange}; `,
    judged,
    threshold,
    thresholdSet: `${threshold}, ab der ein Unterschied zählen sollte`,
    units: unitsOfEach(trial, comparison),
    tray: unitNoun(trial, facts.units.kind === 'block' ? 'sowing' : facts.units.kind),
    probably: facts.probably ? 'wahrscheinlich ' : '',
    because: facts.probably ? ` Wir sagen „wahrscheinlich“, denn ${reasons}.` : '',
    reasons,
  };
}
