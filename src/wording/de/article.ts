import type { Gender } from './noun.ts';

export type Case = 'nominative' | 'accusative' | 'dative';

/** A word that bends with the noun after it: "eine" (Schale), "jedem" (Topf), "das" (Glas). */
export const article = (word: Article, gender: Gender, inCase: Case = 'nominative'): string =>
  FORMS[word][inCase][GENDERS.indexOf(gender)] ?? word;

const GENDERS: readonly Gender[] = ['m', 'f', 'n'];

const FORMS = {
  der: { nominative: ['der', 'die', 'das'], accusative: ['den', 'die', 'das'], dative: ['dem', 'der', 'dem'] },
  ein: {
    nominative: ['ein', 'eine', 'ein'],
    accusative: ['einen', 'eine', 'ein'],
    dative: ['einem', 'einer', 'einem'],
  },
  kein: {
    nominative: ['kein', 'keine', 'kein'],
    accusative: ['keinen', 'keine', 'kein'],
    dative: ['keinem', 'keiner', 'keinem'],
  },
  jeder: {
    nominative: ['jeder', 'jede', 'jedes'],
    accusative: ['jeden', 'jede', 'jedes'],
    dative: ['jedem', 'jeder', 'jedem'],
  },
} as const satisfies Record<string, Readonly<Record<Case, readonly [m: string, f: string, n: string]>>>;

export type Article = keyof typeof FORMS;
