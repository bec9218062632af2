import type {
  Analysis,
  Caveat,
  CaveatId,
  Comparison,
  Group,
  IntervalMethod,
  LeftOutReason,
  Result,
  Test,
} from '../analysis/analysis.ts';
import type { Claim } from '../analysis/claims.ts';
import type { RetestPlan } from '../analysis/storage/retest-plan.ts';
import type { Measure, Trial } from '../trial/trial.ts';
import type { CreditRole } from './credit-role.ts';
import type { ui } from './en/ui.ts';
import type { TermForms } from './term-forms.ts';
import type { PooledWords } from './pooled-text.ts';

/**
 * Everything a reader can read, in one language. A second language is a second folder beside `en/`
 * that fulfils this interface; nothing outside src/wording holds a sentence.
 * Plain text throughout: whoever prints it escapes it.
 */
export interface Words {
  /** BCP 47, for the lang attribute. */
  readonly language: string;

  // — numbers, units, dates —
  /** 1234.5 -> "1,234.5"; digits after the point as given. Typographic minus. */
  number(value: number, digits?: number): string;
  /** Value of an outcome with its unit and fitting digits: "76 %", "5.4 days", "42 mm". Null -> "not known". */
  quantity(value: number | null, unit: string, seeds?: number | null): string;
  /** A unit of an outcome as the analysis names it ("days", "mm"), for the head of a column or an axis. */
  unitName(unit: string): string;
  /** "9 fewer to 17 more per 100", "just over 8 to 24", in the words of the outcome: its heading, what was to matter. */
  range(
    lower: number | null,
    upper: number | null,
    measure: Measure,
    unit: string,
    of?: Pick<Result, 'column' | 'matters'>,
  ): string;
  /** 2026-04-04 -> "4 April 2026". */
  date(iso: string): string;
  /** "a", "a and b", "a, b and c". */
  list(items: readonly string[]): string;
  /** "3 trials", "1 trial". */
  counted(count: number, thing: Thing): string;
  /** A difference with its direction: "12 more per 100", "1.2 days earlier", "3 mm shorter", "0 per 100". */
  difference(value: number | null, result: Result): string;
  /** The size of such a difference, without a direction: "10 per 100", "8 mm", "1 day". */
  size(value: number, result: Result): string;
  /** p for tables: "0.031", "below 0.001". */
  pValue(p: number): string;
  /** A time in storage, years, in the unit that fits the longest time tested: "3.2 years", "8.4 months". */
  duration(years: number, last: number): string;

  // — names —
  lotName(trial: Trial, lot: string): string;
  treatmentLabel(trial: Trial, treatment: string): string;
  /** "6 trays", "1 jar": the unit of a group in the trial's own word. */
  units(trial: Trial, group: Group): string;
  /** "tray", "jar", "row": what one sowing of this trial is, in one word. */
  unitWord(trial: Trial, plural?: boolean): string;
  /** "Came up by day 14", "Day by which half were up", "Height on day 21". */
  outcomeTitle(trial: Trial, result: Result): string;
  measureName(measure: Measure): string;
  /** "Sealed jar against Paper packet", with the lot where there are several. */
  comparisonName(trial: Trial, comparison: Comparison): string;
  crop(crop: string): string;
  /** Role of the CRediT taxonomy that a role in a grower's words falls under; null where none fits. */
  creditRole(role: string): CreditRole | null;

  // — findings —
  /** One sentence a comparison of the primary outcome, pooled comparison first. */
  inShort(trial: Trial, analysis: Analysis): readonly Finding[];
  /** Template of wording.md for this comparison: verdict, ceiling, measure and all exceptions. */
  comparisonSentence(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): string;
  /** The finding as the title of a chart or list entry: "Sealed jar: 12 more per 100 (3 to 21)". */
  headline(trial: Trial, analysis: Analysis, result: Result, comparison: Comparison): string;
  /** One group: "Sealed jar: 88 of 100 (264 of 300 seeds, 6 trays; the data fit with 80 to 93)". */
  groupSentence(trial: Trial, result: Result, group: Group): string;
  /** What was left out of this comparison, why, and the finding with it in; empty where nothing was. */
  leftOut(trial: Trial, result: Result, comparison: Comparison): readonly string[];
  /** "The plan said day 14; the count is of day 15.", a sentence each. */
  planChanges(analysis: Analysis): readonly string[];
  /** Two or three words and a shape, for tables and lists: never by colour. */
  verdict(result: Result, comparison: Comparison): VerdictMark;
  /** The reason clause ("… because {clause}") and the full sentence. */
  caveat(trial: Trial, analysis: Analysis, caveat: Caveat): { readonly reason: string; readonly sentence: string };
  caveatName(id: CaveatId): string;

