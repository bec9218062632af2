import type { lists as en } from '../../en/ui/lists.ts';

/** Lists of trials: what they can be narrowed down by, and the pages of each choice, in German. */
export const lists = {
  'list.filterMeasure': 'Gemessen',
  'list.equal':
    'Ein Versuch, der keinen Unterschied fand oder nichts sagen kann, steht hier wie jeder andere: die neuesten zuerst, was immer herauskam.',
  'list.older': '{n} ältere Versuche stehen unter ihrem Jahr:',

  'by.crop': 'Versuche nach Kultur',
  'by.treatment': 'Versuche nach Behandlung',
  'by.measure': 'Versuche nach dem, was gemessen wurde',
  'by.year': 'Versuche nach Jahr',
  'by.verdict': 'Versuche nach Ergebnis',
  'by.status': 'Versuche nach Stand',
  'by.crop.one': 'Versuche mit {value}',
  'by.treatment.one': 'Was verglichen wurde: {value}',
  'by.measure.one': 'Was gemessen wurde: {value}',
  'by.year.one': 'Versuche nach Jahr der Aussaat: {value}',
  'by.verdict.one': 'Was herauskam: {value}',
  'by.status.one': 'Versuche nach Stand: {value}',
  'by.verdict.note':
    'Ein Versuch mit mehreren Vergleichen steht unter jedem ihrer Ergebnisse. Die Art eines Ergebnisses sagt nichts über seinen Wert.',
  'by.treatment.done': 'Was getan wurde',

  'varies.soak': 'Einweichen',
  'varies.drying': 'Trocknen',
  'varies.storage': 'Lagerung',
  'varies.light': 'Licht oder Abdeckung',
  'varies.temperature': 'Temperatur',
  'varies.medium': 'Erde oder Abdeckung',
  'varies.dressing': 'Beizung oder Umhüllung',
  'varies.age': 'Alter des Saatguts',
  'varies.other': 'etwas anderes',
  'varies.none': 'nicht angegeben',
  'year.notSown': 'noch nicht gesät',

  'finding.matters': 'ein Unterschied, auf den es ankommt',
  'finding.different': 'ein Unterschied',
  'finding.probably-different': 'wahrscheinlich ein Unterschied',
  'finding.alike': 'gleich genug',
  'finding.probably-alike': 'wahrscheinlich gleich',
  'finding.not-settled': 'offen',
  'finding.hardly-any': 'kaum etwas ging auf',
  'finding.cause-unclear': 'Ursache unklar',
  'finding.cannot-tell': 'lässt sich nicht sagen',
} as const satisfies Readonly<Record<keyof typeof en, string>>;
