import { expect, test } from 'vitest';
import type { Hazard, Trial } from '../../../src/trial/trial.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeLot, makeTrial } from '../../support/make-trial.ts';

const words = wordsFor('de');
const texts = (parts: Partial<Trial>) =>
  words
    .notices(makeTrial(parts), [])
    .map(({ title, sentences }) => `${title}: ${sentences.slice(0, -1).join(' ')}`)
    .join('\n');

test('every notice on what a trial did', () => {
  const involves: readonly Hazard[] = [
    'hot-water',
    'disinfectant',
    'acid',
    'desiccant',
    'oxygen-absorber',
    'freezer',
    'dry-ice',
    'oven',
    'heat-mat',
    'mould',
    'seed-offered',
  ];
  expect(texts({ involves, seedDressed: true, seedlingsEaten: true })).toMatchInlineSnapshot(`
    "Keimlinge, die gegessen werden: Sprossen und junges Grün können Keime tragen, die kein Waschen entfernt, und sie haben viele Menschen krank gemacht. Saatgut für die Aussaat ist kein Lebensmittel; zum Keimen für die Küche gibt es eigens verkauftes Saatgut. Alles sauber und kühl halten, und wegwerfen, was falsch riecht oder aussieht. Kinder, Alte, Schwangere und Geschwächte sollten sie nicht roh essen.
    Gebeiztes Saatgut: Mit Pflanzenschutzmittel behandeltes Saatgut wird nie gegessen, weder von Menschen noch von Tieren, und seine Keimlinge auch nicht. Handschuhe tragen, das Etikett beim Saatgut lassen und befolgen.
    Heißes Wasser: Heißes Wasser verbrüht, und veröffentlichte Zeiten und Temperaturen gehen auseinander; diese Seite nennt keine zum Nachmachen. Die Behandlung kann altes, vorgekeimtes, pilliertes oder großes Saatgut töten. Darum probiert man zuerst eine kleine Menge der Partie und behandelt kein Saatgut zweimal.
    Bleiche, Wasserstoffperoxid und andere Desinfektionsmittel: Sie verätzen Augen und Haut und geben Dämpfe ab; das Etikett des Mittels befolgen. Reiniger nie mischen: Bleiche mit Säure, Essig oder Ammoniak setzt giftiges Gas frei. Sie reinigen nur die Oberfläche der Samen. In manchen Ländern ist eine solche Anwendung eines Mittels selbst geregelt.
    Säuren: Starke Säuren auf harten Samen sind ein Verfahren für Labore, nicht für Küchen: Sie verätzen Haut und Augen und kochen mit Wasser auf.
    Trockenmittel: Der Staub von Kieselgel und anderen Trockenmitteln schadet der Lunge; blaues Gel kann ein Kobaltsalz enthalten, das schlimmer ist. Heißes Gel verbrennt, Branntkalk ätzt. Die Beutel sind kein Lebensmittel: von Kindern und Tieren fernhalten. Saatgut, das noch feucht verschlossen wird, verdirbt schneller als Saatgut in Papier.
    Sauerstoffzehrer: Beutel mit Eisenpulver sind kein Lebensmittel und kein Kieselgel; von Kindern und Tieren fernhalten. Ohne Luft hält sich nur trockenes Saatgut; feuchtes gärt und stirbt. Was hier über Saatgut steht, sagt nichts über das Lagern von Lebensmitteln.
    Saatgut einfrieren: Nur trockenes Saatgut verträgt die Gefriertruhe. Ein geschlossenes Glas erst warm werden lassen, dann öffnen, sonst schlägt sich Wasser auf dem Saatgut nieder.
    Trockeneis: Trockeneis erfriert die Haut, füllt einen Raum mit Gas, in dem niemand atmen kann, und sprengt geschlossene Gläser. Nur im Freien verwenden und nie einschließen.
    Backöfen: Papier und Saatgut können im Ofen Feuer fangen; dabeibleiben. Ein Küchenofen ist kein Laborofen: Ein damit bestimmter Feuchtegehalt ist ein grober Wert.
    Heizmatten und Heizungen: Elektrische Wärme nahe bei Wasser und Papier: ein dafür gemachtes Gerät verwenden, an einer sicheren Steckdose und nicht ohne Aufsicht.
    Schimmel: Schimmel kann Allergien, Asthma und Infektionen der Lunge auslösen; nicht an Schalen riechen, und sie geschlossen wegwerfen. Verschimmelte tote Samen werden bei jeder Auszählung entfernt und aufgeschrieben.
    Saatgut weitergeben oder verkaufen: Das Saatgutrecht kann Etiketten und eine Keimprüfung verlangen, und geschützte Sorten dürfen nicht frei weitergegeben werden. Für den Versand über Grenzen gelten Regeln zur Pflanzengesundheit, auch für wenige Samen in einem Brief. Gelistete Unkräuter dürfen gar nicht verschickt werden. Die Zahlen hier sind keine amtliche Prüfung und erhöhen keine Zahl auf einem Etikett."
  `);
});

