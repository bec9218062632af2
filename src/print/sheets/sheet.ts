import type { Site, Trial } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';
import type { PrintDocument } from '../document.ts';

/** What sheets are made from: a trial read from its folder, or one that has only been planned. */
export interface SheetTrial {
  readonly trial: Trial;
  readonly site: Site;
  readonly words: Words;
}

/** One printable sheet and the name of its file. */
export interface Sheet {
  readonly file: `${string}.pdf`;
  readonly document: PrintDocument;
}
