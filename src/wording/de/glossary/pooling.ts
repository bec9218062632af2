/** Words of questions that several trials answer: id, term, meaning. */
export const pooling: readonly (readonly [id: string, term: string, meaning: string])[] = [
  [
    'leave-one-out',
    'Einen weglassen',
    'Die Versuche reihum ohne je einen zusammengefasst, um zu sehen, ob einer die Antwort trägt.',
  ],
  [
    'next-result',
    'Nächste Wiederholung',
    'Der Bereich, in den das Ergebnis eines weiteren Versuchs gewöhnlicher Größe fallen kann.',
  ],
  [
    'random-effects',
    'Zufällige Effekte',
    'Versuche zusammenfassen, ohne anzunehmen, dass der wahre Unterschied in allen Gärten gleich ist.',
  ],
  [
    'reml',
    'REML',
    'Eingeschränkte größte Plausibilität: die Weise, in der die Streuung zwischen Versuchen geschätzt wird.',
  ],
];
