import type { Caveat, Result } from '../analysis/analysis.ts';
import type { LineComparison, SurvivalLine } from '../analysis/survival-line.ts';

/** What can be said of the survival lines of one lot against each other, without a word of any language. */
export interface StorageCase {
  /**
   * `one-jar`: a jar of a kind at a test; `no-line`: not every kind has one; `slopes`: they fall at different speed;
   * `apart`: one line does not do for all, that speeds differ was not shown; `not-shown`: neither was.
   */
  readonly case: 'one-jar' | 'no-line' | 'slopes' | 'apart' | 'not-shown';
  /** Of two kinds the one whose line falls more slowly; null of more kinds, or where slopes do not differ. */
  readonly slower: SurvivalLine | null;
  readonly faster: SurvivalLine | null;
  readonly ceiling: LineComparison['ceiling'];
  readonly ceilingFrom: LineComparison['ceilingFrom'];
  readonly lines: readonly SurvivalLine[];
}

/** The comparison of the lines of one lot; null where there is but one line. */
export function storageCase({ storage = [], lines = [] }: Result, lot: string): StorageCase | null {
  const own = storage.filter((line) => line.lot === lot);
  const [slope, line] = (['common-slope', 'common-line'] as const).map((test) =>
    lines.find((found) => found.lot === lot && found.test === test),
  );
  if (slope === undefined || line === undefined) return null;
  const { ceiling, ceilingFrom } = slope;
  const common = { ceiling, ceilingFrom, lines: own, slower: null, faster: null };
  if (slope.p === null || line.p === null) {
    return { ...common, case: own.some(({ ki }) => ki === null) ? 'no-line' : 'one-jar' };
  }
  const differs = (test: LineComparison) => (test.pAdjusted ?? 1) < 0.05;
  if (!differs(slope)) return { ...common, case: differs(line) ? 'apart' : 'not-shown' };
  const [slower = null, faster = null] = own.toSorted((a, b) => (b.slope ?? 0) - (a.slope ?? 0));
  return own.length === 2 ? { ...common, case: 'slopes', slower, faster } : { ...common, case: 'slopes' };
}

/** The caveats that set the ceiling of a lot's lines. */
export const storageCaveats = (caveats: readonly Caveat[], { ceilingFrom }: StorageCase, lot: string): Caveat[] =>
  ceilingFrom.flatMap((id) => caveats.find((caveat) => caveat.id === id && (caveat.lot === null || caveat.lot === lot)) ?? []); // prettier-ignore
