import type * as z from 'zod';
import type { treatment } from './schema/parts.ts';
import type { Treatment } from './trial.ts';

/** A treatment of trial.yaml with its defaults. */
export function treatmentOf(given: z.infer<typeof treatment>): Treatment {
  return {
    id: given.id,
    label: given.label ?? given.id,
    control: given.control ?? false,
    soakHours: given.soak_hours ?? null,
    handling: given.handling ?? null,
    temperature: given.temperature ?? null,
    moisture: given.moisture ?? null,
  };
}
