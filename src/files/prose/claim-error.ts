import type { Analysis, Comparison, Result } from '../../analysis/analysis.ts';
import { appliesTo } from '../../analysis/caveats/applies-to.ts';
import { carriedClaim, CLAIMS, type CarriedClaim, type Claim } from '../../analysis/claims.ts';
import { lotsOf } from '../../analysis/lots-of.ts';
import type { Trial } from '../../trial/trial.ts';
import type { Words } from '../../wording/words.ts';
import { AttributeError } from './attribute-error.ts';
import { chosenResult, type Choice } from './chosen-result.ts';
import { claimText } from './claim-text.ts';
import { oneOf } from './one-of.ts';
import { storedText } from './stored-text.ts';

export interface ClaimChoice extends Choice {
  readonly is?: string | undefined;
  /** Which test of a storage series, in years of storage; each where it is not named. */
  readonly stored?: string | undefined;
}

/**
 * Why the data do not carry an author's claim, with the sentence that they would carry; null where they do. Where no
 * lot is named the claim is of all lots: of their pooled comparison, else of each. Where no treatment is named
 * it is of each.
 *
 * @param text what the author wrote inside the claim
 * @throws {AttributeError} for a choice that the trial does not have
 */
export function claimError(
  words: Words,
  trial: Trial,
  analysis: Analysis,
  choice: ClaimChoice,
  text: string,
): AttributeError | null {
  if (trial.status === 'growing' || trial.status === 'planned') {
    return new AttributeError(
      `<Claim>: the trial is ${trial.status === 'growing' ? 'still growing' : 'planned'}, so nothing can be claimed of it yet`,
      'Take the claim out until trial.yaml says "status: finished".',
    );
  }
  if (choice.is === undefined) {
    return new AttributeError(
      `<Claim is>: found nothing; allowed: ${CLAIMS.join(', ')}`,
      'Say what is claimed, as in is="unclear".',
    );
  }
  const claim = oneOf('<Claim is>', choice.is, CLAIMS);
  if (text.trim() === '') {
    return new AttributeError(
      '<Claim>: found no words inside it',
      'Write the claim, as in <Claim …>Soaked seed came up more.</Claim>.',
    );
  }
  const claimed = comparisonsOf(analysis, choice);
  if (claimed.comparisons.length === 0) {
    return new AttributeError('<Claim>: this trial compares nothing there', 'Take the claim out.');
  }
  for (const comparison of claimed.comparisons) {
    const carried = carriedClaim(claimed.result, comparison);
    const because = reasonsOf(words, trial, analysis, claimed.result, comparison);
    const reason = whyNot(words, claim, carried, claimed.result, comparison, because, text);
    if (reason === null) continue;
    const named = claimed.comparisons.length > 1 ? `${words.comparisonName(trial, comparison)}: ` : '';
    return new AttributeError(
      `<Claim is="${claim}">: ${named}${reason}`,
      `The data carry: ${claimText(words, trial, analysis, claimed.result, comparison, carried)}`,
    );
  }
  return null;
}

function comparisonsOf(
  analysis: Analysis,
  choice: ClaimChoice,
): { result: Result; comparisons: readonly Comparison[] } {
  const { result, comparisons } = chosenResult('Claim', analysis, choice);
  const lots = lotsOf(result);
  const isOne = choice.lot !== undefined || lots[0] === 'all';
  const every = isOne
    ? comparisons
    : lots.flatMap((lot) => chosenResult('Claim', analysis, { ...choice, lot }).comparisons);
  if (choice.stored === undefined) return { result, comparisons: every };
  const tests = [...new Set(every.flatMap(({ stored }) => (stored === null ? [] : [storedText(stored)])))];
  const stored = oneOf('<Claim stored>', choice.stored, tests);
  return { result, comparisons: every.filter((one) => one.stored !== null && storedText(one.stored) === stored) };
}

const OF_DAYS: readonly Claim[] = ['earlier', 'later'];
const OF_AMOUNTS: readonly Claim[] = ['higher', 'lower'];

/** Why it is not carried, as a clause; null where it is. */
function whyNot(
  words: Words,
  claim: Claim,
  carried: CarriedClaim,
  { measure }: Result,
  { ceiling, verdict }: Comparison,
  because: string,
  text: string,
): string | null {
  const isOfDays = measure === 't50' || measure === 'mgt';
  if (isOfDays && OF_AMOUNTS.includes(claim)) return 'this outcome is a number of days; say earlier or later';
  if (!isOfDays && OF_DAYS.includes(claim)) return 'this outcome is not how soon seed came up; say higher or lower';
  if (claim === carried.is) {
    const word = words.ui['claim.probably'];
    if (carried.probably && !new RegExp(word, 'iu').test(text)) {
      return `the words inside must say "${word}", because ${because}`;
    }
    return contradiction(words, claim, text);
  }
  if (verdict === 'untestable') return 'too few were treated separately to tell a difference from ordinary luck';
  if (ceiling === 'cause-unclear') return `what made or hid a difference cannot be told, because ${because}`;
  if (carried.is === 'unclear') return 'a difference could not be shown, which is not proof of sameness';
  if (carried.is === 'same') return 'any difference is smaller than what was to matter';
  return `a difference was shown, and it is "${carried.is}"`;
}

/** How the words inside say something else than `is`, as a clause; null where they do not. */
function contradiction(words: Words, claim: Claim, text: string): string | null {
  const patterns = words.claimWords();
  const said = (one: Claim) => new RegExp(patterns[one], 'iu').exec(text)?.[0];
  if (said(claim) !== undefined) return null;
  const against = AGAINST[claim].map(said).find((word) => word !== undefined);
  if (against === undefined) return null;
  return claim === 'unclear'
    ? `the words inside say "${against}" and do not say that this is open`
    : `the words inside say "${against}", which is not "${claim}"`;
}

/** What the words of a claim may not say alone. */
const AGAINST: Readonly<Record<Claim, readonly Claim[]>> = {
  higher: ['lower', 'same'],
  lower: ['higher', 'same'],
  earlier: ['later', 'same'],
  later: ['earlier', 'same'],
  same: ['higher', 'lower', 'earlier', 'later'],
  unclear: ['higher', 'lower', 'earlier', 'later', 'same'],
};

function reasonsOf(words: Words, trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): string {
  const caveats = comparison.ceilingFrom.flatMap(
    (id) => analysis.caveats.find((caveat) => caveat.id === id && appliesTo(caveat, result, comparison)) ?? [],
  );
  return words.list(caveats.map((caveat) => words.caveat(trial, analysis, caveat).reason));
}
