import type { Comparison } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import { article } from '../article.ts';
import { counted } from '../counted.ts';
import { formOf } from '../form-of.ts';
import { unitNoun } from '../unit-noun.ts';

/**
 * "6 und 6 Schalen", "1 und 4 Gläser", "je eine Schale", "beide in jedem von 6 Blöcken"; where single trays
 * of several lots are compared, "beide in jeder von 5 Partien".
 */
export function unitsOfEach(trial: Trial, { units, lot }: Pick<Comparison, 'units' | 'lot'>): string {
  const { treatment, control, kind } = units;
  if (kind === 'block' && lot === 'all') return `beide in jeder von ${counted(treatment, 'lot', 'dative')}`;
  const noun = unitNoun(trial, kind);
  if (kind === 'block') {
    return `beide in ${article('jeder', noun.gender, 'dative')} von ${counted(treatment, noun, 'dative')}`;
  }
  if (treatment === 1 && control === 1) return `je ${article('ein', noun.gender)} ${noun.one}`;
  return `${treatment} und ${control} ${formOf(noun, Math.max(control, 2))}`;
}
