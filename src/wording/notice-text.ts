import type { Source } from './words.ts';

/** A notice's own words; the closing sentence that all of them share is added where they are put together. */
export interface NoticeText {
  readonly title: string;
  /** `crops` stands for the crops that brought the notice. */
  readonly sentences: readonly string[];
  /** Empty: common practice, no source. */
  readonly sources: readonly Source[];
}
