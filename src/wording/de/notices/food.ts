import type { NoticeText } from '../../notice-text.ts';
import type { NoticeId } from '../../notice-ids.ts';
import { SOURCES } from '../../sources.ts';
import type { SpeciesNotice } from '../../species.ts';

const { badBugBook, cfr112, fdaSprouts, nacmcf } = SOURCES;
const gardening = {
  ...SOURCES.gardening,
  text: 'Gartenseiten über Keimlinge, die man nicht essen soll; schwache Quellen',
};
const fromMemory = { text: 'Allgemeines Wissen über Giftpflanzen', url: null, read: false };

/** Notices about eating: what is no food, and what must never be. `{crops}` is filled with the crops. */
export const food: Readonly<
  Record<
    Extract<NoticeId, 'seedlings-eaten' | 'not-food' | Exclude<SpeciesNotice, `desiccation-${string}`>>,
    NoticeText
  >
> = {
  'seedlings-eaten': {
    title: 'Keimlinge, die gegessen werden',
    sentences: [
      'Sprossen und junges Grün können Keime tragen, die kein Waschen entfernt, und sie haben viele Menschen krank gemacht.',
      'Saatgut für die Aussaat ist kein Lebensmittel; zum Keimen für die Küche gibt es eigens verkauftes Saatgut.',
      'Alles sauber und kühl halten, und wegwerfen, was falsch riecht oder aussieht.',
      'Kinder, Alte, Schwangere und Geschwächte sollten sie nicht roh essen.',
    ],
    sources: [fdaSprouts, cfr112, nacmcf],
  },
  'not-food': {
    title: 'Diese Keimlinge sind kein Lebensmittel',
    sentences: [
      'Keimlinge aus einem Versuch sind kein Lebensmittel: Saatgut kann gebeizt sein, und in den Gefäßen kann Schimmel sein oder das, womit das Saatgut behandelt wurde.',
    ],
    sources: [{ text: 'Regel der Saatgutprüfung', url: null, read: false }],
  },
  'toxic-castor': {
    title: 'Rizinus ist tödlich giftig',
    sentences: [
      'Samen von {crops} enthalten Rizin; wenige zerkaute Samen können töten.',
      'Samen, Keimlinge und Verschüttetes von Kindern und Tieren fernhalten.',
    ],
    sources: [gardening, fromMemory],
  },
  'toxic-nightshade': {
    title: 'Keimlinge von Nachtschattengewächsen sind kein Salat',
    sentences: [
      'Blätter, Stängel und Keimlinge von {crops} enthalten Gifte, auch wo die reife Frucht essbar ist.',
      'Nicht essen, und von Kindern und Tieren fernhalten.',
    ],
    sources: [gardening],
  },
  'toxic-rhubarb': {
    title: 'Rhabarberblätter sind giftig',
    sentences: [
      'Blätter und Keimlinge von {crops} enthalten Oxalsäure.',
      'Nicht essen, und von Kindern und Tieren fernhalten.',
    ],
    sources: [gardening],
  },
  'toxic-bean': {
    title: 'Rohe Bohnen sind giftig',
    sentences: [
      'Rohe Bohnen und Bohnensprossen von Arten wie {crops} enthalten ein Gift, das innerhalb von Stunden schwer krank macht; wenige rohe Bohnen genügen.',
      'Erwärmen entfernt es nicht, nur richtiges Kochen, und gekocht werden Sprossen und Keimlinge nicht.',
      'Von Kindern fernhalten.',
    ],
    sources: [badBugBook],
  },
  'toxic-foxglove': {
    title: 'Fingerhut ist giftig',
    sentences: [
      'Jeder Teil von {crops} wirkt auf das Herz, auch Samen und Keimlinge.',
      'Von Kindern und Tieren fernhalten und die Hände waschen.',
    ],
    sources: [fromMemory],
  },
  'toxic-lupin': {
    title: 'Bittere Lupinen sind giftig',
    sentences: ['Samen und Keimlinge bitterer Sorten von {crops} sind giftig.', 'Von Kindern und Tieren fernhalten.'],
    sources: [fromMemory],
  },
  'toxic-ornamental': {
    title: 'Giftige Samen',
    sentences: ['Samen von {crops} sind giftig.', 'Samen und Keimlinge von Kindern und Tieren fernhalten.'],
    sources: [fromMemory],
  },
  'toxic-kernel': {
    title: 'Kerne sind giftig',
    sentences: ['Kerne und Keimlinge von {crops} setzen beim Kauen Blausäure frei.', 'Von Kindern fernhalten.'],
    sources: [fromMemory],
  },
  'toxic-buckwheat': {
    title: 'Grün von Buchweizen',
    sentences: ['Das Grün von {crops} kann, in Mengen gegessen, die Haut in der Sonne verbrennen lassen.'],
    sources: [gardening],
  },
  allergen: {
    title: 'Allergien',
    sentences: [
      'Samen und Staub von {crops} lösen bei manchen Menschen Allergien aus.',
      'Sagen, was darin ist, bevor jemand es anfasst oder isst.',
    ],
    sources: [{ text: 'Allgemeines Wissen über Allergene in Lebensmitteln', url: null, read: false }],
  },
};
