/** Words that show what luck does, and what would settle a question. */
export const luck = {
  'luck.none': 'Keine von {deals} zufälligen Neuverteilungen der Namen weicht so weit ab wie die wirkliche',
  'luck.one': '1 von {deals} zufälligen Neuverteilungen der Namen weicht so weit ab wie die wirkliche oder weiter',
  'luck.some':
    '{count} von {deals} zufälligen Neuverteilungen der Namen weichen so weit ab wie die wirkliche oder weiter',
  'luck.subtitle':
    'Großes Zeichen: wie es war. Kleine Punkte: dieselben {unit}, die Namen neu ausgelost. Hätte die Behandlung nichts bewirkt und wären die Namen ausgelost worden, so wäre der wirkliche Unterschied nur ein Los mehr und etwa in einem von {all} Fällen der größte aller {all}, nach oben oder unten. Dies zeigt den Zufall; der Befund beruht auf der Spanne.',
  'luck.subtitleBlocks':
    'Großes Zeichen: wie es war. Kleine Punkte: dieselben {unit}, die Namen in jedem Block neu ausgelost. Hätte die Behandlung nichts bewirkt und wären die Namen ausgelost worden, so wäre der wirkliche Unterschied nur ein Los mehr und etwa in einem von {all} Fällen der größte aller {all}, nach oben oder unten. Dies zeigt den Zufall; der Befund beruht auf der Spanne.',
  'luck.subtitleLots':
    'Großes Zeichen: wie es war. Kleine Punkte: dieselben {unit}, die Namen in jeder Partie neu ausgelost. Hätte die Behandlung nichts bewirkt und wären die Namen ausgelost worden, so wäre der wirkliche Unterschied nur ein Los mehr und etwa in einem von {all} Fällen der größte aller {all}, nach oben oder unten. Dies zeigt den Zufall; der Befund beruht auf der Spanne.',
  'luck.description': 'Streifen von Unterschieden. Wie es war: {real}. Neu ausgelost: {values}.',
  'luck.real': 'Wie es war',
  'luck.dealt': 'Neu ausgelost',
  'luck.times': '{deals}-mal',
  'luck.labels': 'Namen',
  'luck.several':
    'Von {deals} zufälligen Neuverteilungen der Namen weichen so viele so weit ab wie die wirkliche oder weiter: {counts}',
  'luck.countIn': '{name} {count}',
  'luck.asLarge': '{count} von {deals} so groß',
  'luck.asLargeOf': 'So groß, von {deals}',
  'luck.dealtNumber': 'Neu ausgelost, {number}',
  'luck.descriptionSeveral': 'Streifen von Unterschieden. {values}',
  'luck.row':
    '{name}: wie es war {real}; die {deals} neu ausgelosten reichen von {lower} bis {upper}, {count} davon so groß oder größer.',

  'luck.table.caption':
    'Zufall allein: um wie viel zwei gleich behandelte {unit} sich gewöhnlich unterscheiden ({one} und {other} Samen)',
  'luck.table.share': 'Wo so viele aufgehen',
  'luck.table.half': 'die Hälfte solcher Paare unterscheidet sich um',
  'luck.table.most': '19 von 20 solchen Paaren unterscheiden sich um',
  'luck.table.note':
    'Angenommen: {unit} schwanken doppelt so stark, wie der Zufall einzelner Samen es bewirkt (φ = 2, Varianz; ohne Quelle, üblich beim Planen). Mit der Normalverteilung gerechnet, also grob.',
  'luck.upTo': 'bis zu {points} je 100',
  'luck.ofHundred': '{points} von 100',

  'luck.settle.title': 'Etwa {units} je Behandlung würden einen Unterschied von {size} klären',
  'luck.settle.titleOf': '{comparison}: etwa {units} je Behandlung würden einen Unterschied von {size} klären',
  'luck.settle.asSeen':
    'Zeichen: der kleinste Unterschied, den so viele je Behandlung in 4 von 5 Fällen zeigen, bei der Streuung dieses Versuchs. Linie: ein Unterschied von {size}.',
  'luck.settle.assumed':
    'Zeichen: der kleinste Unterschied, den so viele je Behandlung in 4 von 5 Fällen zeigen. Angenommen, da dieser Versuch darüber nichts sagt: sie schwanken doppelt so stark wie der Zufall einzelner Samen (φ = 2). Linie: ein Unterschied von {size}.',
  'luck.settle.description': 'Kleinster gezeigter Unterschied nach Anzahl je Behandlung. {values}',
  'luck.settle.each': '{units} je Behandlung',
  'luck.settle.here': 'dieser Versuch',
  'luck.settle.asMany': 'so viele wie hier, für sich allein',
  'luck.settle.from': 'ab {size}',
  'luck.settle.tableSeen':
    'Der kleinste Unterschied, den so viele je Behandlung in 4 von 5 Fällen zeigen, bei der Streuung dieses Versuchs',
  'luck.settle.tableAssumed':
    'Der kleinste Unterschied, den so viele je Behandlung in 4 von 5 Fällen zeigen. Angenommen, da dieser Versuch darüber nichts sagt: sie schwanken doppelt so stark wie der Zufall einzelner Samen (φ = 2)',
  'luck.settle.settled': 'Für {size} etwa',
  'luck.settle.axis': 'Kleinster gezeigter Unterschied, je 100 Samen',
  'luck.settle.axisIn': 'Kleinster gezeigter Unterschied ({unit})',
};
