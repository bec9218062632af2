import type { Analysis, Caveat, Group, Result } from '../../src/analysis/analysis.ts';

export const makeGroup = (treatment: string, parts: Partial<Group> = {}): Group => ({
  lot: 'leek',
  treatment,
  stored: null,
  unit: 'sowing',
  units: 4,
  sowings: 4,
  seeds: 200,
  count: 151,
  estimate: 75.5,
  sd: null,
  interval: { level: 0.95, lower: 65.1, upper: 83.6, method: 'wilson-effective' },
  bracket: null,
  plants: null,
  icc: null,
  plantSd: null,
  ...parts,
});

/** Germination of packet and jar in one lot, with no comparison. */
export const makeResult = (parts: Partial<Result> = {}): Result => ({
  outcome: 'germination',
  measure: 'germination',
  primary: true,
  day: 14,
  unit: '%',
  groups: [makeGroup('packet'), makeGroup('jar')],
  comparisons: [],
  days: { leek: 14 },
  column: null,
  matters: null,
  values: [],
  leftOut: [],
  overall: [],
  ...parts,
});

export const makeCaveat = (id: Caveat['id'], parts: Partial<Caveat> = {}): Caveat => ({
  id,
  weight: 'caution',
  text: `About ${id}.`,
  outcome: null,
  lot: null,
  treatment: null,
  evidence: {},
  ...parts,
});

export const makeAnalysis = (parts: Partial<Analysis> = {}): Analysis => ({
  format: 'fairsown-analysis/1',
  trial: 'test',
  inputs: [],
  results: [makeResult()],
  moisture: [],
  caveats: [],
  plan: { fixed: null, changes: [] },
  software: { name: 'fairsown', version: '0.1.0' },
  ...parts,
});
