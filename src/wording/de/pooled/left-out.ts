import type { LeftOutTrial } from '../../../analysis/pooled.ts';

/** Why a trial of a question does not count. */
export function pooledLeftOut({ reason, found }: LeftOutTrial): string {
  switch (reason) {
    case 'data-fail':
      return 'Seine Dateien haben Fehler oder bestehen die Nachprüfung nicht, also zählt er nicht.';
    case 'other-measure':
      return 'Er vergleicht nichts von dem, was hier gefragt ist.';
    case 'outcome-not-named':
      return 'Er hat mehrere Zielgrößen dieser Art, und die Frage sagt nicht, welche gemeint ist.';
    case 'treatments-differ':
      return `Er vergleicht andere Behandlungen${found === null ? '' : `: ${found}`}.`;
    case 'other-unit':
      return `Er hat etwas anderes gemessen oder in einer anderen Einheit${found === null ? '' : `: ${found}`}.`;
    case 'several-times':
      return 'Er vergleicht gelagertes Saatgut zu mehreren Zeiten, also gibt es nicht den einen Unterschied.';
    case 'no-interval':
      return 'Wie sicher sein Unterschied ist, lässt sich nicht berechnen: Von einer Behandlung gab es nur eine Einheit, oder alle ergaben denselben Wert.';
    case 'same-records':
      return 'Seine Aufzeichnungen stehen schon in einem anderen Versuch dieser Frage, oder er ist zweimal genannt.';
  }
}
