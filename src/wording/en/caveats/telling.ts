import type { Analysis, Caveat, CaveatId, UnitKind } from '../../../analysis/analysis.ts';
import type { Trial } from '../../../trial/trial.ts';
import type { CaveatTemplates } from '../../caveat-templates.ts';
import { label } from '../../label.ts';
import { labelled } from '../labelled.ts';
import { lotName } from '../lot-name.ts';
import { unitWord } from '../unit-word.ts';

/** Templates by caveat, each given its own evidence and the English words. */
export type CaveatTexts<Id extends CaveatId> = CaveatTemplates<Id, Telling>;

/** What the templates of caveats are filled with. */
export interface Telling {
  readonly trial: Trial;
  readonly analysis: Analysis;
  readonly caveat: Caveat;
  label(treatment: string): string;
  /** "Sealed jar trays", "Sealed jar tray": a label before what a sowing is. */
  trays(treatment: string, count?: number): string;
  /** "tray", "trays". */
  tray(count?: number, kind?: UnitKind): string;
  lot(lot: string): string;
}

export const telling = (trial: Trial, analysis: Analysis, caveat: Caveat): Telling => ({
  trial,
  analysis,
  caveat,
  label: (treatment) => label(trial, treatment),
  trays: (treatment, count = 2) => labelled(trial, treatment, unitWord(trial, 'sowing', count)),
  tray: (count = 1, kind = 'sowing') => unitWord(trial, kind, count),
  lot: (lot) => lotName(trial, lot),
});
