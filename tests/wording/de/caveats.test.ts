import { expect, test } from 'vitest';
import type { CaveatId } from '../../../src/analysis/analysis.ts';
import { makeCaveat as caveatOf } from '../../../src/analysis/caveats/make-caveat.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { inGerman } from '../../support/in-german.ts';
import { makeAnalysis } from '../../support/make-result.ts';
import { makeLot, makeTrial } from '../../support/make-trial.ts';
import { EXAMPLES } from '../en/caveat-examples.ts';

const words = wordsFor('de');
const trial = inGerman(
  makeTrial({ sowing: { container: 'tray', assignment: 'random', treated: 'each-sowing', block: 'shelf' } }),
);
const analysis = makeAnalysis();

const of = <Id extends CaveatId>(id: Id) =>
  EXAMPLES[id].map((evidence) =>
    words.caveat(trial, analysis, caveatOf(id, { outcome: 'germination', treatment: 'jar' }, evidence)),
  );
const shown = (ids: readonly CaveatId[]) =>
  ids.flatMap((id) => of(id).map(({ reason, sentence }) => `${id}\n  … ${reason}\n  ${sentence}`)).join('\n');
const ids = (weight: string) =>
  (Object.keys(EXAMPLES) as CaveatId[]).filter((id) => caveatOf(id, {}, EXAMPLES[id][0] as never).weight === weight);

