import type { Analysis, Comparison, Result } from '../../analysis/analysis.ts';
import type { CarriedClaim } from '../../analysis/claims.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';
import { storedText } from './stored-text.ts';

/** The claim that a comparison carries, with the report's own sentence inside, as an author can paste it into report.mdx. */
export function claimText(
  words: Words,
  trial: Trial,
  analysis: Analysis,
  result: Result,
  comparison: Comparison,
  carried: CarriedClaim,
): string {
  const { lot, treatment, stored } = comparison;
  const sentence = words.comparisonSentence(trial, analysis, result, comparison);
  const test = stored === null ? '' : ` stored="${storedText(stored)}"`;
  const named = `outcome="${result.outcome}" lot="${lot}" treatment="${treatment}"${test}`;
  return `<Claim ${named} is="${carried.is}">${escaped(sentence)}</Claim>`;
}

/** So that labels with signs of Markdown or MDX in them are read as they are written. */
const escaped = (text: string) => text.replace(/[\\`*_{}[\]<>&~|]/g, '\\$&');
