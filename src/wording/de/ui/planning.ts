import type { planning as english } from '../../en/ui/planning.ts';

/** Der Befehl `plan`: was er fragt, wovor er warnt und was er in Dateien schreibt. */
export const planning: Readonly<Record<keyof typeof english, string>> = {
  'planning.ask.title': 'Ein kurzer Titel',
  'planning.ask.question': 'Was willst du wissen? Eine Frage',
  'planning.ask.varies': 'Was ändert die Frage mit Absicht?',
  'planning.ask.control': 'Was geschieht mit den unbehandelten Samen (der Kontrolle)?',
  'planning.ask.treatment': 'Was geschieht mit den anderen Samen?',
  'planning.ask.author': 'Deine Kennung, ein kurzes Wort',
  'planning.ask.name': 'Dein Name, wie er gedruckt werden soll',
  'planning.ask.lot': 'Welches Saatgut?',
  'planning.ask.otherLot': 'anderes Saatgut',
  'planning.ask.newLot': 'Eine Kennung für dieses Saatgut, etwa lauch-2025',
  'planning.ask.crop': 'Welche Kultur?',
  'planning.ask.species': 'Ihr botanischer Name',
  'planning.ask.container': 'Was ist eine Aussaat?',
  'planning.ask.containerUsual': 'eine Schale',
  'planning.ask.treated': 'Wie wird behandelt?',
  'planning.ask.block':
    'Gibt es Regale, Tische oder Tage, die sich unterscheiden? Nenne eines (Regal) oder lass es leer',
  'planning.ask.germinated': 'Wann gilt ein Korn als aufgegangen?',
  'planning.ask.days': 'Zähltage nach der Aussaat, mit Kommas',
  'planning.ask.matters': 'Der kleinste Unterschied, der dir etwas ausmacht, in Keimlingen von 100',
  'planning.ask.base': 'Wie viele von 100 unbehandelten Samen gehen etwa auf?',
  'planning.ask.trays': 'Wie gleichmäßig sind gleich behandelte Aussaaten?',
  'planning.ask.seeds': 'Samen je Aussaat',
  'planning.ask.each':
    'Aussaaten je Behandlung (Vorschlag: so viele, dass sich der Unterschied in 4 von 5 Versuchen zeigt)',
  'planning.ask.blind': 'Zählen, ohne zu wissen, was was ist? (empfohlen)',
  'planning.ask.write': 'Diese Dateien schreiben?',
  'planning.trays.even': 'sehr gleichmäßig',
  'planning.trays.usual': 'wie üblich',
  'planning.trays.uneven': 'sie unterscheiden sich stark',

  'planning.proposed': 'Vorschlag: {each} je Behandlung und Saatgut, mit je {seeds} Samen.',
  'planning.heed': 'Vor der Aussaat',
  'planning.doubt.one-each':
    'Eine Aussaat je Behandlung: Die Behandlung lässt sich vom gewöhnlichen Zufall zwischen Aussaaten nicht trennen. Säe mindestens 4 von jeder.',
  'planning.doubt.two-changes':
    '{treatment} unterscheidet sich von der Kontrolle in mehr als einer Sache. Was immer sich zeigt, niemand kann sagen, welche davon es war. Ändere nur eine.',
  'planning.doubt.unequal-soak':
    '{treatment} und die Kontrolle werden verschieden lange eingeweicht, obwohl danach nicht gefragt wird. Weiche beide gleich ein.',
  'planning.doubt.at-once':
    'Alle Samen werden auf einmal behandelt; was dabei schief- oder gutgeht, steckt in allen Aussaaten. Behandle die Samen jeder Aussaat für sich.',
  'planning.doubt.in-batches':
    'Es wird in Chargen behandelt: Mache mindestens zwei je Behandlung und schreibe in die Spalte „batch“ von sowings.csv, welche Aussaat aus welcher stammt.',
  'planning.doubt.treated-unknown':
    'Es ist nicht gesagt, wie behandelt wird. Sage unter „treated“, ob jede Aussaat für sich behandelt wird.',
  'planning.doubt.no-margin':
    'Kein kleinster Unterschied, der etwas ausmacht, ist festgelegt. Ohne ihn kann niemand sagen, dass zwei Behandlungen gleich sind.',
  'planning.doubt.many-comparisons':
    'Es werden {comparisons} Vergleiche gemacht. Bei so vielen zeigt sich nur ein Unterschied von etwa {detectable} von 100 in 4 von 5 Versuchen sicher, und {matters} sollten etwas ausmachen. Frage weniger, oder säe mehr.',
  'planning.doubt.two-blocks':
    'Blöcke helfen ab dreien. Bei weniger werden die Aussaaten verglichen, als gäbe es keine.',
  'planning.doubt.sown-before': 'Der Plan wird heute festgelegt, nach dem Tag der Aussaat ({sown}).',
  'planning.doubt.not-blind':
    'Wer zählt, weiß, was was ist. Hoffnung kann sich dann an die Zählung lehnen; blindes Zählen verbirgt die Behandlungen.',

  'planning.written': 'Der Versuch steht in {folder}:',
  'planning.key':
    'Der Schlüssel, der sagt, welche Aussaat welche Behandlung bekommt, liegt getrennt: {file}. Wer sät, braucht ihn; wer zählt, sieht nicht hinein. Bewahre eine zweite Kopie auf. Lege key.csv nach der letzten Zählung unverändert, Byte für Byte, in den Ordner des Versuchs.',
  'planning.seed':
    'Gelost aus dem Zufallsstartwert „{seed}“. Derselbe Plan mit diesem Startwert lost dieselbe Anordnung.',
  'planning.seedInKey': 'Der Zufallsstartwert steht nur im Schlüssel.',
  'planning.digest':
    'Plan festgelegt am {date}, Prüfsumme {digest}. Schreibe sie auf ein Blatt, das andere aufbewahren.',
  'planning.next':
    'Wenn du säst, schreibe das Datum ({today}) in trial.yaml und setze „status: growing“; nach der letzten Zählung „status: finished“. Ob in {trial} alles stimmt, sagt die Prüfung.',

  'planning.filePlan':
    'Geschrieben, als der Plan festgelegt wurde. Nicht ändern: Die Prüfsumme würde nicht mehr passen.',
  'planning.fileSown': 'Wenn gesät ist: „status: growing“ und das Datum der Aussaat',
  'planning.fileConditions':
    'Worin es wuchs, kommt nach und nach unter den Schlüssel conditions: substrate, water, light, temperature, place',
  'planning.fileInterests':
    'Wer bezahlt hat und wer etwas vom Ergebnis hat, wird bei jedem Versuch gefragt:\ninterests: Saatgut zum vollen Preis gekauft; niemand hat diesen Versuch bezahlt',
};