test('serious caveats', () => {
  expect(shown(ids('serious'))).toMatchInlineSnapshot(`
    "one-sowing
      … es gab nur eine Schale je Behandlung
      Es gab nur eine Schale je Behandlung. Schalen unterscheiden sich durch Zufall, auch wenn sie gleich behandelt werden. Gibt es nur eine, lässt sich dieser Zufall nicht von der Behandlung trennen.
    one-sowing
      … nur eine Schale bei „Dichtes Glas“ ging in den Vergleich ein
      Nur eine Schale bei „Dichtes Glas“ ging in den Vergleich ein. Schalen unterscheiden sich durch Zufall, auch wenn sie gleich behandelt werden. Gibt es nur eine, lässt sich dieser Zufall nicht von der Behandlung trennen.
    one-sowing
      … bei „Papiertüte“ konnte keine Schale gezählt werden
      Bei „Papiertüte“ konnte keine Schale gezählt werden. Schalen unterscheiden sich durch Zufall, auch wenn sie gleich behandelt werden. Gibt es nur eine, lässt sich dieser Zufall nicht von der Behandlung trennen.
    one-batch
      … alle 4 Schalen „Dichtes Glas“ kamen aus einer einzigen Charge (j1)
      Alle 4 Schalen „Dichtes Glas“ kamen aus einer einzigen Charge (j1). Was dieser einen Charge zustieß, traf sie alle; ihr Zufall lässt sich also nicht von „Dichtes Glas“ trennen.
    one-batch
      … alle 4 Schalen „Dichtes Glas“ wurden auf einmal behandelt
      Alle 4 Schalen „Dichtes Glas“ wurden auf einmal behandelt. Was dieser einen Charge zustieß, traf sie alle; ihr Zufall lässt sich also nicht von „Dichtes Glas“ trennen.
    one-batch
      … nach 2 Jahren Lagerung gab es nur eine Schale „Dichtes Glas“
      Nach 2 Jahren Lagerung gab es nur eine Schale „Dichtes Glas“. Der Zufall, der daran hängt, lässt sich nicht von „Dichtes Glas“ trennen.
    confounded-place
      … die Schalen „Dichtes Glas“ standen nur bei „lower shelf“ und die Schalen „Papiertüte“ nur bei „upper shelf“ und „window“
      Die Schalen „Dichtes Glas“ standen nur bei „lower shelf“ und die Schalen „Papiertüte“ nur bei „upper shelf“ und „window“. Was sonst noch verschieden war, kann einen Unterschied gemacht oder einen verdeckt haben.
    confounded-block
      … die Schalen „Dichtes Glas“ standen nur bei Regalbrett „A“ und die Schalen „Papiertüte“ nur bei Regalbrett „B“
      Die Schalen „Dichtes Glas“ standen nur bei Regalbrett „A“ und die Schalen „Papiertüte“ nur bei Regalbrett „B“. Was sonst noch verschieden war, kann einen Unterschied gemacht oder einen verdeckt haben.
    confounded-position
      … die Schalen „Dichtes Glas“ standen nur in Reihe 1 und 2 und die Schalen „Papiertüte“ nur in Reihe 3
      Die Schalen „Dichtes Glas“ standen nur in Reihe 1 und 2 und die Schalen „Papiertüte“ nur in Reihe 3. Was sonst noch verschieden war, kann einen Unterschied gemacht oder einen verdeckt haben.
    confounded-scorer
      … die Schalen „Dichtes Glas“ wurden nur von Person 1 gezählt und die Schalen „Papiertüte“ nur von „jon“
      Die Schalen „Dichtes Glas“ wurden nur von Person 1 gezählt und die Schalen „Papiertüte“ nur von „jon“. Was sonst noch verschieden war, kann einen Unterschied gemacht oder einen verdeckt haben.
    confounded-sowing-day
      … die Schalen „Dichtes Glas“ wurden nur am 4. April 2026 gesät und die Schalen „Papiertüte“ nur am 5. April 2026
      Die Schalen „Dichtes Glas“ wurden nur am 4. April 2026 gesät und die Schalen „Papiertüte“ nur am 5. April 2026. Was sonst noch verschieden war, kann einen Unterschied gemacht oder einen verdeckt haben.
    confounded-count-day
      … die Schalen „Dichtes Glas“ wurden zuletzt am Tag 14 ausgezählt und die Schalen „Papiertüte“ am Tag 15
      Die Schalen „Dichtes Glas“ wurden zuletzt am Tag 14 ausgezählt und die Schalen „Papiertüte“ am Tag 15. Was sonst noch verschieden war, kann einen Unterschied gemacht oder einen verdeckt haben.
    unequal-soak
      … auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 5 bis 6 h, „Papiertüte“ nicht aufgezeichnet)
      Auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 5 bis 6 h, „Papiertüte“ nicht aufgezeichnet). Schon das Einweichen ändert, wie schnell und wie gut Saatgut aufgeht.
    unequal-soak
      … auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 6 h, „Papiertüte“ 1 h)
      Auch die Dauer des Einweichens war verschieden („Dichtes Glas“ 6 h, „Papiertüte“ 1 h). Schon das Einweichen ändert, wie schnell und wie gut Saatgut aufgeht.
    unequal-handling
      … mit manchen Schalen geschah etwas, das mit anderen nicht geschah („Dichtes Glas“ 3 von 6, „Papiertüte“ 0 von 6: „watered twice“)
      Mit manchen Schalen geschah etwas, das mit anderen nicht geschah („Dichtes Glas“ 3 von 6, „Papiertüte“ 0 von 6: „watered twice“). Das kann den Unterschied gemacht haben, nicht die Behandlung.
    checked-on-different-days
      … die Schalen „Dichtes Glas“ und „Papiertüte“ wurden nicht alle an denselben Tagen ausgezählt
      Die Schalen „Dichtes Glas“ und „Papiertüte“ wurden nicht alle an denselben Tagen ausgezählt (bei s1 fehlt Tag 4). Einen Keimling sieht man erst, wenn jemand hinschaut; wer öfter hinschaut, hält eine Behandlung leicht für schneller."
  `);
});

