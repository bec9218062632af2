import { shuffle } from '../statistics/shuffle.ts';

const CONSONANTS = [...'BDGHJKLMNPRSTVZ'];
const VOWELS = [...'AEIOU'];

/**
 * Codes to be written on containers, so that whoever counts sees no order in them: a syllable, with a digit where
 * there are more containers than syllables. None reads as "no value" in a table (NA).
 *
 * @param random drawn apart from the treatments
 */
export function blindLabels(count: number, random: () => number): readonly string[] {
  const syllables = CONSONANTS.flatMap((first) => VOWELS.map((second) => first + second)).filter((code) => code !== 'NA'); // prettier-ignore
  const codes = count <= syllables.length ? syllables : syllables.flatMap((code) => [...'23456789'].map((digit) => code + digit)); // prettier-ignore
  return shuffle(codes, random).slice(0, count);
}
