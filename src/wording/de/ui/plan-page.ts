/** Die Seite, auf der ein Versuch geplant wird. */
export const planPage = {
  'planPage.description':
    'Was ein Saatversuch zeigen könnte und was nicht, bevor etwas gesät ist: die Aussicht, den Unterschied zu sehen, auf den es ankommt, die Weite der Spanne, die Gefahr eines falschen Alarms.',
  'planPage.intro':
    'Wie viele Schalen, wie viele Samen? Angeben, was gesät würde, und sehen, was ein solcher Versuch zeigen könnte und was nicht.',
  'planPage.form': 'Der Versuch, an den gedacht ist',
  'planPage.measure': 'Was verglichen wird',
  'planPage.measure.germination': 'wie viele aufgehen',
  'planPage.measure.t50': 'der Tag, an dem die Hälfte da ist',
  'planPage.measure.height': 'Höhe der Keimlinge',
  'planPage.measure.mass': 'Masse der Keimlinge',
  'planPage.base.germination': 'Von 100 Samen gehen gewöhnlich auf',
  'planPage.base.t50': 'Die Hälfte ist gewöhnlich da am Tag',
  'planPage.base.height': 'Gewöhnliche mittlere Höhe (mm)',
  'planPage.base.mass': 'Gewöhnliche mittlere Masse (g)',
  'planPage.matters.germination': 'Kleinster Unterschied, auf den es ankommt (von 100 Samen)',
  'planPage.matters.t50': 'Kleinster Unterschied, auf den es ankommt (Tage)',
  'planPage.matters.height': 'Kleinster Unterschied, auf den es ankommt (mm)',
  'planPage.matters.mass': 'Kleinster Unterschied, auf den es ankommt (g)',
  'planPage.units': 'Schalen je Behandlung und Art',
  'planPage.seeds': 'Samen in jeder Schale',
  'planPage.crops': 'Arten (Saatgutpartien)',
  'planPage.every': 'Tage zwischen den Zählungen',
  'planPage.germination': 'Von 100 Samen gehen überhaupt auf',
  'planPage.choice': 'Wie sehr gleich behandelte Schalen sich unterscheiden',
  'planPage.choice.even': 'wenig: sehr gleichmäßige Bedingungen',
  'planPage.choice.usual': 'wie gewöhnlich',
  'planPage.choice.uneven': 'sehr: Zugluft, Ränder, ungleiches Wasser',
  'planPage.choice.own': 'die Zahl darunter',
  'planPage.spread.germination': 'Als Zahl: φ, 1 ist der Zufall einzelner Samen',
  'planPage.spread.t50': 'Als Zahl: Standardabweichung zwischen Schalen (Tage)',
  'planPage.spread.height': 'Als Zahl: Standardabweichung der Schalenmittel (mm)',
  'planPage.spread.mass': 'Als Zahl: Standardabweichung der Schalenmittel (g)',
  'planPage.choiceNote':
    'φ 1, 2 und 4 bei Zählungen, ein Zwanzigstel, ein Zehntel und ein Fünftel des gewöhnlichen Werts beim Rest: üblich beim Planen, ohne Quelle. Ein eigener Versuch weiß es besser.',

  'planPage.answer': 'Was er zeigen könnte',
  'planPage.working': 'Simuliert: {done} von {all} Versuchen',
  'planPage.worked': '{all} Versuche simuliert.',
  'planPage.noWorker': 'Dieser Browser führt die Simulation nicht aus, also antwortet nur die Formel.',
  'planPage.mend': 'Das lässt sich noch nicht ausrechnen:',
  'planPage.mind': 'Vor der Saat bedenken',
  'planPage.numbers': 'Alle Zahlen, simuliert und nach der Formel',
  'planPage.how': 'Wie das gerechnet wird',
  'planPage.private':
    'Im eigenen Browser gerechnet. Nichts Eingetipptes verlässt ihn, und es geht auch ohne Netz weiter.',
  'planPage.needsScript': 'Einen eigenen Plan auszurechnen braucht JavaScript. Die Tabellen darunter gelten auch ohne.',

  'planPage.tray': '{count} Schale',
  'planPage.chance.title': 'Aussicht, den Unterschied zu zeigen, mit {units} je Behandlung und mit anderen Zahlen',
  'planPage.chance.subtitle':
    'Kleine Punkte: nach der Formel, von 100 solchen Versuchen. Raute: dieser Plan, simuliert, mit zwei Standardfehlern der Simulation.',
  'planPage.chance.description':
    'Aussicht, den Unterschied zu zeigen, auf den es ankommt, von 100 solchen Versuchen, nach der Formel. {values}.',
  'planPage.chance.units': 'Schalen je Behandlung',
  'planPage.chance.enough': '4 von 5',
  'planPage.range.title': 'Die Spanne würde etwa {size} nach beiden Seiten reichen',
  'planPage.range.subtitle':
    'Linien: die 95-%-Spanne, im Mittel. Ringe: die Wahrheit. Blasser Streifen: weniger als {size}, zu klein, um darauf anzukommen.',
  'planPage.range.description': 'Spanne des Unterschieds, Behandlung minus Vergleich, im Mittel. {values}.',
  'planPage.range.there': 'wo es den Unterschied gibt, auf den es ankommt',
  'planPage.range.none': 'wo es keinen Unterschied gibt',
  'planPage.range.truth': 'Wahrheit',
  'planPage.range.difference': 'Wahrer Unterschied',
  'planPage.range.reach': 'Spanne, im Mittel',
  'planPage.range.axis.germination': 'Unterschied, mehr oder weniger je 100 Samen',
  'planPage.range.axis.t50': 'Unterschied, Tage später (unter 0: früher)',
  'planPage.range.axis.trait': 'Unterschied ({unit})',

  'planPage.common': 'Häufige Fälle',
  'planPage.common.lead':
    'Von 100 Versuchen, in denen es den Unterschied gibt, zeigen ihn so viele. Mehr Schalen helfen mehr als mehr Samen in jeder.',
  'planPage.common.germination':
    'Keimung, Schalen zu 50 Samen, die wie gewöhnlich schwanken (φ = 2). Wo eine Behandlung die Keimung von der ersten Zahl auf die zweite bringt, zeigen es so viele von 100 Versuchen. Je {trials}-mal simuliert, auf etwa {error} genau.',
  'planPage.common.fall': '{base} auf {treated}',
  'planPage.common.means':
    'Höhe, Masse, Zeit bis zur Hälfte: Versuche von 100, die einen Unterschied zeigen, als Vielfaches der Standardabweichung zwischen gleich behandelten Schalen. Nach der Formel.',
  'planPage.common.times': '{times}-mal so groß',
  'planPage.common.trays': 'Schalen je Behandlung',
  'planPage.common.smallestP': 'Kleinstes p',
} as const;
