export type Gender = 'm' | 'f' | 'n';

/** A German noun in the forms that the sentences need; none of them has weak endings. */
export interface Noun {
  readonly gender: Gender;
  readonly one: string;
  readonly many: string;
}

/** "die Schale, die Schalen" as ('f', 'Schale', 'Schalen'). */
export const noun = (gender: Gender, one: string, many: string): Noun => ({ gender, one, many });
