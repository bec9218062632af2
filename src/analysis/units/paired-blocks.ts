import type { Unit, UnitGroup } from './unit.ts';

/** The units of both treatments in one block. */
export interface PairedBlock {
  readonly block: string;
  readonly treated: readonly Unit[];
  readonly control: readonly Unit[];
}

/**
 * The blocks of a comparison (methods 3), where there are three or more, each holds both treatments
 * and every unit stands in exactly one; null otherwise: then blocks are not used.
 *
 * @returns blocks in the order of their names
 */
export function pairedBlocks(treated: UnitGroup, control: UnitGroup): readonly PairedBlock[] | null {
  const units = [...treated.units, ...control.units];
  const names = [...new Set(units.map(({ block }) => block))].filter((block) => block !== null).sort();
  if (names.length < 3 || units.some(({ block }) => block === null)) return null;

  const blocks = names.map((block) => ({
    block,
    treated: treated.units.filter((unit) => unit.block === block),
    control: control.units.filter((unit) => unit.block === block),
  }));
  return blocks.every((block) => block.treated.length > 0 && block.control.length > 0) ? blocks : null;
}
