import type { BenchTrial } from '../../trial/bench/bench.ts';
import { at, made } from './_elements.ts';

/** Offers the sowings of a trial for choice. */
export function fillSowings(id: string, { sowings }: BenchTrial, all: string | null): void {
  const options = sowings.map((sowing) => made('option', sowing.label ?? sowing.id, { value: `s${sowing.id}` }));
  at(id).replaceChildren(...(all === null ? [] : [made('option', all, { value: '' })]), ...options);
}
