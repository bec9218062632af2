import type { Analysis } from '../../analysis/analysis.ts';
import type { Site, Trial } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';

/** What a printed page of a trial is made from: the same values as its page on the site. */
export interface About {
  readonly trial: Trial;
  readonly analysis: Analysis;
  readonly site: Site;
  readonly words: Words;
  /** Where the report stands: `https://example.org/trials/jar-or-packet/`. */
  readonly address: string;
  /** Titles of trials of the same question by others; not known where it is left out. */
  readonly repeatedBy?: readonly string[];
}
