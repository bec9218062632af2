import type { MethodEntry } from '../../method-entry.ts';
import type { MethodId } from '../../method-ids.ts';

/** How means of units are compared, and what speed means. */
export const means: Readonly<Record<Extract<MethodId, 'means' | 'times' | 'coarse' | 'blocks' | 'lots'>, MethodEntry>> =
  {
    means: {
      title: 'Mittelwerte von Schalen',
      plain: [
        'Pflanzen werden zuerst innerhalb ihrer Schale gemittelt; wo es von jeder Behandlung zwei Schalen oder mehr gibt, vergleicht Welchs t deren Mittelwerte, wobei die zwei Behandlungen verschieden streuen dürfen.',
        'Wo alle Schalen beider Behandlungen denselben Messwert haben, gibt es keinen Bereich: Die Ablesung ist zu grob, um zu zeigen, wie sich Schalen unterscheiden.',
      ],
      formula: [
        't = (m₁ − m₂) / √(s₁²/k₁ + s₂²/k₂)',
        'df = (s₁²/k₁ + s₂²/k₂)² / ((s₁²/k₁)²/(k₁ − 1) + (s₂²/k₂)²/(k₂ − 1))',
      ],
      checkedAgainst: 'R, t.test() an den Schlaf- und Maisdaten und an Zufallsdaten; relative Abweichung unter 1e-9.',
    },
    times: {
      title: 'Wie schnell das Saatgut aufging',
      plain: [
        'Jede Schale ergibt einen Wert: den Tag, bis zu dem die Hälfte dessen, was aufging, aufgegangen war (T50), den mittleren Tag, die Tage zwischen einem Viertel und drei Vierteln oder die Keimrate nach Maguire.',
        'Samen, die nicht aufgingen, haben keine Zeit. Einen Keimling sieht man nur bei einer Auszählung, also hängt jeder solche Wert davon ab, wann ausgezählt wurde.',
        'Die Keimrate nach Maguire vermengt, wie viele aufgingen, mit dem Tempo.',
      ],
      formula: [
        'T50: gerade Linie zwischen Auszählungen bis N/2 (Coolbear u. a. nahmen (N + 1)/2)',
        'mittlere Zeit = Σ n t / N',
        'Spanne = T75 − T25',
        'Maguire = 100 Σ (n / t) / gesäte Samen',
      ],
      checkedAgainst:
        'Definitionen in R auf erdachte Zählungen angewandt; ein gedrucktes Beispiel ließ sich nicht lesen.',
    },
    coarse: {
      title: 'Auszählungen, die weit auseinanderliegen',
      plain: [
        'Wo in eine Lücke zwischen zwei Auszählungen mehr als 0,6 dessen fällt, was aufging, kennt man einen Abstand nur so weit, wie die Tage der Auszählung reichen; der Bereich wird so verbreitert, dass er alles enthält, was sie zulassen.',
        'Dass es einen Abstand gibt, kann trotzdem sicher sein; wie lang er ist, wird dann nicht gesagt.',
      ],
      formula: [
        'Bereich = Hülle aus Welchs Intervall und (L₂ − U₁, U₂ − L₁), L und U die Auszählungen vor und nach der Hälfte',
      ],
      checkedAgainst:
        'Nachgespielte Versuche: Bei groben Auszählungen enthält der Bereich des geschätzten Abstands allein den wahren Abstand in nur 0 bis 60 von 100.',
    },
    blocks: {
      title: 'Blöcke',
      plain: [
        'Wo drei oder mehr Blöcke je alle Behandlungen enthalten, wird innerhalb jedes Blocks verglichen; so fällt heraus, was ein Regalbrett oder ein Tag mit all seinen Schalen macht.',
        'Die Zahl der Blöcke ist dann die Zahl der Einheiten.',
      ],
      formula: [
        'Anteile: p = Mittel der Blockanteile; φ_B = s²(Differenzen) / v; φ* = max(1, (2 + (b − 1) φ_B) / b), ν = b',
        'n* = (b² / Σ 1/n_b) / φ*',
        'Mittelwerte: gepaartes t auf den Blockdifferenzen, df = b − 1',
      ],
      checkedAgainst: 'R, t.test(paired = TRUE) und die ausgeschriebenen Formeln; relative Abweichung unter 1e-9.',
    },
    lots: {
      title: 'Mehrere Partien zusammen',
      plain: [
        'Jede Partie wird für sich verglichen; Partien derselben Kultur (oder wo der Versuch es sagt) werden dann zusammengefasst, gewichtet danach, wie viel jede aussagt, und das Gesagte gilt für diese Partien.',
        'Ob sich die Partien in ihrem Unterschied unterscheiden, wird auch geprüft.',
      ],
      formula: [
        'D = Σ w d / Σ w, w = n₁ n₂ / (n₁ + n₂)',
        'se² = φ* Σ w² v / (Σ w)², D ± t(ν) se',
        'unterscheiden sich die Partien: F = Σ (d − D′)² / v / ((L − 1) φ*) mit (L − 1, ν)',
      ],
      checkedAgainst: 'R, die ausgeschriebenen Formeln an festen und zufälligen Daten; relative Abweichung unter 1e-9.',
    },
  };
