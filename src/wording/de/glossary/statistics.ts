/** Words of statistics: id, term, meaning. */
export const statistics: readonly (readonly [id: string, term: string, meaning: string])[] = [
  ['arrangements', 'Anordnungen', 'Alle Weisen, auf die die Etiketten der Schalen hätten fallen können.'],
  [
    'ceiling',
    'Obergrenze',
    'Das Äußerste, was die Vorbehalte einen Satz sagen lassen: alles, „wahrscheinlich“ oder gar keine Ursache.',
  ],
  [
    'cohens-h',
    'Cohens h',
    'Ein Unterschied zweier Anteile auf einer Skala, auf der 0,2 klein und 0,8 groß ist, auch nahe 0 und 100.',
  ],
  [
    'confounded',
    'Vermengt',
    'Zwei Dinge kamen immer zusammen vor, sodass niemand sagen kann, welches den Unterschied machte.',
  ],
  [
    'correlation',
    'Korrelation innerhalb einer Einheit (ρ, ICC)',
    'Wie ähnlich sich Samen oder Pflanzen einer Schale sind: 0 nicht ähnlicher als andere, 1 ganz und gar.',
  ],
  [
    'degrees-of-freedom',
    'Freiheitsgrade (df, ν)',
    'Aus wie vielen freien Angaben eine Streuung gemessen wurde; je mehr, desto sicherer.',
  ],
  [
    'detectable',
    'Erkennbarer Unterschied',
    'Der Unterschied, den ein Versuch dieser Größe und Streuung in 4 von 5 Fällen zeigt.',
  ],
  ['digest', 'Prüfsumme (SHA-256)', 'Der Fingerabdruck einer Datei. Eine Ziffer geändert, und er ist ein anderer.'],
  [
    'dispersion',
    'Überstreuung (φ)',
    'Wie stark sich Schalen einer Behandlung unterscheiden, gemessen am Zufall der Samen allein: 1 ist Zufall der Samen, 4 ist dessen vierfache Varianz.',
  ],
  [
    'dispersion-used',
    'Verwendete Überstreuung (φ*)',
    'φ, ein wenig zu 2 hin gezogen und nie unter 1, damit wenige Schalen nicht sicherer aussehen, als sie sind.',
  ],
  [
    'effect-size',
    'Effektgröße',
    'Wie groß ein Unterschied ist, auf irgendeiner Skala; der einfache Unterschied ist die erste davon.',
  ],
  [
    'effective-number',
    'Effektive Samenzahl',
    'So viele Samen, wie dasselbe sagen würden, wenn jeder seinen eigenen Zufall hätte: weniger, als gesät wurden.',
  ],
  [
    'equivalence',
    'Gleich genug (Äquivalenz)',
    'Jeder Unterschied ist kleiner als der, der zählen sollte. Dafür muss diese Größe vorher feststehen.',
  ],
  ['f', 'F', 'Eine Prüfgröße: Streuung zwischen Behandlungen gegen Streuung innerhalb.'],
  [
    'probit',
    'Probit',
    'Ein Anteil auf einer anderen Skala: wie weit er von der Hälfte liegt, in Standardabweichungen einer Glockenkurve. 50 von 100 ist 0, 84 von 100 ist 1, 16 von 100 ist −1.',
  ],
  [
    'survival-line',
    'Überlebenslinie',
    'Die Gerade, auf der die Keimung, in Probits, mit der Lagerzeit fällt. Kᵢ ist ihr Anfang; σ ist die Zeit, in der sie um ein Probit fällt.',
  ],
  ['fieller', 'Fieller-Grenzen', 'Ein Bereich für das Verhältnis zweier Schätzwerte, etwa eine Halbwertszeit.'],
  [
    'hedges-g',
    'Hedges’ g',
    'Ein Unterschied zweier Mittelwerte, gemessen an der Streuung zwischen Schalen, für kleine Zahlen berichtigt.',
  ],
  [
    'hodges-lehmann',
    'Hodges-Lehmann-Verschiebung',
    'Der Median aller Unterschiede zwischen einer Schale der einen und einer Schale der anderen Behandlung.',
  ],
  [
    'holm',
    'Holms Regel',
    'Hebt p-Werte an, wo mehrere Vergleiche gemacht werden, damit ein Zufall unter vielen nicht als Ergebnis gilt.',
  ],
  [
    'interval',
    'Intervall (95 %)',
    'Der Bereich wahrer Unterschiede, zu denen die Daten passen. Von vielen so gemachten Bereichen enthalten etwa 95 von 100 den wahren Wert.',
  ],
  [
    'margin',
    'Schwelle (kleinster Unterschied, der zählt)',
    'Die Größe, unter der ein Unterschied im Anbau nichts ändern würde. Vor dem Zählen festgelegt.',
  ],
  [
    'odds-ratio',
    'Chancenverhältnis (Odds Ratio)',
    'Aufgegangene Samen je nicht aufgegangenem bei der einen Behandlung, geteilt durch dasselbe bei der anderen.',
  ],
  [
    'p-value',
    'p-Wert',
    'Wie oft Zufall allein einen mindestens so großen Unterschied ergäbe, wenn es keinen gäbe. Über die Größe sagt er nichts.',
  ],
  [
    'permutation',
    'Permutationstest',
    'Mischt die Etiketten der Schalen und zählt, wie oft Zufall einen so großen Unterschied ergibt.',
  ],
  ['power', 'Teststärke', 'Wie oft ein Versuch einen Unterschied zeigt, den es wirklich gibt.'],
  [
    'random',
    'Auslosen der Plätze',
    'Plätze, durch Los vergeben, damit keine Behandlung durch Wahl oder Gewohnheit die besseren bekommt.',
  ],
  [
    'replication',
    'Replikation',
    'Mehrere eigene Schalen je Behandlung. Ohne sie lässt sich der Zufall einer Schale nicht von der Behandlung trennen.',
  ],
  [
    'risk-ratio',
    'Verhältnis der Anteile (relatives Risiko)',
    'Der Anteil, der bei der einen Behandlung aufging, geteilt durch den der anderen.',
  ],
  ['sd', 'Standardabweichung', 'Wie weit Einheiten im Großen und Ganzen von ihrem Mittelwert liegen.'],
  ['t', 't', 'Eine Prüfgröße: ein Unterschied gegen seine eigene Unsicherheit.'],
  [
    'tipping',
    'Kipppunkt',
    'Wie ähnlich sich die Samen einer Schale sein müssten, damit ein Unterschied nicht mehr als Zufall ist.',
  ],
  [
    'unit',
    'Einheit',
    'Was für sich behandelt wurde: Schale, Charge oder Block. Die Zahl der Einheiten, nicht der Samen, trägt ein Ergebnis.',
  ],
  [
    'verdict',
    'Urteil',
    'Unter welches von fünf Ergebnissen ein Vergleich fällt: lässt sich nicht sagen, gleich genug, ein Unterschied, der zählt, ein Unterschied, offen.',
  ],
  ['welch', 'Welchs t', 'Vergleicht zwei Mittelwerte, deren Einheiten verschieden streuen dürfen.'],
  [
    'i-squared',
    'I²',
    'Wie viel der Streuung zwischen Versuchen mehr ist als der Zufall jedes einzelnen: 0 % nichts, nahe 100 % fast alles.',
  ],
  [
    'mantel-haenszel',
    'Differenz nach Mantel-Haenszel',
    'Ein Unterschied aus mehreren Partien: Jede wird in sich verglichen, und Partien mit mehr Saatgut zählen mehr.',
  ],
  [
    'prediction',
    'Vorhersageintervall',
    'Wo der wahre Unterschied an einem weiteren Ort liegen mag; breiter als das Intervall für das Mittel aller Versuche.',
  ],
  [
    'q',
    'Q',
    'Eine Prüfgröße: wie weit Versuche von ihrem gemeinsamen Ergebnis liegen, gegen den Zufall jedes einzelnen.',
  ],
  ['score-test', 'Score-Test', 'Ein Test zweier Anteile, der ihren Zufall so misst, wie er ohne Unterschied wäre.'],
  ['tau-squared', 'τ²', 'Wie sehr die wahren Unterschiede von Versuch zu Versuch verschieden sind, als Varianz.'],
  [
    'wilson',
    'Intervalle nach Wilson und Newcombe',
    'Bereiche für einen Anteil und für die Differenz zweier Anteile, die auch nahe nichts und nahe allem im Möglichen bleiben.',
  ],
];
