import type { MethodEntry } from '../../method-entry.ts';
import type { MethodId } from '../../method-ids.ts';

/** How seed that is tested again and again keeps. */
export const storage: Readonly<Record<Extract<MethodId, 'storage'>, MethodEntry>> = {
  storage: {
    title: 'Wie lange sich Saatgut hält',
    plain: [
      'Die Keimung jeder Prüfung wird in Probits umgerechnet, die aus dem S ihres Rückgangs eine Gerade machen, und die Gerade wird den Zählungen nach größter Likelihood angepasst; die Halbwertszeit ist die Zeit, zu der sie bei 50 von 100 ist, mit Fiellers Bereich.',
      'Die Einheit ist das Glas oder die Tüte, die geöffnet wurde: Viele Schalen aus einem Glas sind eine Einheit, denn sie teilen seinen Zufall. Die Bereiche werden um φ* verbreitert, so weit die Gläser über den Zufall der Samen hinaus um die Linie streuen. Ein Glas, das bei einer späteren Prüfung wieder geöffnet wird, gilt als ein anderes, was die Bereiche zu eng macht: Öffnen Sie jedes Glas nur einmal.',
      'Eine Linie braucht drei Prüfzeiten, bei zweien davon ging etwas auf und etwas nicht. Eine Halbwertszeit wird nur angegeben, wo die Linie zwischen der ersten und der letzten Prüfung bei der Hälfte ist und ihr Rückgang sich von keinem trennen lässt. Über spätere Zeiten wird nichts gesagt.',
      'Linien werden nur verglichen, wo jede Behandlung in jeder Prüfung nach dem Anfang zwei Gläser oder mehr hatte: Fallen sie mit einer Steigung, genügt eine Linie für alle? Was am Anfang gesät wurde, bevor getrennt wurde, dient jeder Linie und zählt einmal.',
    ],
    formula: [
      'Probit(p) = Kᵢ − t / σ, Halbwertszeit = Kᵢ σ',
      'φ* = max(1, (X² + 2) / (df + 1)), ν = max(2, df + 1), df = Einheiten − 2 (Einheiten − Parameter bei mehreren Linien)',
      'Fieller: alle t mit (Kᵢ − t/σ)² ≤ t²(0,975; ν) var(Kᵢ − t/σ); keine, wo g ≥ 1',
      'Linien: F = (Zunahme der Devianz / gesparte Parameter) / φ* auf (gesparte Parameter, ν)',
    ],
    checkedAgainst:
      'R, glm(family = binomial("probit")) an den Rotenon-Daten von Martin (1942, bei Finney), den Käfern von Bliss (1935) und zufälligen Reihen; Fiellers quadratische Gleichung und Devianzen geschachtelter Anpassungen in R; relative Abweichung unter 1e-6.',
  },
};
