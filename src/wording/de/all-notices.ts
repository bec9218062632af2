import { SPECIES, type SpeciesNotice } from '../species.ts';
import type { Notice } from '../words.ts';
import { list } from './list.ts';
import { food } from './notices/food.ts';
import { handling } from './notices/handling.ts';

/** Every notice there is, for a page of its own: kinds of plants by their botanical names, as no trial names its crops. */
export const allNotices = (): readonly Notice[] =>
  Object.entries({ ...food, ...handling }).map(([id, { title, sentences, sources }]) => {
    const kinds = id in SPECIES ? list(SPECIES[id as SpeciesNotice]) : '';
    return { id, title, sentences: sentences.map((text) => text.replace('{crops}', kinds)), sources };
  });
