import { SowingNames } from '../tables/sowing-names.ts';
import type { BenchTrial } from './bench.ts';

/** The sowings by id and label, for the readers of the tables; what is not known at the bench is null. */
export function benchNames({ sowings, sown }: BenchTrial): SowingNames {
  const names = new Map(sowings.map(({ id }) => [id, id]));
  for (const { id, label } of sowings) if (label !== null && !names.has(label)) names.set(label, id);
  return new SowingNames(
    names,
    sowings.map((sowing) => ({
      ...sowing,
      lot: '',
      treatment: null,
      seedsByMass: false,
      batch: null,
      sown: sowing.sown ?? sown,
      stored: null,
      mass: null,
      soakHours: null,
      line: 0,
    })),
  );
}
