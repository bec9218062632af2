import type { Hazard } from '../../../trial/trial.ts';
import type { NoticeText } from '../../notice-text.ts';
import { SOURCES } from '../../sources.ts';
import type { SpeciesNotice } from '../../species.ts';

const S = SOURCES;
const safety = { text: 'Allgemeines Wissen über sicheren Umgang', url: null, read: false };

/** Notices about what is done with seed: heat, cold, chemicals, dust, giving seed away. */
export const handling: Readonly<
  Record<Hazard | 'seed-dressed' | Extract<SpeciesNotice, `desiccation-${string}`>, NoticeText>
> = {
  'seed-dressed': {
    title: 'Gebeiztes Saatgut',
    sentences: [
      'Mit Pflanzenschutzmittel behandeltes Saatgut wird nie gegessen, weder von Menschen noch von Tieren, und seine Keimlinge auch nicht.',
      'Handschuhe tragen, das Etikett beim Saatgut lassen und befolgen.',
    ],
    sources: [S.cfr201Treated, S.cfr2Treated],
  },
  'hot-water': {
    title: 'Heißes Wasser',
    sentences: [
      'Heißes Wasser verbrüht, und veröffentlichte Zeiten und Temperaturen gehen auseinander; diese Seite nennt keine zum Nachmachen.',
      'Die Behandlung kann altes, vorgekeimtes, pilliertes oder großes Saatgut töten. Darum probiert man zuerst eine kleine Menge der Partie und behandelt kein Saatgut zweimal.',
    ],
    sources: [S.hygHotWater],
  },
  disinfectant: {
    title: 'Bleiche, Wasserstoffperoxid und andere Desinfektionsmittel',
    sentences: [
      'Sie verätzen Augen und Haut und geben Dämpfe ab; das Etikett des Mittels befolgen.',
      'Reiniger nie mischen: Bleiche mit Säure, Essig oder Ammoniak setzt giftiges Gas frei.',
      'Sie reinigen nur die Oberfläche der Samen. In manchen Ländern ist eine solche Anwendung eines Mittels selbst geregelt.',
    ],
    sources: [S.hygHotWater, safety],
  },
  acid: {
    title: 'Säuren',
    sentences: [
      'Starke Säuren auf harten Samen sind ein Verfahren für Labore, nicht für Küchen: Sie verätzen Haut und Augen und kochen mit Wasser auf.',
    ],
    sources: [S.cfr201Acid, safety],
  },
  desiccant: {
    title: 'Trockenmittel',
    sentences: [
      'Der Staub von Kieselgel und anderen Trockenmitteln schadet der Lunge; blaues Gel kann ein Kobaltsalz enthalten, das schlimmer ist.',
      'Heißes Gel verbrennt, Branntkalk ätzt. Die Beutel sind kein Lebensmittel: von Kindern und Tieren fernhalten.',
      'Saatgut, das noch feucht verschlossen wird, verdirbt schneller als Saatgut in Papier.',
    ],
    sources: [S.handbook506, S.reach, safety],
  },
  'oxygen-absorber': {
    title: 'Sauerstoffzehrer',
    sentences: [
      'Beutel mit Eisenpulver sind kein Lebensmittel und kein Kieselgel; von Kindern und Tieren fernhalten.',
      'Ohne Luft hält sich nur trockenes Saatgut; feuchtes gärt und stirbt. Was hier über Saatgut steht, sagt nichts über das Lagern von Lebensmitteln.',
    ],
    sources: [safety],
  },
  freezer: {
    title: 'Saatgut einfrieren',
    sentences: [
      'Nur trockenes Saatgut verträgt die Gefriertruhe.',
      'Ein geschlossenes Glas erst warm werden lassen, dann öffnen, sonst schlägt sich Wasser auf dem Saatgut nieder.',
    ],
    sources: [safety],
  },
  'dry-ice': {
    title: 'Trockeneis',
    sentences: [
      'Trockeneis erfriert die Haut, füllt einen Raum mit Gas, in dem niemand atmen kann, und sprengt geschlossene Gläser.',
      'Nur im Freien verwenden und nie einschließen.',
    ],
    sources: [safety],
  },
  oven: {
    title: 'Backöfen',
    sentences: [
      'Papier und Saatgut können im Ofen Feuer fangen; dabeibleiben.',
      'Ein Küchenofen ist kein Laborofen: Ein damit bestimmter Feuchtegehalt ist ein grober Wert.',
    ],
    sources: [S.hart, safety],
  },
  'heat-mat': {
    title: 'Heizmatten und Heizungen',
    sentences: [
      'Elektrische Wärme nahe bei Wasser und Papier: ein dafür gemachtes Gerät verwenden, an einer sicheren Steckdose und nicht ohne Aufsicht.',
    ],
    sources: [safety],
  },
  mould: {
    title: 'Schimmel',
    sentences: [
      'Schimmel kann Allergien, Asthma und Infektionen der Lunge auslösen; nicht an Schalen riechen, und sie geschlossen wegwerfen.',
      'Verschimmelte tote Samen werden bei jeder Auszählung entfernt und aufgeschrieben.',
    ],
    sources: [S.cfr201Mould, safety],
  },
  'seed-offered': {
    title: 'Saatgut weitergeben oder verkaufen',
    sentences: [
      'Das Saatgutrecht kann Etiketten und eine Keimprüfung verlangen, und geschützte Sorten dürfen nicht frei weitergegeben werden.',
      'Für den Versand über Grenzen gelten Regeln zur Pflanzengesundheit, auch für wenige Samen in einem Brief. Gelistete Unkräuter dürfen gar nicht verschickt werden.',
      'Die Zahlen hier sind keine amtliche Prüfung und erhöhen keine Zahl auf einem Etikett.',
    ],
    sources: [S.cfr201Open, S.eu2016, S.smallLots, S.eu2002, S.cfr361],
  },
  'desiccation-sensitive': {
    title: 'Saatgut, das nicht trocknen darf',
    sentences: [
      'Saatgut von {crops}, oder von nahe verwandten Arten, stirbt beim Trocknen. Was hier über Trocknen und Lagern steht, gilt dafür nicht.',
    ],
    sources: [S.cpc, S.ufIfas],
  },
  'desiccation-intermediate': {
    title: 'Saatgut, das wenig Trocknen verträgt',
    sentences: [
      'Saatgut von {crops}, oder von nahe verwandten Arten, verträgt nur wenig Trocknen oder keinen Frost; die Quellen sind sich nicht einig.',
    ],
    sources: [S.ellis1990, S.ufIfas],
  },
};
