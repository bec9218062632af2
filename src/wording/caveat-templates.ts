import type { CaveatId } from '../analysis/analysis.ts';
import type { Evidence } from '../analysis/caveats/evidence.ts';

/** A caveat's two texts: the clause after "because", and the full sentence. */
export interface CaveatText {
  readonly reason: string;
  readonly sentence: string;
}

/** Templates by caveat, each given its own evidence and what a language fills it with. */
export type CaveatTemplates<Id extends CaveatId, Telling> = {
  readonly [Key in Id]: (evidence: Evidence[Key], tell: Telling) => CaveatText;
};
