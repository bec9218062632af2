import type { Measure } from '../../trial/trial.ts';

/** Words of a difference: `3` + ` mm` + ` taller`; `12` + `` + ` more` + ` per 100`. */
export interface DifferenceWords {
  readonly unit: string;
  /** Treatment above control, and below. */
  readonly up: string;
  readonly down: string;
  /** Follows the direction. */
  readonly after: string;
}

/** The words in which a difference of this outcome is said. `column` and `unit` tell heights from masses. */
export function differenceWords(measure: Measure, column: string | null, unit: string): DifferenceWords {
  const words = (inUnit: string, up: string, down: string, after = ''): DifferenceWords => ({
    unit: inUnit === '' ? '' : ` ${inUnit}`,
    up,
    down,
    after,
  });
  switch (measure) {
    case 'germination':
      return words('', 'more', 'fewer', ' per 100');
    case 't50':
    case 'mgt':
      return words('days', 'later', 'earlier');
    case 'spread':
      return words('days', 'longer', 'shorter');
    case 'maguire':
      return words('', 'higher', 'lower');
    case 'moisture':
      return words('points', 'more', 'less');
    case 'storage':
      return words('years', 'longer', 'shorter');
    case 'trait': {
      const [up, down] = comparative(column ?? '', unit);
      return words(unit === '%' ? 'points' : unit, up, down);
    }
  }
}

function comparative(column: string, unit: string): [up: string, down: string] {
  if (/height|tall/i.test(column)) return ['taller', 'shorter'];
  if (/length|long/i.test(column)) return ['longer', 'shorter'];
  if (/width|diameter|thick|girth/i.test(column)) return ['wider', 'narrower'];
  if (/^(mg|g|kg|oz|lb)$/.test(unit)) return ['heavier', 'lighter'];
  if (unit === '' && /leaves|leaf|number|count|roots|shoots|flowers|branches/i.test(column)) return ['more', 'fewer'];
  return ['larger', 'smaller'];
}