  // — sections of the report —
  /** `repeatedBy`: titles of other trials of the same question, where the caller knows them. */
  trust(trial: Trial, analysis: Analysis, repeatedBy?: readonly string[]): readonly TrustAnswer[];
  /** What this trial cannot tell, a sentence each. */
  cannotTell(trial: Trial, analysis: Analysis): readonly string[];
  impression(
    trial: Trial,
    analysis: Analysis,
  ): readonly { readonly lot: string | null; readonly impression: string; readonly counts: string }[];
  /** Water lost and moisture, a paragraph a lot and treatment; empty where nothing was weighed. */
  moisture(trial: Trial, analysis: Analysis): readonly string[];
  /** A storage series test by test, and that no forecast is made; empty outside a series. */
  storageSeries(trial: Trial, analysis: Analysis): readonly string[];
  /** What several trials of one question say together. */
  readonly pooled: PooledWords;
  /** An outcome `storage`: its survival lines compared, then the half-life of each treatment or why there is none. */
  storageFindings(trial: Trial, analysis: Analysis, result: Result): readonly StorageFinding[];
  /** When stored seed is tested again, what is left for it, and how it stands to the group's level. */
  retest(trial: Trial, plan: RetestPlan, regenerateBelow: number | null): readonly string[];
  notices(trial: Trial, siteNotices: readonly string[]): readonly Notice[];
  /** Every notice, for the notices page. */
  allNotices(): readonly Notice[];
  /** What was actually applied to this trial. */
  methods(trial: Trial, analysis: Analysis): readonly MethodText[];
  /** Every method, for the methods page. */
  allMethods(): readonly MethodText[];
  glossary(): readonly Term[];
  /** How the terms of the glossary stand in running text. */
  readonly termForms: TermForms;
  intervalName(method: IntervalMethod): string;
  testName(method: Test['method']): string;
  leftOutReason(reason: LeftOutReason): string;
  /** Phrases that an author's text may not use unsupported (wording.md). */
  guarded(): readonly GuardedPhrase[];
  /** Words by which an author's claim takes a side or leaves it open. */
  claimWords(): ClaimWords;

  /** Labels of page furniture: navigation, headings, table heads, chart axes. */
  readonly ui: Readonly<Record<UiKey, string>>;
  /** A label with its braces filled: `say('list.shown', { shown: 3, all: 9 })`. RangeError where one is missing. */
  say(key: UiKey, values: Readonly<Record<string, string | number>>): string;
}

/** What `counted` can count. */
export type Thing =
  | 'trial'
  | 'lot'
  | 'crop'
  | 'grower'
  | 'question'
  | 'treatment'
  | 'seed'
  | 'sowing'
  | 'comparison'
  | 'caveat'
  | 'picture'
  | 'file'
  | 'day'
  | 'year'
  | 'problem'
  | 'warning'
  | 'notice';

export interface GuardedPhrase {
  readonly id: string;
  /** Source of a regular expression, flags `giu`; matches the phrase inside running text. */
  readonly pattern: string;
  /** Why it may not stand there. */
  readonly reason: string;
  /** What could stand there instead. */
  readonly offer: string;
}

/** Sources of regular expressions, flags `iu`, by the claim that such words make. */
export type ClaimWords = Readonly<Record<Claim, string>>;

export type VerdictShape = 'above' | 'below' | 'level' | 'open' | 'question';
export interface VerdictMark {
  readonly words: string;
  /** Drawn as an inline SVG by the site; says the same as the words. */
  readonly shape: VerdictShape;
}

export interface Finding {
  readonly result: Result;
  readonly comparison: Comparison;
  readonly sentence: string;
  readonly mark: VerdictMark;
}

/** What a storage series says of one treatment, or (treatment null) of its lines against each other. */
export interface StorageFinding {
  readonly lot: string;
  readonly treatment: string | null;
  readonly sentence: string;
  readonly mark: VerdictMark | null;
}

export interface TrustAnswer {
  readonly id: 'separate' | 'random' | 'blind' | 'alike' | 'fixed' | 'all-shown' | 'left-out' | 'repeated';
  readonly question: string;
  readonly answer: 'yes' | 'no' | 'partly' | 'not recorded';
  /** The answer in the page's language. */
  readonly answerWords: string;
  readonly detail: string;
}

export interface Source {
  /** "Newcombe 1998, Statistics in Medicine 17, 873–890, method 10". */
  readonly text: string;
  readonly url: string | null;
  /** False: shown as "from memory". Null source text on a notice means "common practice, no source". */
  readonly read: boolean;
}

export interface Notice {
  readonly id: string;
  readonly title: string;
  readonly sentences: readonly string[];
  readonly sources: readonly Source[];
}

export interface MethodText {
  readonly id: string;
  readonly title: string;
  /** Plain words; in `methods()` with this trial's numbers in it. */
  readonly plain: readonly string[];
  /** Formulas as MathML-free plain text, one a line. */
  readonly formula: readonly string[];
  readonly sources: readonly Source[];
  readonly checkedAgainst: string;
}

export interface Term {
  readonly id: string;
  readonly term: string;
  readonly meaning: string;
}

/** Keys of page furniture, from the English list; every language must have them all. */
export type UiKey = keyof typeof ui;
