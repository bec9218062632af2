import type { Analysis, Caveat, CaveatId, Comparison, Result } from '../analysis/analysis.ts';
import { findingCase } from './finding-case.ts';
import type { Trial } from '../trial/trial.ts';

/** Something that a trial cannot tell, without a word of any language. */
export type Limit =
  | { readonly id: 'not-yet' }
  | { readonly id: 'any-difference'; readonly comparisons: readonly Comparison[] }
  | { readonly id: 'cause'; readonly caveats: readonly Caveat[] }
  | { readonly id: 'small-differences'; readonly result: Result; readonly detectable: number }
  | { readonly id: 'alike'; readonly result: Result }
  | { readonly id: 'of-caveat'; readonly caveat: Caveat }
  | { readonly id: 'forecast'; readonly last: number }
  | { readonly id: 'why' }
  | { readonly id: 'later'; readonly day: number }
  | { readonly id: 'open-ground' }
  | { readonly id: 'other-seed'; readonly lots: number };

/** Caveats that are limits in themselves, in the order in which they are told. */
const OWN: readonly CaveatId[] = [
  'two-changes',
  'tested-straight-away',
  'start-moisture-unknown',
  'ungerminated-not-sorted',
  'survivors-only',
  'no-room',
];

/** What this trial cannot tell, most important first; each only where it is true of this trial. */
export function limitsOf(trial: Trial, analysis: Analysis): readonly Limit[] {
  const { results, caveats } = analysis;
  const primary = results.find((result) => result.primary) ?? results[0];
  if (primary === undefined) return [{ id: 'not-yet' }];
  const all = results.flatMap(({ comparisons }) => comparisons);
  // A storage series compares lines; its tests are compared by an outcome of germination.
  const compared = primary.measure === 'storage' ? (results.find(({ measure }) => measure === 'germination') ?? primary) : primary; // prettier-ignore
  const untestable = compared.comparisons.filter(({ verdict }) => verdict === 'untestable');
  const serious = caveats.filter(({ weight, id }) => weight === 'serious' && id !== 'one-sowing');
  const seen = new Set<CaveatId>();
  const once = ({ id }: Caveat) => OWN.includes(id) && !seen.has(id) && seen.add(id) !== undefined;
  const detectable = largest(
    compared.comparisons.filter((comparison) => findingCase(compared, comparison) === 'unclear'),
  );
  const day = lastDay(trial);
  const last = lastTest(results);
  return [
    ...(untestable.length > 0 ? [{ id: 'any-difference', comparisons: untestable } as const] : []),
    ...(serious.length > 0 ? [{ id: 'cause', caveats: serious } as const] : []),
    ...(detectable === null ? [] : [{ id: 'small-differences', result: compared, detectable } as const]),
    ...(compared.matters === null && all.some(({ verdict }) => verdict === 'unclear')
      ? [{ id: 'alike', result: compared } as const]
      : []),
    ...caveats.filter(once).map((caveat) => ({ id: 'of-caveat', caveat }) as const),
    ...(last === null ? [] : [{ id: 'forecast', last } as const]),
    ...(all.some(claims) ? [{ id: 'why' } as const] : []),
    ...(day === null ? [] : [{ id: 'later', day } as const]),
    { id: 'open-ground' },
    { id: 'other-seed', lots: trial.lots.length },
  ];
}

const claims = ({ verdict, ceiling }: Comparison) =>
  (verdict === 'matters' || verdict === 'different') && ceiling !== 'cause-unclear';

function largest(comparisons: readonly Comparison[]): number | null {
  const sizes = comparisons.map(({ detectable }) => detectable).filter((size) => size !== null);
  return sizes.length === 0 ? null : Math.max(...sizes);
}

/** The longest time in storage that a storage series has tested, years. */
function lastTest(results: readonly Result[]): number | null {
  const times = results.flatMap(({ storage = [] }) =>
    storage.flatMap(({ tests }) => tests.map(({ stored }) => stored)),
  );
  return times.length === 0 ? null : Math.max(...times);
}

function lastDay(trial: Trial): number | null {
  const days = [...trial.counts, ...trial.measurements].map(({ day }) => day);
  return days.length === 0 ? null : Math.max(...days);
}
