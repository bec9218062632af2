import { noun, type Noun } from './noun.ts';

/**
 * The noun for what a sowing physically is, from the author's free text in German or English: "Topf mit 22 cm" -> Topf,
 * "Keimschalen (A5)" -> Keimschale, "a 40-cell tray" -> Schale. Aussaat where no container can be told.
 */
export function containerNoun(container: string | null): Noun {
  const [head = ''] = (container ?? '').split(HEAD_ENDS);
  const words = head.match(/\p{L}+/gu) ?? [];
  for (const word of words.toReversed()) {
    const found = ENGLISH.get(word.toLowerCase()) ?? germanNoun(word);
    if (found) return found;
  }
  return SOWING;
}

const HEAD_ENDS =
  /[,;:(/]| (?:mit|aus|in|im|auf|von|vom|für|unter|je|voll|zu|ausgelegt|with|of|on|from|for|under|lined|filled) /i;
const SOWING = noun('f', 'Aussaat', 'Aussaaten');

const GERMAN: readonly Noun[] = [
  noun('f', 'Schale', 'Schalen'),
  noun('m', 'Topf', 'Töpfe'),
  noun('n', 'Glas', 'Gläser'),
  noun('f', 'Reihe', 'Reihen'),
  noun('f', 'Rolle', 'Rollen'),
  noun('f', 'Platte', 'Platten'),
  noun('f', 'Kiste', 'Kisten'),
  noun('f', 'Box', 'Boxen'),
  noun('f', 'Dose', 'Dosen'),
  noun('m', 'Becher', 'Becher'),
  noun('f', 'Tasse', 'Tassen'),
  noun('m', 'Teller', 'Teller'),
  noun('m', 'Kasten', 'Kästen'),
  noun('m', 'Karton', 'Kartons'),
  noun('m', 'Eimer', 'Eimer'),
  noun('m', 'Beutel', 'Beutel'),
  noun('f', 'Tüte', 'Tüten'),
  noun('m', 'Sack', 'Säcke'),
  noun('m', 'Umschlag', 'Umschläge'),
  noun('n', 'Beet', 'Beete'),
  noun('f', 'Parzelle', 'Parzellen'),
  noun('f', 'Zelle', 'Zellen'),
  noun('n', 'Tuch', 'Tücher'),
  noun('m', 'Schwamm', 'Schwämme'),
  noun('f', 'Wanne', 'Wannen'),
  noun('f', 'Flasche', 'Flaschen'),
  noun('m', 'Untersetzer', 'Untersetzer'),
  noun('m', 'Kübel', 'Kübel'),
  noun('m', 'Ballen', 'Ballen'),
  noun('m', 'Rahmen', 'Rahmen'),
  noun('f', 'Aussaat', 'Aussaaten'),
];

const ENGLISH_WORDS: Readonly<Record<string, string>> = {
  Schale: 'tray trays dish dishes flat flats pan pans punnet punnets trough troughs',
  Topf: 'pot pots',
  Glas: 'jar jars glass glasses',
  Reihe: 'row rows',
  Rolle: 'roll rolls',
  Platte: 'plate plates module modules',
  Kiste: 'crate crates',
  Box: 'box boxes container containers',
  Dose: 'tub tubs tin tins',
  Becher: 'cup cups',
  Untersetzer: 'saucer saucers',
  Beutel: 'bag bags packet packets',
  Umschlag: 'envelope envelopes',
  Beet: 'bed beds',
  Parzelle: 'plot plots',
  Zelle: 'cell cells plug plugs',
  Tuch: 'towel towels',
  Schwamm: 'sponge sponges',
  Flasche: 'bottle bottles',
  Rahmen: 'frame frames',
};

const ENGLISH: ReadonlyMap<string, Noun> = new Map(
  Object.entries(ENGLISH_WORDS).flatMap(([german, english]) => {
    const found = GERMAN.find(({ one }) => one === german) ?? SOWING;
    return english.split(' ').map((word): [string, Noun] => [word, found]);
  }),
);

/** A known noun, or a compound of one: "Saatschalen" -> Saatschale, Saatschalen. */
function germanNoun(word: string): Noun | null {
  for (const { gender, one, many } of GERMAN) {
    for (const ending of [one, many, `${many}n`]) {
      const front = word.slice(0, word.length - ending.length);
      if (word.length < ending.length || !word.toLowerCase().endsWith(ending.toLowerCase())) continue;
      if (front.length === 1 || front.length === 2) continue;
      return front === '' ? noun(gender, one, many) : noun(gender, compound(front, one), compound(front, many));
    }
  }
  return null;
}

const compound = (front: string, end: string) =>
  front.charAt(0).toUpperCase() + front.slice(1).toLowerCase() + end.toLowerCase();
