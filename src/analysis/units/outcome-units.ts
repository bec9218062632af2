import type { Outcome, Trial } from '../../trial/trial.ts';
import { isTime } from '../measures/is-time.ts';
import { unitOfMeasure } from '../measures/unit-of-measure.ts';
import { unitValue } from '../measures/unit-value.ts';
import { moistureOf } from '../moisture.ts';
import { countReadings } from './count-readings.ts';
import { lotDesign } from './lot-design.ts';
import { lotUnits, type LotUnits } from './lot-units.ts';
import { traitReadings } from './trait-readings.ts';
import { weighedAs } from './weighed-as.ts';
import { weighedUnits } from './weighed-units.ts';
import { withoutTimeless } from './without-timeless.ts';

/** Units of every lot for an outcome, and the unit of its estimates. */
export interface OutcomeUnits {
  readonly unit: string;
  readonly lots: readonly LotUnits[];
}

/** Reads an outcome from the table it needs: counts, measurements or weighings. */
export function outcomeUnits(trial: Trial, outcome: Outcome, withLeftOut: boolean): OutcomeUnits {
  if (outcome.measure === 'moisture') return weighed(trial);
  const { measure } = outcome;
  const readingsOf = measure === 'trait' ? traitReadings : countReadings;
  const lots = trial.lots.map(({ id }) => {
    const readings = readingsOf(trial, outcome, id, withLeftOut);
    const units = lotUnits(lotDesign(trial, id), readings, (unit) => unitValue(measure, unit));
    return isTime(measure) ? withoutTimeless(units) : units;
  });
  return { unit: unitOfMeasure(trial, outcome), lots };
}

function weighed(trial: Trial): OutcomeUnits {
  const rows = moistureOf(trial);
  const as = weighedAs(rows);
  return {
    unit: as === 'moistureAfter' ? '% wet basis' : '% of mass lost',
    lots: trial.lots.map(({ id }) => weighedUnits(trial, id, rows, as)),
  };
}
