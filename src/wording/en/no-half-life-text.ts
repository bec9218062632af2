import type { SurvivalLine } from '../../analysis/survival-line.ts';
import { counted } from './counted.ts';
import { shareText } from './findings/share-text.ts';
import { storedText } from './stored-text.ts';

/** Why a storage series gives no half-life of one treatment, with what came up at its first and last test; begins small. */
export function noHalfLifeText(seed: string, { reason, tests }: Pick<SurvivalLine, 'reason' | 'tests'>): string {
  const known = tests.flatMap(({ stored, estimate }) => (estimate === null ? [] : [{ stored, estimate }]));
  const [first, last] = [known[0], known.at(-1)];
  if (first === undefined || last === undefined) return `no test of ${seed} gives a share that came up.`;
  const at = ({ stored, estimate }: typeof first) =>
    `${shareText({ estimate })} ${stored === 0 ? 'at the start' : `after ${storedText(stored)}`}`;
  const ends = known.length === 1 ? at(first) : `${at(first)}, ${at(last)}`;
  switch (reason) {
    case 'too-few-tests':
      return `${seed}: ${ends}. Too few test dates for a line (${counted(known.length, 'test date')}; it needs three).`;
    case 'nothing-came-up':
      return `no ${seed} came up at any test, so how long it keeps cannot be told.`;
    case 'no-fall':
      return `${seed} shows no fall (${ends}). That is no proof that it keeps.`;
    case 'hardly-a-fall':
      return `${seed} has hardly fallen (${ends}): at all tests but one, all of it came up, which is too little to place a line.`;
    case 'too-steep':
      return `${seed} fell too steeply to place (${ends}): at all tests but one, all of it or none of it came up, so when it was at half is not known.`;
    case 'not-yet':
      return `by the line through the tests, ${seed} has not yet fallen to half (${ends}). No half-life is given, for no forecast is made.`;
    case 'before-first':
      return `by the line through the tests, ${seed} was below half at the first test already (${ends}), so when it was at half is not known.`;
    case 'unbounded':
      return `${seed} came down to about half (${ends}), but the tests scatter so much that the fall is not told from none. No half-life is given.`;
    default:
      return `no line could be put through the tests of ${seed} (${ends}).`;
  }
}
