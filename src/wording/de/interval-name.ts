import type { IntervalMethod } from '../../analysis/analysis.ts';

/** An interval's method as statisticians know it. */
export const intervalName = (method: IntervalMethod): string => NAMES[method];

const NAMES: Readonly<Record<IntervalMethod, string>> = {
  'wilson-effective': 'Wilson-Score, effektive Samenzahlen, t-Quantil',
  'wilson-seeds-only': 'Wilson-Score, nur Zufall der Samen (eine Einheit)',
  'newcombe-effective': 'Newcombe-Hybrid-Score, effektive Samenzahlen, t-Quantil',
  'newcombe-seeds-only': 'Newcombe-Hybrid-Score, nur Zufall der Samen (eine Einheit)',
  'newcombe-blocks': 'Newcombe-Hybrid-Score über Blöcke',
  'mantel-haenszel': 'Differenz der Anteile nach Mantel-Haenszel über Partien',
  welch: 'Welch-t',
  'welch-bracket': 'Hülle aus Welch-t und dem, was die Tage der Auszählung zulassen',
  paired: 'gepaartes t über Blöcke',
  'pooled-means': 't über Partien, Streuung innerhalb von Partie und Behandlung zusammengefasst',
  fieller: 'Fieller',
};
