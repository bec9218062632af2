import type { PlanRequest } from '../../trial/schema/plan-request.ts';
import { designFaults } from '../planning/design-faults.ts';
import { planDesign, type PlanDesign } from '../planning/plan-design.ts';
import { spreadChoices } from '../planning/spread-choices.ts';
import { unitsNeeded } from '../planning/units-needed.ts';

/** How much is sown, and what that can show. */
export interface Sowable {
  readonly each: number;
  readonly seeds: number;
  /** Null where germination does not answer the question, or the difference that matters was not set. */
  readonly design: PlanDesign | null;
  /** Whether `each` or `seeds` were proposed here. */
  readonly isProposed: boolean;
}

/** Common practice, no source: what a proposal starts from, and where nothing can be worked out. */
const USUAL = { each: 6, seeds: 25, base: 80 };
/** More trays of each than this are a burden; more seeds in each are tried before. */
const MANY = 12;

/**
 * Sowings and seeds as asked for, else as proposed: so many that the difference that matters is shown 4 times in 5
 * (unitsNeeded), from 4 of each up, with 25, 50 or 100 seeds in each.
 */
export function plannedDesign(request: PlanRequest): Sowable {
  const { each, seeds, outcomes = [], lots, sowing, trays = 'usual', base = USUAL.base } = request;
  const primary = outcomes.find((outcome) => outcome.primary) ?? outcomes[0];
  const isProposed = each === undefined || seeds === undefined;
  if (primary?.measure !== 'germination' || primary.matters === undefined) {
    return { each: each ?? USUAL.each, seeds: seeds ?? USUAL.seeds, design: null, isProposed };
  }
  const spread = spreadChoices('germination', base).find(({ choice }) => choice === trays)?.spread ?? 2;
  const inBlocks = sowing?.assignment === 'random-in-blocks' || sowing?.block !== undefined;
  const design = (seeds: number, units: number) =>
    planDesign({ measure: 'germination', base, matters: primary.matters ?? 0, units, seeds, spread, crops: lots.length, inBlocks }); // prettier-ignore
  const tried = (seeds === undefined ? [25, 50, 100] : [seeds]).map((seeds) => {
    const isSound = designFaults(design(seeds, USUAL.each)).length === 0;
    return { seeds, needed: each ?? (isSound ? unitsNeeded(design(seeds, USUAL.each)) : null) };
  });
  const chosen = tried.find(({ needed }) => needed !== null && needed <= MANY) ?? tried.at(-1);
  const units = each ?? Math.max(4, Math.min(chosen?.needed ?? MANY, MANY));
  const sown = chosen?.seeds ?? USUAL.seeds;
  const settled = design(sown, units);
  return { each: units, seeds: sown, design: designFaults(settled).length === 0 ? settled : null, isProposed };
}
