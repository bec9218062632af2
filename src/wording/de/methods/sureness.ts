import type { MethodEntry } from '../../method-entry.ts';
import type { MethodId } from '../../method-ids.ts';

/** How a verdict comes about, and what is said beside it. */
export const sureness: Readonly<
  Record<
    Extract<
      MethodId,
      | 'permutation'
      | 'effect-sizes'
      | 'many'
      | 'verdict'
      | 'detectable'
      | 'planning'
      | 'agreement'
      | 'caveats'
      | 'moisture'
      | 'software'
    >,
    MethodEntry
  >
> = {
  permutation: {
    title: 'Etiketten mischen',
    plain: [
      'Die Etiketten der Schalen werden auf jede mögliche Weise vertauscht (oder 20 000-mal, von einer festen Startzahl aus), und es wird gezählt, wie oft Zufall allein einen so großen Unterschied ergibt.',
      'Das entfällt, wo es zu wenige Schalen gibt, als dass eine solche Zählung unter 5 von 100 fallen könnte.',
    ],
    formula: ['alle Anordnungen: p = Anteil mit mindestens so großem |Unterschied|', 'gezogen: p = (b + 1) / (m + 1)'],
    checkedAgainst:
      'Vollständige Aufzählung in R; Fishers Zählung für Darwins Mais (1726 von 32 768, beide Seiten; aus dem Gedächtnis, gleich R).',
  },
  'effect-sizes': {
    title: 'Andere Maße der Größe',
    plain: [
      'Für Anteile: das Verhältnis der Anteile, das Chancenverhältnis und Cohens h, hier ohne Bereich; für Mittelwerte von zwei Schalen oder mehr je Behandlung: Hedges’ g mit Bereich und die Hodges-Lehmann-Verschiebung.',
    ],
    formula: ['h = 2 arcsin √p₁ − 2 arcsin √p₂', 'g = J d, J = 1 − 3/(4 df − 1); Bereich aus dem nichtzentralen t'],
    checkedAgainst: 'R, die ausgeschriebenen Formeln und pt(ncp = …); für g relative Abweichung unter 1e-7.',
  },
  many: {
    title: 'Viele Vergleiche',
    plain: [
      'Wo mehrere Partien oder Behandlungen verglichen werden, hebt Holms Regel das p an; ein Unterschied, der sie nicht besteht, heißt höchstens „wahrscheinlich“.',
    ],
    formula: ['sortierte p: Maximum über die früheren von (m − i + 1) p, höchstens 1'],
    checkedAgainst: 'R, p.adjust(method = "holm"); relative Abweichung unter 1e-9.',
  },
  verdict: {
    title: 'Wie das Ergebnis gewählt wird',
    plain: [
      'Ein Unterschied wird nur gesagt, wo der 95-%-Bereich die Null auslässt; dass er zählt, nur wo der ganze Bereich jenseits des kleinsten Unterschieds liegt, der zählt; „gleich genug“ nur, wo der 90-%-Bereich innerhalb davon liegt, bei drei oder mehr Einheiten je Behandlung und wenn diese Größe vor der ersten Auszählung feststand.',
      'Zwei einseitige Tests zu 5 % sind dasselbe wie ein 90-%-Bereich innerhalb der Schwelle; darum entscheidet dieser Bereich über „gleich genug“.',
      'Bei weniger als 5 Keimlingen insgesamt wird nichts verglichen. Ein p-Wert entscheidet nie über einen Satz.',
      'Ein Bereich, der die Null auslässt und innerhalb der Schwelle liegt, heißt: Es gibt einen kleinen Unterschied, zu klein, um zu zählen.',
    ],
    formula: [
      'nicht prüfbar: weniger als 2 Einheiten einer Behandlung',
      'gleich genug: Schwelle M vorher festgelegt, 3 oder mehr Einheiten je Behandlung, −M ≤ l₉₀ und u₉₀ ≤ M',
      'zählt: l₉₅ > M oder u₉₅ < −M',
      'verschieden: l₉₅ > 0 oder u₉₅ < 0',
      'offen: alles andere',
    ],
    checkedAgainst: 'Ein Test für jede Regel und für ihre Ränder.',
  },
  detectable: {
    title: 'Was ein Versuch dieser Größe zeigen kann',
    plain: [
      'Der erkennbare Unterschied ist der, den ein Versuch mit dieser Streuung und dieser Zahl von Schalen in 4 von 5 Fällen zeigt; die Zahl der Schalen, die eine Frage klären würde, ergibt sich auf dem umgekehrten Weg.',
    ],
    formula: [
      'd = (t(0,975; ν) + t(0,80; ν)) √(φ* (p₀q₀/N₀ + p₁q₁/N₁))',
      'Mittelwerte: nichtzentrales t mit Welchs df',
    ],
    checkedAgainst: 'R, uniroot() auf die Formel, relative Abweichung unter 1e-9, und power.t.test(), unter 1e-7.',
  },
  planning: {
    title: 'Was ein Plan zeigen könnte',
    plain: [
      'Vor der Saat werden viele Versuche der geplanten Größe ausgelost, einmal mit dem Unterschied, auf den es ankommt, und einmal ohne jeden, und jeder wird so ausgewertet, wie es ein Bericht tut; so oft würde er gezeigt oder schiene da zu sein.',
      'Schalen schwanken nach einer Beta-Binomialverteilung, Mittelwerte und Zeiten nach einer Normalverteilung, je mit der angenommenen Streuung; jeder Anteil steht mit seinem Monte-Carlo-Fehler. Dieselbe Startzahl zieht überall dieselben Versuche.',
      'Daneben steht eine Formel: die Gleichung des erkennbaren Unterschieds, nach der Aussicht aufgelöst; von den Enden der Skala und von Lücken zwischen Zähltagen weiß sie nichts.',
    ],
    formula: [
      'φ = 1 + (n − 1) ρ bei Schalen zu n Samen',
      'Aussicht = P(T ≤ d / se − t(0,975; ν)), se = √(φ* (p₀q₀ + p₁q₁) / N)',
      'Zeit bis zur Hälfte: s = √(s² zwischen Schalen + (π/2) s² der Samen / aufgegangene Samen)',
    ],
    checkedAgainst:
      'R, power.t.test() unter 1e-7 und power.prop.test() auf 3 Punkte bei vielen Schalen; die Simulation an der Tabelle falscher Alarme, nach der das Verfahren gewählt wurde, auf ihren Monte-Carlo-Fehler.',
  },
  agreement: {
    title: 'Stimmen Schalen einer Behandlung überein',
    plain: [
      'Der Abstand zwischen der höchsten und der niedrigsten Schale wird an dem gemessen, was der Zufall der Samen ergibt: bei zwei oder vier Aussaaten zu 100 an einer öffentlichen Tabelle, sonst an einer Formel.',
      'Schalen, die zu gut übereinstimmen, werden als Frage vermerkt, nie als Vorwurf.',
    ],
    formula: ['q(0,975; k, ∞) √(p (100 − p) / n)'],
    checkedAgainst:
      'Die Tabelle in 7 CFR 201.55, alle Zeilen; R, qtukey(). Die Formel trifft 36 der 49 Zeilen für vier Aussaaten.',
  },
  caveats: {
    title: 'Vorbehalte',
    plain: [
      'Feste Regeln suchen, was täuschen kann: Ein schwerer Vorbehalt heißt, dass keine Ursache behauptet wird; zur Vorsicht wird „wahrscheinlich“ gesagt; ein Hinweis steht neben dem Ergebnis.',
    ],
    formula: [],
    checkedAgainst: 'Ein Test für jede Regel, mit einem Versuch, der sie auslöst, und einem, der es nicht tut.',
  },
  moisture: {
    title: 'Wasserverlust und Feuchtegehalt',
    plain: [
      'Der Wasserverlust ist die verlorene Masse, bezogen auf die Masse des Saatguts am Anfang. Wie feucht Saatgut ist, lässt sich nur sagen, wo sein Feuchtegehalt am Anfang oder seine Masse nach dem Ofen bekannt ist.',
      'Eine Masse, die in Schritten von s abgelesen wird, kann einen halben Schritt größer oder kleiner sein; angegeben ist, was beide Ablesungen zulassen.',
      'Der Feuchtegehalt bezieht sich auf die ganze Masse.',
    ],
    formula: [
      'Wasserverlust % = 100 (m₀ − m₁) / m₀',
      'Ofen: 100 (M₂ − M₃) / (M₂ − M₁), M₁ das Gefäß',
      'nach dem Trocknen: 100 − (100 − c₀) m₀ / m₁',
    ],
    checkedAgainst: 'Durchgerechnete Werte (10,00389 % und andere), berechnet in R.',
  },
  software: {
    title: 'Programm',
    plain: [
      'Dieselben Dateien ergeben dieselben Zahlen, Byte für Byte: feste Startzahlen, feste Reihenfolge, keine Uhr.',
      'Gerundet wird nur, wo Zahlen gezeigt werden, und nie über die Null oder über den kleinsten Unterschied hinweg, der zählt.',
    ],
    formula: [],
    checkedAgainst:
      'R (base und stats) in den Tests des Projekts; das R-Skript bei den Daten rechnet die wichtigsten Zahlen nach.',
  },
};
