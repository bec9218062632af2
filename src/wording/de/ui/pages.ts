import type { pages as en } from '../../en/ui/pages.ts';

/** Pages of lots, people, notices and the site itself, in German. */
export const pages = {
  'lot.id': 'Partie',
  'lot.named': 'Partie {lot}',
  'lot.genus': 'Gattung',
  'lot.epithet': 'Art',
  'lot.below': 'Unterhalb der Art',
  'lot.description': 'Saatgutpartie {lot}, {name}: ihr Pass, jede Prüfung, wie viel aufging, und die Versuche mit ihr.',
  'lot.passport': 'Pass',
  'lot.passportOf': 'Was über die Partie {lot} bekannt ist',
  'lot.what': 'Was',
  'lot.descriptor': 'Deskriptor',
  'lot.descriptorNote':
    'Die Deskriptoren sind die des offenen Passes von Saatgutsammlungen (FAO und Bioversity, Multi-Crop Passport Descriptors 2.1; aus dem Gedächtnis). Wo eine Zelle leer ist, hat er keinen, der dasselbe bedeutet.',
  'lot.several': 'Mehrere Versuche benutzen diese Kennung für Saatgut, das sie verschieden beschreiben.',
  'lot.tests': 'Wie viel aufging, Prüfung für Prüfung',
  'lot.testsNone': 'Noch hat kein abgeschlossener Versuch gezählt, was von dieser Partie aufging.',
  'lot.testsCaption': 'Jede Prüfung dieser Partie',
  'lot.countOn': '{count} von {seeds}, Tag {day}',
  'lot.testsNote':
    'Versuche unterscheiden sich in Ort, Wetter, Erde und Behandlung. Ein Abstand zwischen Prüfungen verschiedener Versuche zeigt nicht, dass das Saatgut gealtert ist.',
  'chart.lot.title': '{lot}: Prüfungen vom {from} bis zum {to}',
  'chart.lot.subtitle':
    'Zeichen: was in einer Prüfung aufging. Striche dadurch: wozu die Daten passen. Verbunden: dieselbe Behandlung desselben Versuchs.',
  'chart.lot.description': 'Anteil, der in jeder Prüfung einer Saatgutpartie aufging, nach Datum. {values}',
  'chart.lot.date': 'Gesät (Jahr und Monat)',

  'people.intro': 'Alle, die in einem Versuch hier genannt sind, und was sie getan haben.',
  'person.description': '{name}: was sie oder er in den Versuchen hier getan hat, und welche das sind.',
  'person.role': 'In den Worten des Versuchs',
  'person.rolesCaption': 'Aufgaben',
  'person.creditNote':
    'Die zweite Spalte nennt die Rolle aus CRediT, der offenen Einteilung von Beiträgen (ANSI/NISO Z39.104-2022), wo eine zu dem passt, was der Versuch sagt.',
} as const satisfies Readonly<Record<keyof typeof en, string>>;
