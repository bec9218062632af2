import type { Weighing } from '../../trial/trial.ts';
import type { Reading } from './over-readings.ts';

/**
 * Two weighings of the same seed as readings `[container, first, second]`. A container that both share is
 * one reading, so its error cancels where the masses are subtracted; where the containers differ, or one
 * was not weighed, the net masses are given with a container of 0. A mass read in steps of s lies within
 * s/2 of what was read; where the steps are as large as the seed itself, no range can be given.
 */
export function readingsOf(first: Weighing, second: Weighing): readonly [Reading, Reading, Reading] {
  const shared = first.container === second.container ? (first.container ?? 0) : null;
  const readings =
    shared === null
      ? ([{ value: 0, range: { lower: 0, upper: 0 } }, net(first), net(second)] as const)
      : ([
          read(shared, shared === 0 ? 0 : first.scaleStep),
          read(first.mass, first.scaleStep),
          read(second.mass, second.scaleStep),
        ] as const);
  const [container, ...masses] = readings;
  const known = masses.every(({ range }) => range !== null && range.lower > (container.range?.upper ?? Infinity));
  return known ? readings : [withoutRange(readings[0]), withoutRange(readings[1]), withoutRange(readings[2])];
}

const read = (mass: number, step: number | null, readings = 1): Reading => ({
  value: mass,
  range: step === null ? null : { lower: mass - (readings * step) / 2, upper: mass + (readings * step) / 2 },
});

const net = ({ mass, container, scaleStep }: Weighing): Reading =>
  container === null ? read(mass, scaleStep) : read(mass - container, scaleStep, 2);

const withoutRange = ({ value }: Reading): Reading => ({ value, range: null });
