import type { kit as en } from '../../en/ui/kit.ts';

/** README of the repeat kit, in German. */
export const kit = {
  'kit.title': 'Paket zum Wiederholen von „{title}“. Der ursprüngliche Bericht steht unter:',
  'kit.folder':
    'Kopieren Sie den Ordner „{folder}“ nach content/trials in eine Kopie von Fairsown. Er enthält die Frage, die Behandlungen, die Zielgrößen und die bedeutsamen Unterschiede des ursprünglichen Versuchs.',
  'kit.fill':
    'Tragen Sie Ihren Namen in people.yaml und Ihr eigenes Saatgut in lots.yaml ein: Herkunft, Ernte und Lagerung sind die Ihres Saatguts, nicht die des ursprünglichen. „npm run check“ sagt, was noch fehlt.',
  'kit.layout':
    'sowings.csv ist eine für dieses Paket ausgeloste Anordnung. Stellen Sie die Gefäße in der Reihenfolge der Spalte „position“ auf. Die Auslosung lässt sich mit dem Starttext „{seed}“ wiederholen. Alle Kopien dieses Pakets enthalten dieselbe Anordnung.',
  'kit.single':
    'Der ursprüngliche Versuch hatte für eine Partie und Behandlung nur ein einziges Gefäß. Ein einziges Gefäß kann die Behandlung nicht vom Gefäß unterscheiden. Säen Sie mehrere von jeder, mit je einer Zeile in sowings.csv, an ausgelosten Plätzen.',
  'kit.plan':
    'Ändern Sie den Plan, wenn es sein muss, vor der Aussaat, und sagen Sie, was anders ist als im ursprünglichen Versuch. Eine Änderung nach der ersten Zählung schwächt das Ergebnis.',
  'kit.counts':
    'Im Ordner „sheets“ liegen Bögen zum Ausdrucken und Ausfüllen. counts.csv hat für jede Aussaat und jeden Zähltag eine Zeile. Die Zahlen sind Summen bis zu diesem Tag. Eine leere Zelle heißt: nicht gezählt. Das ist keine Null.',
  'kit.finish':
    'Tragen Sie bei der Aussaat in trial.yaml das Datum als „sown“ ein und setzen Sie „status: growing“, nach der letzten Zählung „status: finished“. Lassen Sie „repeats“, wie es ist: Es verbindet Ihren Bericht mit dem ursprünglichen.',
  'kit.conditions':
    'Bedingungen des ursprünglichen Versuchs; schreiben Sie Ihre eigenen in trial.yaml unter „conditions“ auf, ob sie gleich sind oder nicht:',
} as const satisfies Readonly<Record<keyof typeof en, string>>;
