import type * as z from 'zod';
import type { Refusal } from '../../refusal.ts';

/** Turns a refusal into an issue of a zod check; rule and remedy travel in its `params`. */
export function refuse(context: z.core.$RefinementCtx, { rule, message, remedy }: Refusal): void {
  context.addIssue({ code: 'custom', message, params: { rule, remedy } });
}
