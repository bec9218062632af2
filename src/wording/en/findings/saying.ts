import type { Analysis, Comparison, Result } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import { finding, type Facts } from '../../finding.ts';
import { differenceWords, type DifferenceWords } from '../difference-words.ts';
import { differenceText } from '../difference-text.ts';
import { inUnit } from '../in-unit.ts';
import { label } from '../../label.ts';
import { labelled } from '../labelled.ts';
import { number } from '../number.ts';
import { rangeText } from '../range-text.ts';
import { unitWord } from '../unit-word.ts';
import { reasonsText } from './reasons-text.ts';
import { unitsOfEach } from './units-of-each.ts';

/** The pieces that the result sentences of every measure are put together from. */
export interface Saying {
  readonly trial: Trial;
  readonly result: Result;
  readonly comparison: Comparison;
  readonly facts: Facts;
  readonly words: DifferenceWords;
  /** The treatment's label as it stands. */
  readonly name: string;
  readonly controlName: string;
  /** "Sealed jar seed", "Sealed jar seedlings". */
  b(noun: string): string;
  a(noun: string): string;
  /** "12 more per 100". */
  readonly estimate: string;
  /** "3 to 21 more per 100", null without an interval; `bare`: without what follows the direction. */
  readonly range: string | null;
  readonly bareRange: string | null;
  /** Where likeness is judged by the narrower interval, the words that say so before the range. */
  readonly judged: string;
  /** "10 per 100", "8 mm", and without what follows: "10", "8 mm". */
  readonly margin: string;
  readonly bareMargin: string;
  /** "was" or "were", after the margin. */
  readonly was: string;
  /** "6 and 6 trays". */
  readonly units: string;
  /** "tray", "trays": what stood on the bench, also where blocks are compared. */
  tray(count: number): string;
  /** "probably " or nothing. */
  readonly probably: string;
  /** "We say “probably” because …", or nothing. */
  readonly because: string;
  /** The reason clauses, joined. */
  readonly reasons: string;
}

/** Puts the facts of a comparison into English pieces. */
export function saying(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): Saying {
  const facts = finding(trial, analysis, result, comparison);
  const words = differenceWords(result.measure, result.column, result.unit);
  const bare = { ...words, after: '' };
  const { limits, estimate, margin } = facts;
  const reasons = reasonsText(trial, analysis, facts.reasons);
  const marginText = margin === null ? '' : inUnit(number(margin), words.unit);
  return {
    trial,
    result,
    comparison,
    facts,
    words,
    name: label(trial, comparison.treatment),
    controlName: label(trial, comparison.control),
    b: (noun) => labelled(trial, comparison.treatment, noun),
    a: (noun) => labelled(trial, comparison.control, noun),
    estimate: estimate ? differenceText(estimate, words) : '',
    range: limits && rangeText(limits.lower, limits.upper, words),
    bareRange: limits && rangeText(limits.lower, limits.upper, bare),
    judged: facts.judgedByNarrower ? 'by the range that judges likeness, ' : '',
    margin: `${marginText}${words.after}`,
    bareMargin: marginText,
    was: words.unit.endsWith('s') && margin !== 1 ? 'were' : 'was',
    units: unitsOfEach(trial, comparison),
    tray: (count) => unitWord(trial, facts.units.kind === 'block' ? 'sowing' : facts.units.kind, count),
    probably: facts.probably ? 'probably ' : '',
    because: facts.probably ? ` We say “probably” because ${reasons}.` : '',
    reasons,
  };
}
