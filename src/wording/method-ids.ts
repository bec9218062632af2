import type { Analysis, Comparison } from '../analysis/analysis.ts';

/** Every method, in the order in which it is told. */
export const METHOD_IDS = [
  'unit',
  'share',
  'dispersion',
  'difference',
  'score-test',
  'one-unit',
  'means',
  'times',
  'coarse',
  'blocks',
  'lots',
  'storage',
  'permutation',
  'effect-sizes',
  'many',
  'verdict',
  'detectable',
  'planning',
  'agreement',
  'caveats',
  'moisture',
  'pooled',
  'pooled-spread',
  'pooled-next',
  'software',
] as const;

export type MethodId = (typeof METHOD_IDS)[number];

const TIMES = ['t50', 'mgt', 'spread', 'maguire'];

/** The methods that were actually applied to a trial. */
export function methodIds({ results, moisture, caveats }: Analysis): readonly MethodId[] {
  const comparisons = results.flatMap((result) => result.comparisons);
  const germination = results.some(({ measure }) => measure === 'germination' || measure === 'storage');
  const any = (test: (comparison: Comparison) => boolean) => comparisons.some(test);
  const applied: Readonly<Record<MethodId, boolean>> = {
    unit: results.length > 0,
    share: germination,
    dispersion: any(({ dispersion }) => dispersion !== null),
    difference: any(({ interval }) => interval?.method.startsWith('newcombe') ?? false),
    'score-test': any(({ test }) => test?.method === 'score-f' || test?.method === 'score-f-blocks'),
    'one-unit': any(({ verdict }) => verdict === 'untestable'),
    means: results.some(({ measure }) => measure === 'trait' || TIMES.includes(measure)),
    times: results.some(({ measure }) => TIMES.includes(measure)),
    coarse: any(({ interval }) => interval?.method === 'welch-bracket'),
    blocks: any(({ units }) => units.kind === 'block'),
    lots: any(({ lot }) => lot === 'all'),
    storage: results.some(({ measure }) => measure === 'storage'),
    permutation: any(({ permutation }) => permutation !== null),
    'effect-sizes': comparisons.length > 0,
    many: any(({ test }) => test?.pAdjusted != null && test.pAdjusted !== test.p),
    verdict: comparisons.length > 0,
    detectable: any(({ detectable, wouldSettle }) => detectable !== null || wouldSettle !== null),
    planning: false, // before a trial
    agreement: caveats.some(({ id }) => id === 'more-varied-than-luck' || id === 'more-alike-than-luck'),
    caveats: results.length > 0,
    moisture: moisture.length > 0,
    // Of questions that several trials answer, not of one trial.
    pooled: false,
    'pooled-spread': false,
    'pooled-next': false,
    software: true,
  };
  return METHOD_IDS.filter((id) => applied[id]);
}
