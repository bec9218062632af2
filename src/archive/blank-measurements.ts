import type { PlanRequest } from '../trial/schema/plan-request.ts';
import { csvText } from './csv-text.ts';
import type { PlannedSowing } from './planned-sowings.ts';
import type { Cell } from './table.ts';

/** Plants of each container, where the plan does not say: as many as the measuring sheet has boxes. */
const PLANTS = 10;

/** measurements.csv to be filled in: a row a day, container and plant, a column a trait; null where nothing is measured. */
export function blankMeasurements(
  { outcomes = [], plants, seeds }: PlanRequest,
  sowings: readonly PlannedSowing[],
): string | null {
  const traits = outcomes.filter(({ measure }) => measure === 'trait');
  if (traits.length === 0) return null;
  const columns = [...new Set(traits.map(({ column }) => column ?? ''))];
  const measured = plants ?? Math.min(PLANTS, seeds ?? PLANTS);
  const dayOf = ({ day }: (typeof traits)[number], lot: string) => (typeof day === 'object' ? day[lot] : day);
  const days = [...new Set(traits.flatMap((trait) => sowings.map(({ lot }) => dayOf(trait, lot) ?? 0)))];
  const rows = days
    .toSorted((a, b) => a - b)
    .flatMap((day) =>
      sowings
        .filter(({ lot }) => traits.some((trait) => dayOf(trait, lot) === day))
        .flatMap(
          ({ id, label }) =>
          Array.from({ length: measured }, (_, plant): Cell[] => [label ?? id, day, plant + 1, ...columns.map(() => null)]), // prettier-ignore
        ),
    );
  return csvText({ head: ['sowing', 'day', 'plant', ...columns], rows });
}
