import type { Sowing } from '../../trial/trial.ts';
import type { LotDesign } from './lot-design.ts';
import { mergedChecks } from './merged-checks.ts';
import type { Reading, Unit } from './unit.ts';

/**
 * The units of one treatment (methods 0): sowings; sowings that share a tray taken together; and, at
 * the level of batches, sowings of one batch taken together. Counts are added, plants put together.
 *
 * @param byBatch the comparison is one of batches; a control without any keeps its sowings and trays
 * @param valueOf what is compared, from the merged unit
 * @returns units in the order of their first sowing; empty where no sowing entered
 */
export function unitsOf(
  design: LotDesign,
  readings: readonly Reading[],
  treatment: string,
  stored: number | null,
  byBatch: boolean,
  valueOf: (unit: Omit<Unit, 'value'>) => number | null,
): readonly Unit[] {
  const all = design.sowingsOf(treatment, stored);
  const batches = byBatch && all.some(({ batch }) => batch !== null);
  const entered = new Map(readings.map((reading) => [reading.sowing.id, reading]));
  return partsOf(design, all, batches).flatMap((sowings) => {
    const members = sowings.flatMap(({ id }) => entered.get(id) ?? []);
    if (members.length === 0) return [];
    const unit = merged(design, members, treatment, batches ? 'batch' : sowings.length > 1 ? 'tray' : 'sowing');
    return [{ ...unit, value: valueOf(unit) }];
  });
}

/** Sowings that share a batch or a tray end up in one part, through however many steps. */
function partsOf(design: LotDesign, sowings: readonly Sowing[], batches: boolean): readonly (readonly Sowing[])[] {
  if (!batches && sowings.every(({ tray }) => tray === null)) return sowings.map((sowing) => [sowing]);
  let parts: Sowing[][] = [];
  for (const sowing of sowings) {
    const joins = (other: Sowing) => {
      // A tray that holds several treatments is a block, and batches may span blocks.
      const sharesTray = sowing.tray !== null && sowing.tray === other.tray;
      if (!batches) return sharesTray;
      return sowing.batch === other.batch || (sharesTray && !design.isSharedTray(sowing));
    };
    const joined = parts.filter((part) => part.some(joins));
    parts = [...parts.filter((part) => !joined.includes(part)), [...joined.flat(), sowing]];
  }
  const first = (part: readonly Sowing[]) => Math.min(...part.map((sowing) => sowings.indexOf(sowing)));
  return parts.sort((a, b) => first(a) - first(b));
}

function merged(
  design: LotDesign,
  members: readonly Reading[],
  treatment: string,
  kind: Unit['kind'],
): Omit<Unit, 'value'> {
  const sowings = members.map(({ sowing }) => sowing);
  const checks = mergedChecks(members.map((member) => ({ seeds: member.sowing.seeds, checks: member.checks })));
  const names = { sowing: null, tray: sowings[0]?.tray, batch: sowings[0]?.batch }[kind];
  const blocks = new Set(sowings.map((sowing) => design.blockOf(sowing)));
  const seeds = sowings.map((sowing) => sowing.seeds);
  return {
    kind,
    id: names ?? sowings.map(({ id }) => id).join('+'),
    lot: design.lot,
    treatment,
    stored: sowings[0]?.stored ?? null,
    block: blocks.size === 1 ? ([...blocks][0] ?? null) : null,
    spansBlocks: blocks.size > 1,
    sowings: sowings.map(({ id }) => id),
    seeds: seeds.includes(null) ? null : seeds.reduce<number>((sum, number) => sum + (number ?? 0), 0),
    count: checks.at(-1)?.total ?? null,
    checks,
    plants: members.flatMap((member) => member.plants),
    toldApart: members.every((member) => member.toldApart),
  };
}
