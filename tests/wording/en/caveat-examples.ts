import type { CaveatId } from '../../../src/analysis/analysis.ts';
import type { Evidence } from '../../../src/analysis/caveats/evidence.ts';

const sides = { treatment: 'jar', control: 'packet' };
const apart = <T>(treatment: readonly T[], control: readonly T[]) => ({ ...sides, values: { treatment, control } });

/** Evidence of every caveat, one example for each thing it can say. */
export const EXAMPLES: { readonly [Id in CaveatId]: readonly Evidence[Id][] } = {
  'one-sowing': [
    { ...sides, unit: 'sowing', units: { treatment: 1, control: 1 }, sown: { treatment: 1, control: 1 } },
    { ...sides, unit: 'sowing', units: { treatment: 1, control: 4 }, sown: { treatment: 2, control: 4 } },
    { ...sides, unit: 'sowing', units: { treatment: 4, control: 0 }, sown: { treatment: 4, control: 1 } },
  ],
  'one-batch': [
    { treatment: 'jar', because: 'one-batch-named', batch: 'j1', sowings: 4, stored: null },
    { treatment: 'jar', because: 'treated-at-once', batch: null, sowings: 4, stored: null },
    { treatment: 'jar', because: 'one-batch-named', batch: null, sowings: 1, stored: 2 },
  ],
  'confounded-place': [apart(['lower shelf'], ['upper shelf', 'window'])],
  'confounded-block': [apart(['A'], ['B'])],
  'confounded-position': [{ ...apart(['1', '2'], ['3']), by: 'row' }],
  'confounded-scorer': [apart(['mara'], ['jon'])],
  'confounded-sowing-day': [apart(['2026-04-04'], ['2026-04-05'])],
  'confounded-count-day': [apart([14], [15])],
  'unequal-soak': [
    { ...sides, hours: { treatment: { shortest: 5, longest: 6 }, control: null } },
    { ...sides, hours: { treatment: { shortest: 6, longest: 6 }, control: { shortest: 1, longest: 1 } } },
  ],
  'unequal-handling': [
    {
      ...sides,
      what: 'watered twice',
      day: 3,
      date: null,
      touched: { treatment: 3, control: 0 },
      of: { treatment: 6, control: 6 },
    },
  ],
  'checked-on-different-days': [
    {
      ...sides,
      days: { treatment: [3, 5], control: [3, 4, 5] },
      missed: [{ sowing: 's1', treatment: 'jar', days: [4] }],
    },
  ],
  'not-randomised': [{ assignment: 'by-hand' }, { assignment: 'alternating' }, { assignment: 'unknown' }],
  'positions-unbalanced': [
    {
      ...sides,
      by: 'place',
      places: [
        { place: 'left', treatment: 5, control: 1 },
        { place: 'right', treatment: 1, control: 5 },
      ],
      chance: 0.08,
    },
    { ...sides, by: 'row', places: [{ place: '1', treatment: 4, control: 0 }], chance: null },
  ],
  'batch-unknown': [
    { treated: 'in-batches', treatments: ['jar'] },
    { treated: 'unknown', treatments: ['jar'] },
  ],
  'outcomes-not-fixed': [
    { reason: 'none-listed', fixed: null, firstCount: null },
    { reason: 'nothing-fixed', fixed: null, firstCount: null },
    { reason: 'fixed-too-late', fixed: '2026-04-10', firstCount: '2026-04-09' },
    { reason: 'plan-edited', fixed: '2026-04-01', firstCount: null },
    { reason: 'not-in-plan', fixed: '2026-04-01', firstCount: null },
  ],
  'plan-changed': [
    {
      changes: [
        { what: 'outcomes.germination.day', planned: '14', done: '15' },
        { what: 'sowings.t7.left-out', planned: null, done: 'knocked over' },
        { what: 'scoring.blind', planned: 'yes', done: 'no' },
        { what: 'outcomes.height', planned: null, done: 'height' },
      ],
    },
  ],
  'still-germinating': [{ added: 6, seeds: 100, percent: 6, from: 12, to: 14 }],
  'sowings-left-out': [
    {
      sowings: [{ sowing: 'T7', reason: 'deviation', what: 'knocked over on day 5' }],
      verdicts: [{ treatment: 'jar', verdict: 'different', withThem: 'different' }],
    },
    {
      sowings: [
        { sowing: 'T7', reason: 'not-checked', what: null },
        { sowing: 'T8', reason: 'not-measured', what: null },
      ],
      verdicts: [
        { treatment: 'jar', verdict: 'different', withThem: 'unclear' },
        { treatment: 'packet', verdict: 'same', withThem: null },
      ],
    },
  ],
  'many-comparisons': [{ comparisons: 8, p: 0.02, pAdjusted: 0.16 }],
  'unequal-spread': [{ wider: 'jar', narrower: 'packet', phi: { wider: 9, narrower: 1 }, ratio: 9, limit: 7.1 }],
  'unequal-trays': [{ ...sides, largest: 100, smallest: 20, unit: 'sowing' }],
  'incomplete-blocks': [
    { ...sides, reason: 'two-blocks', blocks: ['A', 'B'], incomplete: [], without: [] },
    { ...sides, reason: 'incomplete', blocks: ['A', 'B', 'C'], incomplete: ['C'], without: [] },
    { ...sides, reason: 'some-without-block', blocks: ['A', 'B', 'C'], incomplete: [], without: ['s1', 's2'] },
  ],
  'seeds-by-mass': [{ sowings: ['s1', 's2'], seedsPerGram: 350 }],
  'no-seed-number': [{ sowings: ['s1', 's2'] }],
  'few-units': [
    { ...sides, unit: 'sowing', units: { treatment: 3, control: 3 } },
    { ...sides, unit: 'batch', units: { treatment: 2, control: 3 } },
  ],
  'few-seeds': [{ seeds: 30 }],
  'not-blind': [{ blind: 'no' }, { blind: 'unknown' }],
  'no-margin': [{ unit: 'percentage points' }],
  'more-varied-than-luck': [
    { phi: 4.2, df: 6, p: 0.001, ranges: [] },
    {
      phi: null,
      df: null,
      p: null,
      ranges: [{ treatment: 'jar', stored: null, lowest: 60, highest: 92, range: 32, limit: 22.4, rule: 'formula' }],
    },
  ],
  'more-alike-than-luck': [{ phi: 0.08, df: 6, p: 0.002 }],
  'near-limit': [
    { stored: null, estimate: 98.5, limit: 100, germinated: 197, seeds: 200 },
    { stored: 0, estimate: 1.2, limit: 0, germinated: 3, seeds: 250 },
  ],
  'hardly-any': [{ ...sides, germinated: { treatment: 1, control: 2 }, seeds: { treatment: 150, control: 150 } }],
  'no-room': [
    { ...sides, lowest: 96.4, estimates: { treatment: 98, control: 97 } },
    { ...sides, lowest: 100, estimates: { treatment: 100, control: 100 } },
  ],
  'coarse-checks': [{ from: 3, to: 8, percent: 81.2 }],
  'coarse-readings': [{ ...sides, values: { treatment: 5, control: 5 }, difference: null, unit: 'days' }],
  'lots-differ': [
    {
      p: 0.01,
      estimates: [
        { lot: 'leek', estimate: 12.4 },
        { lot: 'cress', estimate: -0.6 },
      ],
      unit: 'percentage points',
    },
  ],
  'ungerminated-not-sorted': [{ ungerminated: 36, seeds: 300 }],
  'tested-straight-away': [{ because: 'varies' }],
  'start-moisture-unknown': [{ treatments: ['jar'] }],
  'two-changes': [
    {
      ...sides,
      changes: [
        { what: 'soak', treatment: 6, control: 0 },
        { what: 'varies', treatment: null, control: null },
      ],
    },
  ],
  'survivors-only': [
    {
      groups: [
        { treatment: 'jar', plants: 131, seeds: 150 },
        { treatment: 'packet', plants: 128, seeds: 150 },
      ],
    },
  ],
  'one-lot': [{ lot: 'leek', crop: 'leek' }],
  'batches-span-blocks': [{ batches: [{ treatment: 'jar', batch: 'j1' }] }],
  'half-before-first-check': [
    { day: 5, portion: 0.5, units: ['s1', 's2'] },
    { day: 5, portion: 0.25, units: ['s1'] },
  ],
  'nothing-came-up': [
    { seeds: 150, sowings: 3 },
    { seeds: null, sowings: 1 },
  ],

  'no-half-life': [
    {
      reason: 'too-few-tests',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    {
      reason: 'too-steep',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    {
      reason: 'no-fall',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    {
      reason: 'hardly-a-fall',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    {
      reason: 'nothing-came-up',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    {
      reason: 'not-settled',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    {
      reason: 'not-yet',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    {
      reason: 'before-first',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    {
      reason: 'unbounded',
      tests: [
        { stored: 0, estimate: 95 },
        { stored: 2, estimate: 60 },
      ],
    },
    { reason: 'too-few-tests', tests: [] },
  ],
};
