import type { Analysis, Comparison, Result } from '../../analysis/analysis.ts';
import type { Trial } from '../../trial/trial.ts';
import { sentence } from '../sentence.ts';
import { counted } from './counted.ts';
import { germination } from './findings/germination.ts';
import { means } from './findings/means.ts';
import { saying } from './findings/saying.ts';
import { lotName } from './lot-name.ts';
import { storedText } from './stored-text.ts';

/**
 * The result sentence of a comparison, opened by its lot where there are several, by its storage time in
 * a storage series, and by "bisher" while the series goes on.
 */
export function comparisonSentence(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): string {
  const pieces = saying(trial, analysis, result, comparison);
  const text = result.measure === 'germination' || result.measure === 'storage' ? germination(pieces) : means(pieces);
  return `${opening(trial, comparison)}${sentence(text)}`;
}

function opening(trial: Trial, { lot, lots, stored }: Comparison): string {
  const several = trial.lots.length > 1;
  const where = !several
    ? ''
    : lot === 'all'
      ? `Zusammen, in diesen ${counted(lots?.length ?? trial.lots.length, 'lot', 'dative')}: `
      : `${lotName(trial, lot)}: `;
  if (stored === null) return where;
  const when = stored === 0 ? 'am Anfang der Lagerung' : `nach ${storedText(stored, 'dative')} Lagerung`;
  const soFar = trial.status === 'growing' ? `bisher, ${when}` : when;
  return where === '' ? `${sentence(soFar)}: ` : `${where.slice(0, -2)}, ${soFar}: `;
}
