import type { Analysis } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { shortFindings } from '../short-findings.ts';
import type { Finding } from '../words.ts';
import { comparisonSentence } from './comparison-sentence.ts';
import { verdictMark } from './verdict-mark.ts';

/** One finding a comparison of the primary outcome, pooled comparisons first. */
export const inShort = (trial: Trial, analysis: Analysis): readonly Finding[] =>
  shortFindings(analysis).map(({ result, comparison }) => ({
    result,
    comparison,
    sentence: comparisonSentence(trial, analysis, result, comparison),
    mark: verdictMark(result, comparison),
  }));
