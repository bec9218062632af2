import type { CaveatId } from '../analysis.ts';
import { batchUnknown } from './batch-unknown.ts';
import { batchesSpanBlocks } from './batches-span-blocks.ts';
import { checkedOnDifferentDays } from './checked-on-different-days.ts';
import { coarseChecks } from './coarse-checks.ts';
import { coarseReadings } from './coarse-readings.ts';
import { confoundedBlock } from './confounded-block.ts';
import { confoundedCountDay } from './confounded-count-day.ts';
import { confoundedPlace } from './confounded-place.ts';
import { confoundedPosition } from './confounded-position.ts';
import { confoundedScorer } from './confounded-scorer.ts';
import { confoundedSowingDay } from './confounded-sowing-day.ts';
import { fewSeeds } from './few-seeds.ts';
import { fewUnits } from './few-units.ts';
import { halfBeforeFirstCheck } from './half-before-first-check.ts';
import { hardlyAny } from './hardly-any.ts';
import { incompleteBlocks } from './incomplete-blocks.ts';
import { lotsDiffer } from './lots-differ.ts';
import { manyComparisons } from './many-comparisons.ts';
import { moreAlikeThanLuck } from './more-alike-than-luck.ts';
import { moreVariedThanLuck } from './more-varied-than-luck.ts';
import { nearLimit } from './near-limit.ts';
import { noMargin } from './no-margin.ts';
import { noRoom } from './no-room.ts';
import { noSeedNumber } from './no-seed-number.ts';
import { noHalfLife } from './no-half-life.ts';
import { notBlind } from './not-blind.ts';
import { notRandomised } from './not-randomised.ts';
import { nothingCameUp } from './nothing-came-up.ts';
import { oneBatch } from './one-batch.ts';
import { oneLot } from './one-lot.ts';
import { oneSowing } from './one-sowing.ts';
import { outcomesNotFixed } from './outcomes-not-fixed.ts';
import { planChanged } from './plan-changed.ts';
import { positionsUnbalanced } from './positions-unbalanced.ts';
import { seedsByMass } from './seeds-by-mass.ts';
import { sowingsLeftOut } from './sowings-left-out.ts';
import { startMoistureUnknown } from './start-moisture-unknown.ts';
import { stillGerminating } from './still-germinating.ts';
import { survivorsOnly } from './survivors-only.ts';
import { testedStraightAway } from './tested-straight-away.ts';
import { twoChanges } from './two-changes.ts';
import { unequalHandling } from './unequal-handling.ts';
import { unequalSoak } from './unequal-soak.ts';
import { unequalSpread } from './unequal-spread.ts';
import { unequalTrays } from './unequal-trays.ts';
import { ungerminatedNotSorted } from './ungerminated-not-sorted.ts';
import type { Rule } from './rule.ts';

/** Every caveat's rule (methods 13); the compiler refuses a caveat without one. */
export const RULES: Readonly<Record<CaveatId, Rule>> = {
  'one-sowing': oneSowing,
  'one-batch': oneBatch,
  'confounded-place': confoundedPlace,
  'confounded-block': confoundedBlock,
  'confounded-position': confoundedPosition,
  'confounded-scorer': confoundedScorer,
  'confounded-sowing-day': confoundedSowingDay,
  'confounded-count-day': confoundedCountDay,
  'unequal-soak': unequalSoak,
  'unequal-handling': unequalHandling,
  'checked-on-different-days': checkedOnDifferentDays,
  'not-randomised': notRandomised,
  'positions-unbalanced': positionsUnbalanced,
  'batch-unknown': batchUnknown,
  'outcomes-not-fixed': outcomesNotFixed,
  'plan-changed': planChanged,
  'still-germinating': stillGerminating,
  'sowings-left-out': sowingsLeftOut,
  'many-comparisons': manyComparisons,
  'unequal-spread': unequalSpread,
  'unequal-trays': unequalTrays,
  'incomplete-blocks': incompleteBlocks,
  'seeds-by-mass': seedsByMass,
  'no-seed-number': noSeedNumber,
  'few-units': fewUnits,
  'few-seeds': fewSeeds,
  'not-blind': notBlind,
  'no-margin': noMargin,
  'more-varied-than-luck': moreVariedThanLuck,
  'more-alike-than-luck': moreAlikeThanLuck,
  'near-limit': nearLimit,
  'hardly-any': hardlyAny,
  'no-room': noRoom,
  'coarse-checks': coarseChecks,
  'coarse-readings': coarseReadings,
  'lots-differ': lotsDiffer,
  'ungerminated-not-sorted': ungerminatedNotSorted,
  'tested-straight-away': testedStraightAway,
  'start-moisture-unknown': startMoistureUnknown,
  'two-changes': twoChanges,
  'survivors-only': survivorsOnly,
  'one-lot': oneLot,
  'batches-span-blocks': batchesSpanBlocks,
  'half-before-first-check': halfBeforeFirstCheck,
  'nothing-came-up': nothingCameUp,
  'no-half-life': noHalfLife,
};
