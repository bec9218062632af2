import type { Analysis, Caveat, CaveatId, UnitKind } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import type { CaveatTemplates } from '../../caveat-templates.ts';
import { formOf } from '../form-of.ts';
import { labelled } from '../labelled.ts';
import { lotName } from '../lot-name.ts';
import type { Noun } from '../noun.ts';
import { quotedLabel } from '../quoted-label.ts';
import { unitNoun } from '../unit-noun.ts';

/** Templates by caveat, each given its own evidence and the German words. */
export type CaveatTexts<Id extends CaveatId> = CaveatTemplates<Id, Telling>;

/** What the German templates of caveats are filled with. */
export interface Telling {
  readonly trial: Trial;
  readonly analysis: Analysis;
  readonly caveat: Caveat;
  /** "„Dichtes Glas“". */
  label(treatment: string): string;
  /** "Schalen „Dichtes Glas“", "Schale „Dichtes Glas“". */
  trays(treatment: string, count?: number): string;
  /** What a unit is, with its gender. */
  noun(kind?: UnitKind): Noun;
  /** "Schale", "Schalen"; in the dative "Töpfen". */
  tray(count?: number, kind?: UnitKind, form?: 'plain' | 'dative'): string;
  lot(lot: string): string;
}

export const telling = (trial: Trial, analysis: Analysis, caveat: Caveat): Telling => ({
  trial,
  analysis,
  caveat,
  label: (treatment) => quotedLabel(trial, treatment),
  trays: (treatment, count = 2) => labelled(trial, treatment, formOf(unitNoun(trial, 'sowing'), count)),
  noun: (kind = 'sowing') => unitNoun(trial, kind),
  tray: (count = 1, kind = 'sowing', form = 'plain') => formOf(unitNoun(trial, kind), count, form),
  lot: (lot) => lotName(trial, lot),
});
