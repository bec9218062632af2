import type { PlanDesign } from './plan-design.ts';

/** How even trays are, in plain choices. */
export type SpreadChoice = 'even' | 'usual' | 'uneven';

/**
 * The number behind each choice, for `spread` of a design: φ for germination, a share of the usual value for times and
 * traits. Common practice for planning, no source; φ = 2 is also what shrinkage assumes (methods 2).
 */
export function spreadChoices(
  measure: PlanDesign['measure'],
  base: number,
): readonly { readonly choice: SpreadChoice; readonly spread: number }[] {
  const numbers = measure === 'germination' ? [1, 2, 4] : [0.05 * base, 0.1 * base, 0.2 * base];
  return CHOICES.map((choice, index) => ({ choice, spread: numbers[index] ?? 0 }));
}

const CHOICES: readonly SpreadChoice[] = ['even', 'usual', 'uneven'];
