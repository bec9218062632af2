import type { MethodEntry } from '../../method-entry.ts';
import type { MethodId } from '../../method-ids.ts';

/** How several trials of one question are put together. */
export const pooling: Readonly<Record<Extract<MethodId, 'pooled' | 'pooled-spread' | 'pooled-next'>, MethodEntry>> = {
  pooled: {
    title: 'Mehrere Versuche zu einer Frage',
    plain: [
      'Jeder Versuch gibt einen Unterschied und wie sicher er ist. Was von Garten zu Garten verschieden ist, wird gemessen und eingerechnet, damit die Antwort von Gärten wie diesen handelt; bei wenigen Versuchen ist der Bereich weit.',
      'Ein Versuch mit nur einer Schale einer Behandlung geht mit halb so vielen Samen ein, wie es eine Überstreuung von 2 ergäbe. Was seine eine Schale sonst tat, gehört zur Streuung zwischen den Versuchen: So können Versuche, die allein nichts sagen, zusammen antworten.',
      'Mehrere Partien eines Versuchs sind eine Antwort, denn gezählt werden Versuche, nicht Partien. Weniger als drei Versuche stehen nebeneinander und werden nicht zusammengefasst.',
      'Wo Versuche enger übereinstimmen, als ihr eigener Zufall erwarten ließe, gelten der weitere von zwei Bereichen und das größere p.',
      'Versuche, deren Behandlungen nicht passen oder deren Dateien fehlerhaft sind, werden genannt und weggelassen; geplante, wachsende und aufgegebene werden aufgeführt.',
    ],
    formula: [
      'SE = halbe Breite des 95-%-Bereichs des Versuchs / 1,959964',
      'w = 1 / (SE² + τ²), μ = Σ w d / Σ w; τ² ≥ 0 nach eingeschränkter größter Plausibilität (REML)',
      's² = Σ w (d − μ)² / ((K − 1) Σ w); Bereich μ ± t(0,975; K − 1) s',
      'wo s² < 1 / Σ w: der weitere von diesem und μ ± 1,959964 / √Σ w',
    ],
    checkedAgainst:
      'R, die Plausibilität mit optimise() und ihre Steigung mit uniroot(), relative Abweichung unter 1e-6 an festen und zufälligen Versuchen; gedruckte Ergebnisse zweier Sätze von Versuchen (Impfversuche; Aufenthaltsdauer, Normand 1999), aus dem Gedächtnis, werden getroffen.',
  },
  'pooled-spread': {
    title: 'Wie sehr sich Versuche unterscheiden',
    plain: [
      'Worin sich Versuche unterscheiden, wird am Zufall ihrer eigenen Schalen gemessen. Bei wenigen Versuchen zeigte sich ein Unterschied zwischen Gärten selten, und das steht dann da.',
      'Jeder Versuch wird reihum weggelassen, um zu sehen, ob einer allein die Antwort trägt.',
    ],
    formula: [
      'Q = Σ (d − μ₀)² / SE², auf K − 1 df, μ₀ gewichtet mit 1 / SE²',
      'I² = τ² / (τ² + v), v = (K − 1) Σ w / ((Σ w)² − Σ w²), w = 1 / SE²',
    ],
    checkedAgainst: 'R, die ausgeschriebenen Formeln und pchisq(); relative Abweichung unter 1e-6.',
  },
  'pooled-next': {
    title: 'Wohin eine nächste Wiederholung fallen kann',
    plain: [
      'Der wahre Unterschied eines anderen Gartens kann weiter abliegen als der Durchschnitt aller; das Ergebnis eines weiteren Versuchs noch weiter, weil dieser Versuch seinen eigenen Zufall hat. Nur von diesem heißt es, dass eine nächste Wiederholung dorthin fallen kann.',
    ],
    formula: [
      'wahrer Unterschied: μ ± t(0,975; K − 1) √(τ² + SE(μ)²), der größere der beiden Standardfehler',
      'Ergebnis: dasselbe mit dem Median der SE² der Versuche dazu',
    ],
    checkedAgainst: 'R, die ausgeschriebenen Formeln; relative Abweichung unter 1e-6.',
  },
};
