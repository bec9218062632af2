import { words as de } from './de/words.ts';
import { words as en } from './en/words.ts';
import type { Words } from './words.ts';

/** By the first part of a BCP 47 tag. A second language is a second folder beside `en/` and a row here. */
const LANGUAGES: ReadonlyMap<string, Words> = new Map([
  ['en', en],
  ['de', de],
]);

/** First parts of the tags of every language that there is, English first. */
export const languages: readonly string[] = [...LANGUAGES.keys()];

/** The words of a language tag such as `en-GB`; English, which says so in its `lang`, where a language has none. */
export const wordsFor = (language: string): Words => LANGUAGES.get(language.toLowerCase().split('-')[0] ?? '') ?? en;
