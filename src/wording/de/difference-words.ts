import type { Measure } from '../../trial/trial.ts';

/** Words of a difference: `3` `mm` `höher`; `12` `` `mehr` ` je 100`. */
export interface DifferenceWords {
  /** As `inUnit` takes it. */
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
    unit: inUnit,
    up,
    down,
    after,
  });
  switch (measure) {
    case 'germination':
      return words('', 'mehr', 'weniger', ' je 100');
    case 't50':
    case 'mgt':
      return words('days', 'später', 'früher');
    case 'spread':
      return words('days', 'länger', 'kürzer');
    case 'maguire':
      return words('', 'höher', 'niedriger');
    case 'moisture':
      return words('points', 'mehr', 'weniger');
    case 'storage':
      return words('years', 'länger', 'kürzer');
    case 'trait': {
      const [up, down] = comparative(column ?? '', unit);
      return words(unit === '%' ? 'points' : unit, up, down);
    }
  }
}

function comparative(column: string, unit: string): [up: string, down: string] {
  if (/height|tall|höhe|hoehe|wuchs/i.test(column)) return ['höher', 'niedriger'];
  if (/length|long|länge|laenge/i.test(column)) return ['länger', 'kürzer'];
  if (/width|diameter|girth|breite|durchmesser|umfang/i.test(column)) return ['breiter', 'schmaler'];
  if (/thick|dicke/i.test(column)) return ['dicker', 'dünner'];
  if (/^(mg|g|kg|oz|lb)$/.test(unit)) return ['schwerer', 'leichter'];
  if (unit === '' && COUNTS.test(column)) return ['mehr', 'weniger'];
  return ['größer', 'kleiner'];
}

const COUNTS =
  /leaves|leaf|number|count|roots|shoots|flowers|branches|zahl|blätter|blaetter|wurzeln|triebe|blüten|blueten|zweige/i;
