import type { MethodId } from './method-ids.ts';
import { SOURCES } from './sources.ts';
import type { Source } from './words.ts';

const S = SOURCES;

/** What each method rests on, the same in every language. */
export const METHOD_SOURCES: Readonly<Record<MethodId, readonly Source[]>> = {
  unit: [S.hurlbert],
  share: [S.wilson, S.newcombeA, S.rao],
  dispersion: [S.rao, S.smyth],
  difference: [S.newcombeB, S.rao],
  'score-test': [S.rao],
  'one-unit': [S.hurlbert, S.kish],
  means: [S.welch],
  times: [S.farooq, S.coolbear, S.kotowski, S.maguire, S.ranal],
  coarse: [],
  blocks: [S.newcombeB, S.smyth],
  lots: [S.rao],
  storage: [S.finney, S.ellisRoberts, S.fieller],
  permutation: [S.phipson],
  'effect-sizes': [S.hedges, S.hodges],
  many: [S.holm],
  verdict: [S.schuirmann],
  detectable: [],
  planning: [S.williams, S.skellam, S.kish],
  agreement: [S.cfr201Tolerance, S.miles],
  caveats: [],
  moisture: [S.ista, S.hart],
  pooled: [S.knapp, S.viechtbauer],
  'pooled-spread': [S.higgins],
  'pooled-next': [S.spiegelhalter],
  software: [],
};
