import type { MethodEntry } from '../../method-entry.ts';
import type { MethodId } from '../../method-ids.ts';

/** The unit, and how shares of seeds that came up are compared. */
export const shares: Readonly<
  Record<Extract<MethodId, 'unit' | 'share' | 'dispersion' | 'difference' | 'score-test' | 'one-unit'>, MethodEntry>
> = {
  unit: {
    title: 'Was als eines zählt',
    plain: [
      'Die Einheit ist, was für sich behandelt wurde: die Schale, oder die Charge, wo mehrere Schalen zusammen behandelt wurden.',
      'Samen einer Schale teilen deren Zufall: ihre Wärme, ihr Wasser, ihre Ecke auf dem Tisch. Wer jeden Samen als eigenen Versuch zählt, findet oft Unterschiede, die keine sind.',
      'Aussaaten, die sich eine Schale teilen, werden zusammengezählt, dann Aussaaten einer Charge, wo jede Behandlung zwei oder mehr Chargen hat.',
    ],
    formula: [],
    checkedAgainst:
      'In R nachgespielt, 20 000 Versuche je Einstellung: Zählt man Samen als unabhängig, melden bei vier Schalen je Behandlung bis zu 35 von 100 Versuchen ohne Unterschied trotzdem einen.',
  },
  share: {
    title: 'Wie viele von 100 aufgingen',
    plain: [
      'Der Anteil ist alles, was aufging, von allem, was gesät wurde; sein Bereich ist ein Wilson-Score-Intervall, in dem die Samen um so viel weniger werden, wie sich Schalen über den Zufall der Samen hinaus unterscheiden.',
      'Bei einer Einheit deckt der Bereich nur den Zufall der Samen ab, und die Seite sagt das.',
    ],
    formula: [
      'p = Σx / Σn',
      'n* = Σn / φ*',
      'Grenzen = (p + t²/2n* ± t √(p(1 − p)/n* + t²/4n*²)) / (1 + t²/n*), t = t(0,975; ν)',
    ],
    checkedAgainst: 'R, prop.test(correct = FALSE), mit z statt t; relative Abweichung unter 1e-9.',
  },
  dispersion: {
    title: 'Wie stark sich Schalen über den Zufall der Samen hinaus unterscheiden',
    plain: [
      'φ vergleicht die Streuung der Schalen einer Behandlung mit dem, was der Zufall der Samen allein ergäbe: 1 ist Zufall der Samen, 4 ist die vierfache Varianz.',
      'Damit zwei Schalen, die durch Zufall übereinstimmen, nicht sicher aussehen, wird ein Freiheitsgrad beigemischt, der φ = 2 trägt. Die 2 ist eine Annahme. φ* ist nie kleiner als 1.',
    ],
    formula: [
      'φ = X² / df, X² = Σ (x − n p)² / (n p (1 − p)) über die Gruppen der Partie, df = Σ (k − 1)',
      'φ* = max(1, (X² + 2) / (df + 1)), ν = max(2, df + 1)',
    ],
    checkedAgainst: 'R, Pearson-Prüfgröße von glm(family = binomial); relative Abweichung unter 1e-9.',
  },
  difference: {
    title: 'Der Unterschied zweier Anteile',
    plain: [
      'Der Bereich des Unterschieds ist Newcombes Hybrid-Score-Intervall, in dem φ* die Samen weniger macht und Students t an die Stelle des Normalquantils tritt.',
      'Er bleibt in dem, was möglich ist, und hält sein Versprechen auch nahe 0 und 100 von 100.',
    ],
    formula: ['L = d − √((p₁ − l₁)² + (u₂ − p₂)²), U = d + √((u₁ − p₁)² + (p₂ − l₂)²), l und u wie bei einem Anteil'],
    checkedAgainst:
      'Newcombes gedruckte Beispiele (aus dem Gedächtnis, gleich R) und R an Zufallsdaten; relative Abweichung unter 1e-9. In R in 375 Einstellungen nachgespielt: Der Bereich enthält den wahren Unterschied in mindestens 92 von 100 Versuchen.',
  },
  'score-test': {
    title: 'Test des Unterschieds',
    plain: [
      'Das zusammengefasste Chi-Quadrat der 2 × 2-Tafel wird durch φ* geteilt und als F gelesen; kein Satz hängt vom Test ab, sondern vom Bereich.',
    ],
    formula: ['F = X²(2 × 2, ohne Korrektur) / φ* mit (1, ν)'],
    checkedAgainst:
      'R, Pearson-Prüfgrößen von glm() und prop.test(), und pf(); relative Abweichung unter 1e-9. In R in 375 Einstellungen nachgespielt: Höchstens 8 von 100 Versuchen ohne Unterschied ergeben p unter 0,05.',
  },
  'one-unit': {
    title: 'Eine Schale je Behandlung',
    plain: [
      'Bei einer Einheit je Behandlung gibt es keinen Test und kein Urteil: Der gewöhnliche Zufall zwischen Schale und Schale lässt sich nicht messen.',
      'Der Bereich deckt dann nur den Zufall der Samen ab. Der Kipppunkt sagt, wie ähnlich sich die Samen einer Schale sein müssten, damit der Bereich die Null einschließt.',
    ],
    formula: ['n / (1 + (n − 1) ρ) statt n, mit dem kleinsten ρ, bei dem der Bereich die Null einschließt'],
    checkedAgainst: 'R, dieselbe Suche mit uniroot().',
  },
};
