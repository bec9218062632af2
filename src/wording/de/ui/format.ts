import type { format as en } from '../../en/ui/format.ts';

/** Die Seite über das Datenformat; was jeder Schlüssel bedeutet, steht in den Schemata (src/trial/schema). */
export const format = {
  'format.intro':
    'Ein Versuch ist ein Ordner kleiner Dateien, die ein Texteditor oder eine Tabellenkalkulation schreiben kann. Hier steht jede Datei, jeder Schlüssel und jede Spalte.',
  'format.english': 'Die Schlüssel sind englische Wörter; auch was hier neben ihnen steht, ist englisch.',
  'format.folder': 'Der Ordner',
  'format.folderText':
    'Ein Versuch ist der Ordner trials/<id>/: Sein Name ist seine Adresse. Neben diesen Ordnern stehen die Dateien der Website, die allen Versuchen gemeinsam sind. Ein Versuch braucht trial.yaml und, sobald gesät ist, sowings.csv; von den anderen Tabellen die, ohne die seine Zielgrößen nicht auskommen.',
  'format.site': 'Dateien der Website',
  'format.trial': 'Dateien eines Versuchs',
  'format.tables': 'Tabellen eines Versuchs',
  'format.tablesText':
    'Tabellen sind CSV, wie Tabellenkalkulationen es speichern: Kommas, Semikolons oder Tabulatoren, Dezimalpunkt oder Dezimalkomma, jede übliche Kodierung. Die erste Zeile nennt die Spalten, in beliebiger Reihenfolge; hinter einem Namen darf eine Einheit in Klammern stehen, etwa height (cm). Eine leere Zelle, NA oder NC hat keinen Wert, was keine 0 ist.',
  'format.check': 'Was die Dateien zusammen sagen müssen, weiß nur die Prüfung: „npm run check“.',
  'format.key': 'Schlüssel',
  'format.column': 'Spalte',
  'format.meaning': 'Was er sagt',
  'format.kind': 'Was dort stehen darf',
  'format.needed': 'Nötig',
  'format.yes': 'ja',
  'format.schema': 'JSON-Schema von {file}',
  'format.editors': 'Hilfe vom Editor',
  'format.editorsText':
    'Ein Editor, der den YAML-Language-Server kennt, ergänzt Schlüssel und zeigt Versehen beim Tippen, sobald dies die erste Zeile einer Datei ist:',

  'format.kind.text': 'Text',
  'format.kind.id': 'Kennung',
  'format.kind.date': 'Datum, etwa 2026-04-04',
  'format.kind.link': 'Webadresse',
  'format.kind.number': 'Zahl',
  'format.kind.whole': 'ganze Zahl',
  'format.kind.switch': '„yes“ oder „no“',
  'format.kind.word': 'eins von: {words}',
  'format.kind.keys': 'Schlüssel wie unten',
  'format.kind.by-name': 'ein Wert zu jedem Namen',
  'format.kinds.text': 'Texten',
  'format.kinds.id': 'Kennungen',
  'format.kinds.date': 'Daten',
  'format.kinds.link': 'Webadressen',
  'format.kinds.number': 'Zahlen',
  'format.kinds.whole': 'ganzen Zahlen',
  'format.kinds.switch': '„yes“ oder „no“',
  'format.kinds.word': 'einigen von: {words}',
  'format.kinds.keys': 'Einträgen wie unten',
  'format.kinds.by-name': 'Einträgen aus Namen und Werten',
  'format.list': 'eine Liste von {what}',
  'format.or': '{one} oder {other}',
} satisfies Record<keyof typeof en, string>;
