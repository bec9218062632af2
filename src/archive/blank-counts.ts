import type { PlanRequest } from '../trial/schema/plan-request.ts';
import { csvText } from './csv-text.ts';
import type { PlannedSowing } from './planned-sowings.ts';
import type { Cell } from './table.ts';

/** counts.csv to be filled in: a row a planned day and container, in the order of the bench; null where nothing is counted. */
export function blankCounts({ scoring }: PlanRequest, sowings: readonly PlannedSowing[]): string | null {
  const days = scoring?.days ?? [];
  if (days.length === 0) return null;
  const rows = days.flatMap((day) => sowings.map(({ id, label }): Cell[] => [label ?? id, day, null, null, null]));
  return csvText({ head: ['sowing', 'day', 'germinated', 'scorer', 'note'], rows });
}