test('cautions', () => {
  expect(shown(ids('caution'))).toMatchInlineSnapshot(`
    "not-randomised
      … die Schalen wurden von Hand aufgestellt, nicht durch Los
      Die Schalen wurden von Hand aufgestellt, nicht durch Los. Der bessere Platz kann dann öfter an dieselbe Behandlung gegangen sein.
    not-randomised
      … die Schalen wurden abwechselnd aufgestellt, nicht durch Los
      Die Schalen wurden abwechselnd aufgestellt, nicht durch Los. Der bessere Platz kann dann öfter an dieselbe Behandlung gegangen sein.
    not-randomised
      … es ist nicht aufgezeichnet, ob die Schalen durch Los aufgestellt wurden
      Es ist nicht aufgezeichnet, ob die Schalen durch Los aufgestellt wurden. Der bessere Platz kann dann öfter an dieselbe Behandlung gegangen sein.
    positions-unbalanced
      … „Dichtes Glas“ und „Papiertüte“ waren nicht gleichmäßig über die Plätze verteilt
      „Dichtes Glas“ und „Papiertüte“ waren nicht gleichmäßig über die Plätze verteilt (Schalen „Dichtes Glas“ und Schalen „Papiertüte“: „left“ 5 und 1 und „right“ 1 und 5). Von 100 ausgelosten Aufstellungen wären etwa 8 so ungleich.
    positions-unbalanced
      … „Dichtes Glas“ und „Papiertüte“ waren nicht gleichmäßig über die Reihen verteilt
      „Dichtes Glas“ und „Papiertüte“ waren nicht gleichmäßig über die Reihen verteilt (Schalen „Dichtes Glas“ und Schalen „Papiertüte“: „1“ 4 und 0).
    batch-unknown
      … es ist nicht aufgezeichnet, welche Schalen zusammen behandelt wurden
      Das Saatgut wurde in Chargen behandelt, aber es ist nicht aufgezeichnet, welche Schalen zusammen behandelt wurden. Was einer Charge zustieß, kann dann wie eine Wirkung der Behandlung aussehen.
    batch-unknown
      … es ist nicht aufgezeichnet, ob das Saatgut für jede Schale einzeln behandelt wurde
      Es ist nicht aufgezeichnet, ob das Saatgut für jede Schale einzeln behandelt wurde oder alles auf einmal. Wenn alles auf einmal, lässt sich der Zufall dieser einen Charge nicht von der Behandlung trennen.
    outcomes-not-fixed
      … was verglichen werden sollte, war vorher nicht aufgeschrieben
      Was verglichen werden sollte, war vorher nicht aufgeschrieben. Wer unter vielen Tagen und Messgrößen wählen kann, findet leicht etwas, das durch Zufall gut aussieht.
    outcomes-not-fixed
      … nichts zeigt, dass vor der ersten Auszählung festgelegt war, was verglichen werden sollte
      Nichts zeigt, dass vor der ersten Auszählung festgelegt war, was verglichen werden sollte. Wer unter vielen Tagen und Messgrößen wählen kann, findet leicht etwas, das durch Zufall gut aussieht.
    outcomes-not-fixed
      … was verglichen werden sollte, wurde am 10. April 2026 festgelegt, nicht vor der ersten Auszählung am 9. April 2026
      Was verglichen werden sollte, wurde am 10. April 2026 festgelegt, nicht vor der ersten Auszählung am 9. April 2026. Wer unter vielen Tagen und Messgrößen wählen kann, findet leicht etwas, das durch Zufall gut aussieht.
    outcomes-not-fixed
      … der Plan wurde geändert, nachdem er festgelegt war
      Der Plan wurde geändert, nachdem er festgelegt war. Wer unter vielen Tagen und Messgrößen wählen kann, findet leicht etwas, das durch Zufall gut aussieht.
    outcomes-not-fixed
      … dies stand nicht im Plan
      Dies stand nicht im Plan. Wer unter vielen Tagen und Messgrößen wählen kann, findet leicht etwas, das durch Zufall gut aussieht.
    plan-changed
      … der Plan wurde in 4 Punkten nicht eingehalten
      Der Plan sagte Tag 14; gezählt wurde am Tag 15. t7 war geplant und wurde weggelassen: knocked over. Zählen, ohne zu wissen, was was ist: Der Plan sagte „ja“; jetzt ist es „nein“. Dazu 1 weitere Abweichung.
    still-germinating
      … es gingen noch Samen auf, als das Zählen endete
      Bei „Dichtes Glas“ gingen noch Samen auf, als das Zählen endete: 6 von 100 zwischen Tag 12 und Tag 14. Eine spätere Auszählung könnte anders ausfallen.
    sowings-left-out
      … 1 Schale wurde weggelassen
      Schale T7 (knocked over on day 5) wurde weggelassen. Mit allen Schalen ändert sich das Ergebnis nicht.
    sowings-left-out
      … 2 Schalen wurden weggelassen
      Schalen T7 (an dem Tag nicht ausgezählt) und T8 (an dem Tag nicht gemessen) wurden weggelassen. Mit allen Schalen ändert sich das Ergebnis bei „Dichtes Glas“ zu „offen“. Mit allen Schalen ließ sich das Ergebnis bei „Papiertüte“ nicht berechnen.
    many-comparisons
      … es wurden 8 Vergleiche gemacht, und bei so vielen überrascht ein solcher Abstand durch Zufall nicht
      Es wurden 8 Vergleiche gemacht. Bei so vielen überrascht ein solcher Abstand durch Zufall nicht.
    unequal-spread
      … die Schalen „Dichtes Glas“ streuen stärker als die Schalen „Papiertüte“
      Die Schalen „Dichtes Glas“ streuen stärker als die Schalen „Papiertüte“. Der angegebene Bereich nimmt für beide dieselbe Streuung an.
    unequal-trays
      … die Schalen enthielten sehr ungleich viele Samen (20 bis 100)
      Die Schalen enthielten sehr ungleich viele Samen, von 20 bis 100. Am meisten wiegt dann, was am meisten enthielt.
    incomplete-blocks
      … es gab nur zwei Regalbretter, zu wenige, um innerhalb davon zu vergleichen
      Es gab nur zwei Regalbretter, zu wenige, um innerhalb davon zu vergleichen. Darum bleiben die Regalbretter außer Betracht, und Unterschiede zwischen ihnen zählen als gewöhnliche Streuung.
    incomplete-blocks
      … nicht jedes Regalbrett enthielt beide Behandlungen (C nicht)
      Nicht jedes Regalbrett enthielt beide Behandlungen (C nicht). Darum bleiben die Regalbretter außer Betracht, und Unterschiede zwischen ihnen zählen als gewöhnliche Streuung.
    incomplete-blocks
      … bei 2 Schalen ist kein Regalbrett genannt
      Bei 2 Schalen ist kein Regalbrett genannt. Darum bleiben die Regalbretter außer Betracht, und Unterschiede zwischen ihnen zählen als gewöhnliche Streuung.
    seeds-by-mass
      … die Samen wurden gewogen, nicht gezählt
      Bei 2 Schalen wurden die Samen gewogen, nicht gezählt (350 Samen je Gramm). Die Zahl der gesäten Samen stimmt dann nur ungefähr.
    no-seed-number
      … es ist nicht bekannt, wie viele Samen in s1 und s2 gesät wurden
      Es ist nicht bekannt, wie viele Samen in s1 und s2 gesät wurden. Die Zählungen werden gezeigt, aber mit nichts verglichen."
  `);
});

