import type { Analysis, Caveat, CaveatId } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import type { CaveatText } from '../../caveat-templates.ts';
import { lotName } from '../lot-name.ts';
import { caution } from './caution.ts';
import { note } from './note.ts';
import { serious } from './serious.ts';
import { telling, type CaveatTexts } from './telling.ts';

const TEXTS: CaveatTexts<CaveatId> = { ...serious, ...caution, ...note };

/**
 * A caveat's reason, a main clause ("… denn {reason}", "… aber {reason}"), and its sentence, which opens with
 * the lot where the trial has several.
 */
export function caveatWords(trial: Trial, analysis: Analysis, caveat: Caveat): CaveatText {
  // The evidence of each id has the shape of Evidence[id]; makeCaveat is what pairs them.
  const template = TEXTS[caveat.id] as (evidence: unknown, tell: ReturnType<typeof telling>) => CaveatText;
  const { reason, sentence } = template(caveat.evidence, telling(trial, analysis, caveat));
  const named = caveat.lot !== null && caveat.lot !== 'all' && trial.lots.length > 1;
  return { reason, sentence: named ? `${lotName(trial, caveat.lot)}: ${sentence}` : sentence };
}
