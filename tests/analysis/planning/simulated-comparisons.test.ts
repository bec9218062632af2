import { expect, test } from 'vitest';
import { germinationComparison } from '../../../src/analysis/comparisons/germination-comparison.ts';
import { meansComparison } from '../../../src/analysis/comparisons/means-comparison.ts';
import { pooledComparisons } from '../../../src/analysis/comparisons/pooled-comparisons.ts';
import { drawCrop } from '../../../src/analysis/planning/draw-crop.ts';
import { findGermination } from '../../../src/analysis/planning/find-germination.ts';
import { findMeans } from '../../../src/analysis/planning/find-means.ts';
import { findTogether } from '../../../src/analysis/planning/find-together.ts';
import type { Found } from '../../../src/analysis/planning/found.ts';
import { planContext } from '../../../src/analysis/planning/plan-context.ts';
import { planDesign, type PlanDesign } from '../../../src/analysis/planning/plan-design.ts';
import type { Comparison } from '../../../src/analysis/analysis.ts';
import { seededRandom } from '../../../src/statistics/random.ts';
import { makeLot } from '../../support/make-trial.ts';

/* A simulation leaves out what it cannot wait for. What it keeps must be what the analysis of a trial says. */

const germination = (parts: Partial<PlanDesign>) =>
  planDesign({ measure: 'germination', base: 70, matters: 10, units: 4, ...parts });
const slow = { every: 4, seedSpread: 1.5, germination: 80 };
const designs: readonly (readonly [string, PlanDesign])[] = [
  ['trays', germination({})],
  ['few seeds near the top, uneven', germination({ base: 97, matters: 3, units: 2, seeds: 10, spread: 4 })],
  ['hardly any', germination({ base: 3, matters: 2, units: 3, seeds: 10 })],
  ['blocks', germination({ units: 6, inBlocks: true })],
  ['two blocks, which are none', germination({ units: 2, inBlocks: true })],
  ['heights', planDesign({ measure: 'trait', base: 40, matters: 5, units: 3 })],
  ['heights in blocks', planDesign({ measure: 'trait', base: 40, matters: 5, units: 5, inBlocks: true })],
  ['times', planDesign({ measure: 't50', base: 6, matters: 1, units: 4, seeds: 20 })],
  ['times from coarse checks', planDesign({ measure: 't50', base: 6, matters: 1, units: 3, timing: slow })],
  [
    'times of seeds that hardly come up',
    planDesign({ measure: 't50', base: 6, matters: 1, units: 3, seeds: 10, timing: { ...slow, germination: 8 } }),
  ],
];

const kept = ({ estimate, interval, test: tested, verdict }: Comparison): Found => ({
  estimate: interval === null ? null : estimate,
  interval: interval && { lower: interval.lower, upper: interval.upper },
  p: tested?.p ?? null,
  verdict,
});
const bare = ({ estimate, interval, ...found }: Found): Found => ({
  ...found,
  estimate: interval === null ? null : estimate,
  interval: interval && { lower: interval.lower, upper: interval.upper },
});

test.each(designs)('%s: a simulated crop is judged as a trial would be', (name, design) => {
  const random = seededRandom(name);
  const context = planContext(design);
  const [compare, find] =
    design.measure === 'germination' ? [germinationComparison, findGermination] : [meansComparison, findMeans];
  for (let trial = 0; trial < 25; trial++) {
    const pair = drawCrop(design, design.base + (trial % 2) * 3, 'leek', random);
    const comparison = compare(pair, context);
    const found = find(pair, context);
    if (comparison?.verdict === 'untestable') expect(found.interval).toBeNull();
    else expect(bare(found)).toEqual(comparison && kept(comparison));
  }
});

test.each([
  ['four trays of each', 4],
  ['one tray of each', 1],
])('%s in three crops: taken together as a trial would be', (name, units) => {
  for (const [kind, design] of designs) {
    const random = seededRandom(name + kind);
    const context = planContext(design);
    const lots = ['leek', 'onion', 'beet'].map((id) => makeLot(id));
    for (let trial = 0; trial < 5; trial++) {
      const pairs = lots.map(({ id }) => drawCrop({ ...design, units }, design.base, id, random));
      const [comparison] = pooledComparisons(pairs, lots, context);
      const found = findTogether(pairs, context);
      expect(found && bare(found)).toEqual(comparison ? kept(comparison) : null);
    }
  }
});
