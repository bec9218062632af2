import type { Analysis, Caveat, CaveatId, PlanChange } from '../analysis/analysis.ts';
import { firstCountDate } from '../analysis/first-count-date.ts';
import { fixedOn, type Fixing } from '../analysis/fixed-on.ts';
import type { Trial } from '../trial/trial.ts';
import type { TrustAnswer } from './words.ts';

type Answer = TrustAnswer['answer'];

/** What the questions of "How far to trust it" are answered from, without a word of any language. */
export interface TrustFacts {
  readonly separate: {
    readonly answer: Answer;
    readonly counts: readonly PairCount[];
    /** So many of every treatment of every lot, where that says as much as a long list. */
    readonly each: number | null;
    readonly oneBatch: boolean;
  };
  readonly random: { readonly answer: Answer; readonly uneven: boolean };
  readonly blind: { readonly answer: Answer };
  /** Caveats that say what was not alike; distinct sowing dates. */
  readonly alike: { readonly answer: Answer; readonly unlike: readonly Caveat[]; readonly dates: readonly string[] };
  readonly fixed: {
    readonly answer: Answer;
    readonly fixing: Fixing | null;
    readonly firstCount: string | null;
    readonly changes: readonly PlanChange[];
  };
  readonly allShown: {
    readonly answer: Answer;
    readonly dropped: readonly string[];
    readonly unlisted: readonly string[];
  };
  readonly leftOut: { readonly answer: Answer; readonly sowings: readonly string[] };
}

/** Separate sowings (or trays, where sowings share one) of each treatment of one lot, in the trial's order. */
export interface PairCount {
  readonly lot: string;
  readonly sowings: readonly { readonly treatment: string; readonly count: number }[];
}

/** So many treatments, counted in each lot, are listed by name, each with its number. */
const LISTED = 6;

const UNLIKE: readonly CaveatId[] = [
  'unequal-soak',
  'unequal-handling',
  'confounded-sowing-day',
  'confounded-count-day',
  'confounded-place',
  'confounded-block',
  'confounded-position',
  'confounded-scorer',
  'checked-on-different-days',
  'two-changes',
];

/** Answers from the trial's own facts; what is not recorded is never taken for a yes. */
export function trustFacts(trial: Trial, analysis: Analysis): TrustFacts {
  const has = (id: CaveatId) => analysis.caveats.some((caveat) => caveat.id === id);
  return {
    separate: separate(trial, has),
    random: {
      answer: { random: 'yes', 'random-in-blocks': 'yes', alternating: 'no', 'by-hand': 'no', unknown: 'not recorded' }[
        trial.sowing.assignment
      ] as Answer,
      uneven: has('positions-unbalanced'),
    },
    blind: { answer: trial.scoring.blind === 'unknown' ? 'not recorded' : trial.scoring.blind },
    alike: alike(trial, analysis),
    fixed: fixed(trial, analysis),
    allShown: allShown(trial, analysis),
    leftOut: leftOut(trial, analysis),
  };
}

function separate(trial: Trial, has: (id: CaveatId) => boolean): TrustFacts['separate'] {
  const counts = trial.lots.map(({ id: lot }) => ({
    lot,
    sowings: trial.treatments.map(({ id: treatment }) => ({
      treatment,
      count: new Set(
        trial.sowings
          .filter((sowing) => sowing.lot === lot && sowing.treatment === treatment)
          .map(({ id, tray }) => (tray === null ? `sowing ${id}` : `tray ${tray}`)),
      ).size,
    })),
  }));
  const few = counts.flatMap(({ sowings }) => sowings).filter(({ count }) => count === 1).length;
  const all = counts.flatMap(({ sowings }) => sowings).filter(({ count }) => count > 0).length;
  const oneBatch = has('one-batch');
  const unsure = oneBatch || has('batch-unknown') || has('one-sowing');
  const answer = all === 0 ? 'not recorded' : few === all ? 'no' : few > 0 || unsure ? 'partly' : 'yes';
  const numbers = new Set(counts.flatMap(({ sowings }) => sowings.map(({ count }) => count)));
  const each =
    trial.treatments.length * trial.lots.length > LISTED && numbers.size === 1 ? ([...numbers][0] ?? null) : null;
  return { answer, counts, each, oneBatch };
}

function alike(trial: Trial, { caveats }: Analysis): TrustFacts['alike'] {
  const unlike = caveats.filter(({ id }) => UNLIKE.includes(id));
  const sown = trial.sowings.map((sowing) => sowing.sown).filter((date) => date !== null);
  // In a storage series each test has its own day; within one test they are compared by the caveats.
  const series = trial.sowings.some(({ stored }) => stored !== null);
  const dates = [...new Set(sown)].sort();
  if (unlike.length > 0)
    return { answer: unlike.every(({ id }) => id === 'two-changes') ? 'partly' : 'no', unlike, dates };
  if (trial.sowings.length === 0 || sown.length < trial.sowings.length)
    return { answer: 'not recorded', unlike, dates };
  return { answer: dates.length > 1 && !series ? 'partly' : 'yes', unlike, dates };
}

function fixed(trial: Trial, { plan }: Analysis): TrustFacts['fixed'] {
  const fixing = fixedOn(trial);
  const changes = plan.changes.filter(({ what }) => /^(outcomes\.|question|digest)/.test(what));
  const firstCount = firstCountDate(trial);
  const recorded = trial.plan !== null || trial.fixedBeforehand !== null;
  const answer =
    fixing === null
      ? recorded
        ? 'no'
        : 'not recorded'
      : fixing.how === 'stated' || changes.length > 0
        ? 'partly'
        : 'yes';
  return { answer, fixing, firstCount, changes };
}

function allShown(trial: Trial, { plan, results }: Analysis): TrustFacts['allShown'] {
  const dropped = plan.changes
    .filter(({ what, done }) => /^outcomes\.[^.]+$/.test(what) && done === null)
    .map(({ what, planned }) => planned ?? what);
  const shown = new Set(results.map(({ column }) => column));
  const unlisted = trial.traits.map(({ column }) => column).filter((column) => !shown.has(column));
  if (results.length === 0) return { answer: 'no', dropped, unlisted: [] };
  return { answer: dropped.length > 0 ? 'no' : unlisted.length > 0 ? 'partly' : 'yes', dropped, unlisted };
}

function leftOut(trial: Trial, { results }: Analysis): TrustFacts['leftOut'] {
  const inEvents = trial.events.filter(({ action }) => action === 'left-out').flatMap((event) => event.sowings);
  const inResults = results.flatMap((result) => result.leftOut.map(({ sowing }) => sowing));
  const sowings = [...new Set([...inEvents, ...inResults])].sort();
  return { answer: sowings.length > 0 ? 'yes' : 'no', sowings };
}
