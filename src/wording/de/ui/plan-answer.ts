/** Was ein geplanter Versuch zeigen könnte und was nicht: Sätze, Warnungen, Mängel eines Plans, Tabelle. */
export const planAnswer = {
  'answer.trays': '{count} Schalen',
  'answer.traysOfSeeds': '{count} Schalen zu {seeds} Samen',
  'answer.seeds': '{count} Samen',
  'answer.size.germination': '{number} je 100',
  'answer.size.t50': '{number} Tage',
  'answer.size.t50One': '{number} Tag',
  'answer.size.trait': '{number} {unit}',
  'answer.ofSize.germination': '{number} je 100',
  'answer.ofSize.t50': '{number} Tagen',
  'answer.ofSize.t50One': '{number} Tag',
  'answer.ofSize.trait': '{number} {unit}',
  'answer.change.germination': '{treated} von 100 gehen auf statt {base}',
  'answer.change.t50': 'die Hälfte ist am Tag {treated} da statt am Tag {base}',
  'answer.change.trait': 'ein Mittel von {treated} {unit} statt {base} {unit}',
  'answer.rate': 'etwa {number} von 100',
  'answer.rateMost': 'mehr als 99 von 100',
  'answer.rateLeast': 'weniger als 1 von 100',

  'answer.shown':
    'Mit {trays} je Behandlung würde ein Unterschied von {size} ({change}) in {rate} solcher Versuche gezeigt.',
  'answer.shownCrops':
    'Mit {trays} je Behandlung und Art würde ein Unterschied von {size} ({change}) bei einer einzelnen Art in {rate} solcher Versuche gezeigt.',
  'answer.oneTray':
    'Mit einer Schale je Behandlung lässt sich nichts sagen: Die Behandlung ist vom gewöhnlichen Glück einer Schale nicht zu unterscheiden, so viele Samen auch darin liegen.',
  'answer.oneTrayCrops':
    'Mit einer Schale je Behandlung lässt sich für keine Art allein etwas sagen: Die Behandlung ist vom gewöhnlichen Glück einer Schale nicht zu unterscheiden, so viele Samen auch darin liegen.',
  'answer.range': 'Die Spanne würde vom Befund aus etwa {size} nach beiden Seiten reichen.',
  'answer.alarm': 'Gäbe es gar keinen Unterschied, würde in {rate} solcher Versuche trotzdem einer gezeigt.',
  'answer.alarmCrops':
    'Gäbe es bei einer Art keinen Unterschied, würde sie in {rate} solcher Versuche trotzdem einen zeigen.',
  'answer.alike': 'In {rate} ließe sich dann sagen, dass ein Unterschied kleiner als {size} ist.',
  'answer.together':
    'Alle {crops} Arten zusammengenommen würden einen Unterschied von {matters}, falls er bei allen gleich ist, in {rate} solcher Versuche zeigen, mit einer Spanne von etwa {size} nach beiden Seiten; ohne jeden Unterschied würden sie in {alarm} einen zeigen.',
  'answer.togetherFormula':
    'Alle {crops} Arten zusammengenommen würden einen Unterschied von {matters}, falls er bei allen gleich ist, in {rate} solcher Versuche zeigen, mit einer Spanne von etwa {size} nach beiden Seiten.',
  'answer.anyAlarm':
    'Gäbe es bei keiner Art einen Unterschied, schiene in {rate} solcher Versuche doch mindestens eine einen zu zeigen; wird die Zahl der Arten berücksichtigt, in {firm}.',
  'answer.needed':
    'Nach der Formel würden 4 von 5 Versuchen mit {trays} je Behandlung einen Unterschied von {size} zeigen.',
  'answer.neededTooMany':
    'Nach der Formel würden selbst mit {trays} je Behandlung weniger als 4 von 5 Versuchen einen Unterschied von {size} zeigen.',
  'answer.shuffle': 'Das kleinste p, das ein Mischen der Schalen einer Art erreichen kann, ist {p}.',
  'answer.formula': 'Nur nach der Formel gerechnet; die Simulation ist die bessere Antwort.',
  'answer.simulated':
    '{trials} solche Versuche wurden mit Zufallszahlen simuliert und so ausgewertet, wie es ein Bericht tut; die Anteile stimmen auf etwa {error} von 100.',

  'answer.assumed.germination':
    'Angenommen: Schalen schwanken {phi}-mal so stark, wie es der Zufall einzelner Samen bewirkt (φ = {phi}, Varianz). Zwei gleich behandelte Schalen mit {seeds} unterscheiden sich dann bei 19 von 20 Paaren um bis zu {most} je 100.',
  'answer.assumed.even':
    'Angenommen: Schalen schwanken nicht stärker, als es der Zufall einzelner Samen bewirkt (φ = 1), was selten ist. Zwei gleich behandelte Schalen mit {seeds} unterscheiden sich dann bei 19 von 20 Paaren um bis zu {most} je 100.',
  'answer.assumed.t50':
    'Angenommen: Die wahre Zeit bis zur Hälfte schwankt zwischen Schalen mit einer Standardabweichung von {spread}, die einzelner Samen einer Schale mit einer von {seedSpread}; {germination} von 100 Samen gehen auf; gezählt wird von der Saat an im Abstand von {every}.',
  'answer.assumed.trait':
    'Angenommen: Mittelwerte gleich behandelter Schalen schwanken mit einer Standardabweichung von {spread} {unit}. Gemessene Pflanzen gehen nur darüber ein: Mehr davon machen die Mittelwerte ruhiger.',

  'answer.warn.one-tray':
    'Eine Schale je Behandlung ist ein erster Blick, kein Versuch. Mehrere kleine Schalen sagen mehr als eine große.',
  'answer.warn.seldom-shown':
    'Dieser Unterschied würde öfter übersehen als gezeigt. Ein Versuch, der nichts zeigt, würde dann wenig sagen: mehr Schalen säen oder nach einem größeren Unterschied fragen.',
  'answer.warn.often-missed':
    'Dieser Unterschied würde öfter als 1-mal in 5 Fällen übersehen. Mehr Schalen helfen mehr als größere.',
  'answer.warn.many-crops':
    'Jede Art ist ein Vergleich mehr und eine Gelegenheit mehr, dem Zufall aufzusitzen. Vorher festlegen, ob nach jeder Art oder nach allen zusammen gefragt wird.',
  'answer.warn.too-few-for-alike':
    'Mit weniger als 3 Schalen je Behandlung heißen zwei Behandlungen nie gleich, so nah sie einander auch kommen.',
  'answer.warn.shuffle-cannot':
    'Bei so wenigen Schalen könnte selbst das äußerste Ergebnis durch Mischen entstehen: Kein Mischen erreicht 0,05. Ab 4 Schalen je Behandlung geht es.',
  'answer.warn.no-room-for-more':
    'Es geht schon so viel auf, dass für so viel mehr kein Platz ist: Solche Saat kann nur einen Verlust zeigen. Ältere Saat oder schwierigere Bedingungen lassen Platz für einen Gewinn.',
  'answer.warn.few-seeds': 'Weniger als 50 Samen je Behandlung: Die Prozentzahlen werden grob.',
  'answer.warn.coarse-checks':
    'Die Zähltage liegen zu weit auseinander: Die meisten Samen gehen zwischen zwei Zähltagen auf, und dann lässt sich nicht sagen, wie viel früher. Um die Zeit der Hälfte öfter zählen.',
  'answer.warn.half-before-first-check':
    'In manchen Schalen kann die Hälfte schon vor dem ersten Zähltag da sein, und dann haben sie keine Zeit. Früher zählen.',

  'answer.fault.base.germination':
    'Wie viele gewöhnlich aufgehen, muss zwischen 0 und 100 liegen, etwa 80; bei 0 und 100 ist nichts zu sehen.',
  'answer.fault.base.t50': 'Die gewöhnliche Zeit bis zur Hälfte muss über 0 Tagen liegen, etwa 6.',
  'answer.fault.base.trait': 'Das gewöhnliche Mittel muss über 0 liegen, etwa 40.',
  'answer.fault.matters': 'Der Unterschied, auf den es ankommt, muss über 0 liegen, etwa 10.',
  'answer.fault.no-room':
    'Für einen solchen Unterschied ist weder nach oben noch nach unten Platz. Einen kleineren nehmen.',
  'answer.fault.units': 'Schalen je Behandlung müssen eine ganze Zahl von 1 bis 50 sein.',
  'answer.fault.seeds': 'Samen je Schale müssen eine ganze Zahl von 1 bis 1000 sein.',
  'answer.fault.spread.germination': 'φ muss 1 oder mehr sein, etwa 2: 1 ist der Zufall einzelner Samen allein.',
  'answer.fault.spread.t50': 'Die Streuung zwischen Schalen muss über 0 Tagen liegen, etwa 0,5.',
  'answer.fault.spread.trait': 'Die Streuung zwischen Schalen muss über 0 liegen, etwa ein Zehntel des Mittels.',
  'answer.fault.spread-above-seeds':
    'φ muss kleiner sein als die Zahl der Samen je Schale: Schalen können nicht stärker schwanken als von nichts bis alles. Mehr Samen in jede säen oder ein kleineres φ nehmen.',
  'answer.fault.crops': 'Arten müssen eine ganze Zahl von 1 bis 20 sein.',
  'answer.fault.every':
    'Tage zwischen den Zählungen müssen über 0 liegen, etwa 1, und nicht so wenige sein, dass es über 100 Zählungen gibt.',
  'answer.fault.every-late': 'Der erste Zähltag muss vor der gewöhnlichen Zeit bis zur Hälfte liegen. Öfter zählen.',
  'answer.fault.germination': 'Wie viele überhaupt aufgehen, muss über 0 und höchstens bei 100 liegen, etwa 80.',

  'answer.table.caption':
    'Durch Simulation von {trials} Versuchen (± Standardfehler der Simulation) und nach der Formel',
  'answer.table.captionFormula': 'Nach der Formel',
  'answer.table.what': 'Was',
  'answer.table.simulated': 'Simuliert',
  'answer.table.formula': 'Formel',
  'answer.table.shown': 'Aussicht, den Unterschied zu zeigen',
  'answer.table.shownOne': 'Aussicht, den Unterschied bei einer einzelnen Art zu zeigen',
  'answer.table.shownFirmly': 'Dasselbe, die Zahl der Arten berücksichtigt',
  'answer.table.alarm': 'Gefahr eines falschen Alarms',
  'answer.table.alike': 'Aussicht, ihn kleiner zu nennen als das, worauf es ankommt, wo es keinen gibt',
  'answer.table.falselyAlike': 'Gefahr, ihn kleiner zu nennen als das, worauf es ankommt, obwohl er so groß ist',
  'answer.table.range': 'Spanne nach beiden Seiten',
  'answer.table.covered': 'Spannen, die den wahren Wert enthalten',
  'answer.table.detectable': 'Kleinster Unterschied, der in 4 von 5 Fällen gezeigt wird',
  'answer.table.smallestP': 'Kleinstes p, das ein Mischen erreichen kann',
  'answer.table.togetherShown': 'Alle Arten zusammen: Aussicht, den Unterschied zu zeigen',
  'answer.table.togetherAlarm': 'Alle Arten zusammen: Gefahr eines falschen Alarms',
  'answer.table.togetherRange': 'Alle Arten zusammen: Spanne nach beiden Seiten',
  'answer.table.anyAlarm': 'Falscher Alarm bei mindestens einer Art',
  'answer.table.anyFirmAlarm': 'Dasselbe, die Zahl der Arten berücksichtigt',
  'answer.table.rate': '{number} von 100',
  'answer.table.rateError': '{number} ± {error} von 100',
  'answer.table.sizeError': '{size} ± {error}',
  'answer.table.byDesign': '{number} von 100, so angelegt',
  'answer.table.none': 'keiner',
} as const;