test('notes', () => {
  expect(shown(ids('note'))).toMatchInlineSnapshot(`
    "few-units
      … es gab nur 3 Schalen je Behandlung
      Es gab nur 3 Schalen je Behandlung. So wenige zeigen einen Unterschied nur, wenn er groß ist.
    few-units
      … es gab nur 2 und 3 Chargen
      Es gab nur 2 und 3 Chargen. So wenige zeigen einen Unterschied nur, wenn er groß ist.
    few-seeds
      … es wurden nur 30 Samen bei „Dichtes Glas“ gesät
      Es wurden nur 30 Samen bei „Dichtes Glas“ gesät. Ein Samen mehr oder weniger verschiebt den Anteil dann um 3 von 100.
    not-blind
      … beim Zählen war bekannt, zu welcher Behandlung jede Schale gehörte
      Beim Zählen war bekannt, zu welcher Behandlung jede Schale gehörte. Dann kann die Hoffnung mitzählen.
    not-blind
      … es ist nicht aufgezeichnet, ob beim Zählen bekannt war, zu welcher Behandlung jede Schale gehörte
      Es ist nicht aufgezeichnet, ob beim Zählen bekannt war, zu welcher Behandlung jede Schale gehörte. Dann kann die Hoffnung mitzählen.
    no-margin
      … ein kleinster Unterschied, der zählt, war nicht festgelegt
      Ein kleinster Unterschied, der zählt, war nicht festgelegt. Darum kann hier nichts gleich genug genannt werden.
    more-varied-than-luck
      … Schalen derselben Behandlung unterscheiden sich stärker, als der Zufall der Samen erklärt
      Schalen derselben Behandlung unterscheiden sich stärker, als der Zufall der Samen erklärt. Zu suchen wäre nach einer Verwechslung, nach Schimmel, nach Randlage. Der angegebene Bereich rechnet das ein.
    more-varied-than-luck
      … Schalen derselben Behandlung unterscheiden sich stärker, als der Zufall der Samen erklärt
      Schalen derselben Behandlung unterscheiden sich stärker, als der Zufall der Samen erklärt (Schalen „Dichtes Glas“ reichen von 60 bis 92 von 100, wo Zufall allein selten mehr als 22 Abstand ergibt). Zu suchen wäre nach einer Verwechslung, nach Schimmel, nach Randlage. Der angegebene Bereich rechnet das ein.
    more-alike-than-luck
      … die Schalen stimmen besser überein, als der Zufall der Samen zulässt
      Die Schalen derselben Behandlung stimmen besser überein, als der Zufall der Samen es sonst zulässt (φ 0,08). Gibt es einen Grund, etwa nach Größe ausgelesene Samen, oder wurde bei einer Zählung die vorige nachgesehen?
    near-limit
      … bei „Dichtes Glas“ gingen fast alle Samen auf
      Bei „Dichtes Glas“ gingen fast alle Samen auf (197 von 200). So nahe an 100 % stimmt ein Bereich nur ungefähr.
    near-limit
      … bei „Dichtes Glas“ gingen kaum Samen auf
      Bei „Dichtes Glas“ gingen kaum Samen auf (am Anfang: 3 von 250). So nahe an 0 % stimmt ein Bereich nur ungefähr.
    hardly-any
      … es gingen kaum Samen auf (1 von 150 und 2 von 150)
      Es gingen kaum Samen auf: 1 von 150 und 2 von 150. Das ist zu wenig zum Vergleichen.
    no-room
      … bei beiden ging fast alles auf
      Bei beiden ging fast alles auf: mindestens 96 von 100 in jeder Schale. Also hatte dieses Saatgut keinen Raum, einen Gewinn zu zeigen.
    no-room
      … bei beiden ging alles auf
      Bei beiden ging alles auf. Also hatte dieses Saatgut keinen Raum, einen Gewinn zu zeigen.
    coarse-checks
      … die Auszählungen lagen zu weit auseinander
      Die Auszählungen lagen weit auseinander: 81 von 100 Keimlingen gingen bei „Dichtes Glas“ zwischen denen von Tag 3 und Tag 8 auf. An welchem dieser Tage, hat niemand gesehen.
    coarse-readings
      … alle Schalen derselben Behandlung haben denselben Messwert
      Alle Schalen derselben Behandlung haben denselben Messwert („Dichtes Glas“ 5,0 Tage, „Papiertüte“ 5,0 Tage). Die Ablesung ist zu grob, um zu zeigen, wie sich Schalen unterscheiden.
    lots-differ
      … die Partien stimmen nicht überein
      Die Partien stimmen nicht überein (Porree 12 mehr je 100 und cress 1 weniger je 100). Eine einzige Zahl für alle verdeckt das.
    ungerminated-not-sorted
      … was nicht aufging, wurde nicht angesehen
      36 von 300 Samen gingen nicht auf. Ob sie tot waren oder nur ruhten, wurde nicht angesehen.
    tested-straight-away
      … das Saatgut wurde gleich nach der Behandlung gesät
      Die Frage handelt vom Aufbewahren, aber das Saatgut wurde gleich nach der Behandlung gesät. Wie gut es sich hält, kann erst eine spätere Aussaat zeigen.
    start-moisture-unknown
      … der Feuchtegehalt am Anfang wurde nicht gemessen
      Der Feuchtegehalt am Anfang wurde nicht gemessen. Wie trocken das Saatgut jetzt ist, ist also nicht bekannt.
    two-changes
      … die Behandlungen unterscheiden sich in mehr als einer Sache (Einweichen und Lagerung)
      Die Behandlungen unterscheiden sich in mehr als einer Sache (Einweichen und Lagerung). Welche davon einen Unterschied machte, lässt sich nicht sagen.
    survivors-only
      … nur was aufging, konnte gemessen werden
      Nur was aufging, konnte gemessen werden („Dichtes Glas“ 131 aus 150 Samen und „Papiertüte“ 128 aus 150 Samen). Samen, die unten blieben, haben keine Größe.
    one-lot
      … es wurde nur eine Partie gesät (Leek)
      Es wurde nur eine Partie gesät (Leek). Eine andere Ernte, ein anderes Alter oder eine andere Kultur kann sich anders verhalten.
    batches-span-blocks
      … Chargen waren über mehrere Regalbretter verteilt
      1 Charge stand bei mehreren Regalbrettern. Behandelt wurde die Charge, also wird sie verglichen, und die Regalbretter bleiben außer Betracht.
    half-before-first-check
      … die Hälfte war schon aufgegangen, bevor jemand nachsah
      In 2 Schalen war die Hälfte dessen, was aufging, schon bei der ersten Auszählung am Tag 5 aufgegangen. Wann, hat niemand gesehen; darum wird keine Zeit angegeben.
    half-before-first-check
      … ein Viertel war schon aufgegangen, bevor jemand nachsah
      In 1 Schale war ein Viertel dessen, was aufging, schon bei der ersten Auszählung am Tag 5 aufgegangen. Wann, hat niemand gesehen; darum wird keine Zeit angegeben.
    nothing-came-up
      … bei „Dichtes Glas“ ging nichts auf
      Bei „Dichtes Glas“ ging nichts auf (150 Samen in 3 Schalen). Das Saatgut kann tot sein oder ruhen, oder es war zu kalt oder zu nass; eine Prüfung desselben Saatguts unter besseren Bedingungen würde es zeigen.
    nothing-came-up
      … bei „Dichtes Glas“ ging nichts auf
      Bei „Dichtes Glas“ ging nichts auf. Das Saatgut kann tot sein oder ruhen, oder es war zu kalt oder zu nass; eine Prüfung desselben Saatguts unter besseren Bedingungen würde es zeigen.
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Bei „Dichtes Glas“: 95 von 100 am Anfang, 60 von 100 nach 2 Jahren. Das sind zu wenige Prüftermine für eine Linie (2; nötig sind drei).
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Bei „Dichtes Glas“ fiel die Keimung zu steil für eine Linie (95 von 100 am Anfang, 60 von 100 nach 2 Jahren): In allen Prüfungen bis auf eine ging alles auf oder nichts; wann sie bei der Hälfte war, ist also nicht bekannt.
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Bei „Dichtes Glas“ zeigt sich kein Rückgang (95 von 100 am Anfang, 60 von 100 nach 2 Jahren). Das heißt nicht, dass es sich hält.
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Bei „Dichtes Glas“ ist die Keimung kaum gefallen (95 von 100 am Anfang, 60 von 100 nach 2 Jahren): In allen Prüfungen bis auf eine ging alles auf, das ist zu wenig für eine Linie.
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Bei „Dichtes Glas“ ging in keiner Prüfung etwas auf; wie lange es sich hält, lässt sich also nicht sagen.
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Durch die Prüfungen bei „Dichtes Glas“ ließ sich keine Linie legen (95 von 100 am Anfang, 60 von 100 nach 2 Jahren).
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Nach der Linie durch die Prüfungen ist die Keimung bei „Dichtes Glas“ noch nicht auf die Hälfte gefallen (95 von 100 am Anfang, 60 von 100 nach 2 Jahren). Eine Halbwertszeit wird nicht angegeben, denn es wird nichts vorausgesagt.
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Nach der Linie durch die Prüfungen lag die Keimung bei „Dichtes Glas“ schon in der ersten Prüfung unter der Hälfte (95 von 100 am Anfang, 60 von 100 nach 2 Jahren); wann sie bei der Hälfte war, ist also nicht bekannt.
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Bei „Dichtes Glas“ fiel die Keimung auf etwa die Hälfte (95 von 100 am Anfang, 60 von 100 nach 2 Jahren), aber die Prüfungen streuen so sehr, dass der Rückgang sich nicht von keinem trennen lässt. Eine Halbwertszeit wird nicht angegeben.
    no-half-life
      … bei „Dichtes Glas“ ließ sich keine Halbwertszeit angeben
      Bei „Dichtes Glas“ ergibt keine Prüfung einen Anteil."
  `);
});

test.each(Object.keys(EXAMPLES) as CaveatId[])('%s reads as a clause and as a sentence', (id) => {
  for (const { reason, sentence } of of(id)) {
    expect(reason).not.toMatch(/[.?!]$/);
    expect(sentence).toMatch(/^[„\p{Lu}\d].*[.?]$/u);
    expect(`${reason} ${sentence}`).not.toMatch(/undefined|NaN|null|signifikan|beweis|% mehr|  |\.\.|−/);
    expect(words.caveatName(id).length).toBeGreaterThan(3);
  }
});

test('a caveat of one lot among several names it', () => {
  const lots = [makeLot('leek'), makeLot('cress', 'Kresse', 'Lepidium sativum')];
  const caveat = caveatOf('few-seeds', { lot: 'cress', treatment: 'jar' }, { seeds: 30 });
  expect(words.caveat({ ...trial, lots }, analysis, caveat).sentence).toMatch(
    /^Kresse: Es wurden nur 30 Samen bei „Dichtes Glas“/,
  );
});
