import { onceATrial } from './once-a-trial.ts';

/** The rows of measurements.csv by sowing, in their order. */
export const measurementsBySowing = onceATrial(({ measurements }) => Map.groupBy(measurements, ({ sowing }) => sowing));
