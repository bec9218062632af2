import type { Analysis, Caveat, CaveatId, UnitKind } from '../../../analysis/analysis.ts';
import type { Evidence } from '../../../analysis/caveats/evidence.ts';
import type { Trial } from '../../../trial/trial.ts';
import { label } from '../label.ts';
import { labelled } from '../labelled.ts';
import { lotName } from '../lot-name.ts';
import { unitWord } from '../unit-word.ts';

/** A caveat's two texts: the clause after "because", and the full sentence. */
export interface CaveatText {
  readonly reason: string;
  readonly sentence: string;
}

/** Templates by caveat, each given its own evidence. */
export type CaveatTexts<Id extends CaveatId> = {
  readonly [Key in Id]: (evidence: Evidence[Key], tell: Telling) => CaveatText;
};

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
