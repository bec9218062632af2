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
  'lot.testsCaptionDay': 'Jede Prüfung dieser Partie, gezählt am Tag {day}',
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

  'home.limits': 'Was es am meisten einschränkt: {limits}',
  'home.limitsNone': 'Keine Vorsicht geboten und kein ernster Vorbehalt; der Bericht sagt, was er nicht sagen kann.',
  'home.due.count': 'Als Nächstes: Zählung am Tag {at}',
  'home.due.measure': 'Als Nächstes: Messung am Tag {at}',
  'home.due.test': 'Als Nächstes: Prüfung nach {at} Lagerung',
  'calendar.count': '{title}: Zählung am Tag {at}',
  'calendar.measure': '{title}: Messung am Tag {at}',
  'calendar.test': '{title}: Prüfung nach {at} Lagerung',
  'calendar.link': 'Die Tage für den Kalender (ICS)',
  'home.dueNote': 'Die Daten stehen im Plan jedes Versuchs.',

  'about.who': '{name} veröffentlicht die Versuche auf diesen Seiten.',
  'about.since': 'Die Gruppe arbeitet seit {year} zusammen.',
  'about.reading':
    'Jedes Ergebnis hat ein paar Worte und eine Form. Die Linie ist die Kontrolle, also das, womit verglichen wird; der Samen ist die Behandlung.',
  'about.shape.above': 'Eine höhere Zahl als die Kontrolle: mehr ging auf, höher, mehr Tage.',
  'about.shape.below': 'Eine niedrigere Zahl als die Kontrolle: weniger ging auf, niedriger, weniger Tage.',
  'about.shape.level':
    'Gleich genug für den Zweck: Ein Unterschied ist kleiner als ein Maß, das vor dem Zählen feststand.',
  'about.shape.open': 'Offen: Die Daten passen zu einem Unterschied und zu keinem. Gleichheit beweist das nicht.',
  'about.shape.question':
    'Lässt sich nicht sagen, oder Ursache unklar: etwa nur eine Schale je Behandlung, oder noch etwas anderes war verschieden. Ein erster Blick, eine Wiederholung wert.',
  'about.probably':
    'Das Wort „wahrscheinlich“ steht, wo etwas ein Ergebnis schwächt: etwa Plätze, die nicht gelost wurden, oder eine Frage, die erst nach der ersten Zählung feststand. Der Bericht nennt es.',
  'about.range':
    'Jede Zahl hat die Spanne bei sich, zu der die Daten passen. Eine weite Spanne ist kein Fehler der Menschen; sie sagt, wie viel so ein Versuch sagen kann.',
  'about.more': 'Mehr unter',
  'about.repeat':
    'Einen Versuch wiederholen: Zu jedem Bericht gibt es ein Paket mit seinem Plan, leeren Blättern und leeren Dateien. Andere Ergebnisse sind so willkommen wie gleiche.',
  'about.own':
    'Oder selbst etwas fragen: eine Frage, ein Unterschied zwischen den Behandlungen, mehrere Schalen von jeder, Plätze durch Los, alles vor der ersten Zählung festgelegt. Dann an die Adresse unten schreiben.',
  'about.licence': 'Lizenz',
  'about.licenceText': 'Texte, Bilder und Daten dürfen benutzt werden unter',
  'about.licenceOwn': 'Nennt ein Versuch eine andere Lizenz, so gilt für ihn die seine.',
  'about.privacy': 'Datenschutz',
  'about.pictures': 'Bilder werden ohne Ort, Zeit und Kamera veröffentlicht, die ein Telefon in sie hineinschreibt.',
  'about.access': 'Barrierefreiheit',
  'about.accessText':
    'Diese Seiten sollen WCAG 2.2, Stufe AA, erfüllen. Sie gehen mit der Tastatur, mit einem Vorleseprogramm, vergrößert, dunkel und auf Papier, und jedes Schaubild steht auch als Text und als Tabelle da. Wo nicht, schreiben Sie bitte.',
  'about.noContact': 'Eine Adresse ist nicht angegeben. Jeder Bericht nennt, wer ihn geschrieben hat.',

  'nav.notices': 'Sicherheit',
  'notices.intro':
    'Wo Menschen, Tiere oder Pflanzen zu Schaden kommen können. Ein Bericht zeigt die Hinweise, nach denen seine eigenen Angaben verlangen.',
  'notices.local': 'Die Regeln vor Ort und der Rat von Fachleuten gehen vor, was immer hier steht.',
  'notices.in': 'Steht in {trials}',
} as const satisfies Readonly<Record<keyof typeof en, string>>;