test('every notice on a kind of plant', () => {
  const kinds = [
    'Ricinus',
    'Solanum',
    'Rheum',
    'Phaseolus',
    'Digitalis',
    'Lupinus',
    'Datura',
    'Malus',
    'Fagopyrum',
    'Quercus',
    'Citrus',
  ];
  expect(texts({ lots: kinds.map((kind) => makeLot(kind, kind, kind)) })).toMatchInlineSnapshot(`
    "Diese Keimlinge sind kein Lebensmittel: Keimlinge aus einem Versuch sind kein Lebensmittel: Saatgut kann gebeizt sein, und in den Gefäßen kann Schimmel sein oder das, womit das Saatgut behandelt wurde.
    Rizinus ist tödlich giftig: Samen von Ricinus enthalten Rizin; wenige zerkaute Samen können töten. Samen, Keimlinge und Verschüttetes von Kindern und Tieren fernhalten.
    Keimlinge von Nachtschattengewächsen sind kein Salat: Blätter, Stängel und Keimlinge von Solanum enthalten Gifte, auch wo die reife Frucht essbar ist. Nicht essen, und von Kindern und Tieren fernhalten.
    Rhabarberblätter sind giftig: Blätter und Keimlinge von Rheum enthalten Oxalsäure. Nicht essen, und von Kindern und Tieren fernhalten.
    Rohe Bohnen sind giftig: Rohe Bohnen und Bohnensprossen von Arten wie Phaseolus enthalten ein Gift, das innerhalb von Stunden schwer krank macht; wenige rohe Bohnen genügen. Erwärmen entfernt es nicht, nur richtiges Kochen, und gekocht werden Sprossen und Keimlinge nicht. Von Kindern fernhalten.
    Fingerhut ist giftig: Jeder Teil von Digitalis wirkt auf das Herz, auch Samen und Keimlinge. Von Kindern und Tieren fernhalten und die Hände waschen.
    Bittere Lupinen sind giftig: Samen und Keimlinge bitterer Sorten von Lupinus sind giftig. Von Kindern und Tieren fernhalten.
    Giftige Samen: Samen von Datura sind giftig. Samen und Keimlinge von Kindern und Tieren fernhalten.
    Kerne sind giftig: Kerne und Keimlinge von Malus setzen beim Kauen Blausäure frei. Von Kindern fernhalten.
    Grün von Buchweizen: Das Grün von Fagopyrum kann, in Mengen gegessen, die Haut in der Sonne verbrennen lassen.
    Saatgut, das nicht trocknen darf: Saatgut von Quercus, oder von nahe verwandten Arten, stirbt beim Trocknen. Was hier über Trocknen und Lagern steht, gilt dafür nicht.
    Saatgut, das wenig Trocknen verträgt: Saatgut von Citrus, oder von nahe verwandten Arten, verträgt nur wenig Trocknen oder keinen Frost; die Quellen sind sich nicht einig."
  `);
});

test('each ends with who comes first', () => {
  for (const { sentences } of words.notices(makeTrial({ involves: ['acid', 'mould'] }), [])) {
    expect(sentences.at(-1)).toMatchInlineSnapshot(`"Die Regeln vor Ort und der Rat von Fachleuten gehen vor."`);
  }
});
