import type { FileProblems, Place } from '../file-problems.ts';
import type { Refusal } from '../refusal.ts';
import type { PlanRequest } from '../schema/plan-request.ts';
import { shown } from '../text/shown.ts';

/** More containers than a person can keep apart by two letters and a digit, or would count. */
const MOST_SOWINGS = 500;

type Say = (path: readonly PropertyKey[], refusal: Refusal) => void;

/** Refuses what no plan can mean, beyond what trial.yaml itself must be. */
export function checkPlanRequest(
  request: PlanRequest,
  place: (path: readonly PropertyKey[]) => Place,
  report: FileProblems,
): void {
  const say: Say = (path, refusal) => report.error(place(path), refusal);
  checkTreatments(request, say);
  checkDays(request, say);
  request.outcomes?.forEach((_, index) => checkOutcome(request, index, say));
  const sowings = (request.each ?? 1) * request.lots.length * request.treatments.length;
  if (sowings > MOST_SOWINGS) {
    say(['each'], {
      rule: 'too-many-sowings',
      message: `${request.each ?? 1} of each make ${sowings} sowings, more than the ${MOST_SOWINGS} that are laid out here`,
      remedy: 'Sow fewer of each, or ask with fewer treatments or lots at a time.',
    });
  }
}

function checkTreatments({ treatments, sowing, seed }: PlanRequest, say: Say): void {
  if (treatments.length < 2) {
    say(['treatments'], {
      rule: 'one-treatment',
      message: 'there is one treatment only, so there is nothing to compare',
      remedy: 'Name the control as well: what is done to the seed that is not treated.',
    });
  }
  const labels = treatments.map(({ id, label }) => (label ?? id).toLowerCase());
  labels.forEach((label, index) => {
    if (labels.indexOf(label) === index) return;
    say(['treatments', index, 'label'], {
      rule: 'given-twice',
      message: `two treatments are called ${shown(label)}`,
      remedy: 'Give each a name of its own, by what differs.',
    });
  });
  const assignment = sowing?.assignment ?? 'random';
  if (assignment !== 'random' && assignment !== 'random-in-blocks') {
    say(['sowing', 'assignment'], {
      rule: 'not-drawn',
      message: `found ${shown(assignment)}, but places are drawn by lot here`,
      remedy: 'Write "random" or "random-in-blocks", or leave it out.',
    });
  }
  if (assignment === 'random-in-blocks' && sowing?.block === undefined) {
    say(['sowing', 'block'], {
      rule: 'missing',
      message: 'is missing; the layout is to be drawn in blocks',
      remedy: 'Say what a block is: shelf, bench end, day.',
    });
  }
  if (seed !== undefined && seed.length < 4) {
    say(['seed'], {
      rule: 'short-seed',
      message: `found ${shown(seed)}, which could be guessed`,
      remedy: 'Leave it out to have one drawn, or write a longer one.',
    });
  }
}

function checkDays({ scoring, outcomes }: PlanRequest, say: Say): void {
  const days = scoring?.days ?? [];
  const isCounted = outcomes === undefined || outcomes.some(({ measure }) => measure !== 'trait' && measure !== 'moisture'); // prettier-ignore
  if (isCounted && days.length === 0) {
    say(['scoring', 'days'], {
      rule: 'missing',
      message: 'is missing; the tables to fill in need the days of counting',
      remedy: 'Give the days after sowing on which you will count, such as [5, 8, 11, 14].',
    });
  }
  days.forEach((day, index) => {
    const before = days[index - 1] ?? 0;
    if (day > before) return;
    say(['scoring', 'days', index], {
      rule: 'days-not-rising',
      message:
        index === 0 ? 'day 0 is the day of sowing, when nothing can be up' : `day ${day} comes after day ${before}`,
      remedy: 'Give each day once, in order, counted from sowing.',
    });
  });
}

function checkOutcome({ outcomes = [], scoring, seeds, plants }: PlanRequest, index: number, say: Say): void {
  const outcome = outcomes[index];
  if (outcome === undefined) return;
  const { measure, day, matters } = outcome;
  const at = (key: string) => ['outcomes', index, key] as const;
  const days = scoring?.days ?? [];
  const wanted = day === undefined ? [] : typeof day === 'object' ? Object.values(day) : [day];
  const missing = wanted.filter((each) => !days.includes(each));
  if (measure === 'germination' && days.length > 0 && missing.length > 0) {
    say(at('day'), {
      rule: 'day-not-counted',
      message: `day ${missing.join(', ')} is none of the days of counting (${days.join(', ')})`,
      remedy: 'Add it to the days of counting, or compare on one of those.',
    });
  }
  if (measure === 'trait' && wanted.length === 0) {
    say(at('day'), {
      rule: 'missing',
      message: 'is missing; the table to fill in needs the day of measuring',
      remedy: 'Give the days after sowing, such as 21.',
    });
  }
  if (matters === 0 || (measure === 'germination' && (matters ?? 0) >= 100)) {
    say(at('matters'), {
      rule: 'no-difference',
      message:
        matters === 0 ? 'a difference of 0 matters to nobody' : `${matters} of 100 seeds more or fewer cannot be`,
      remedy: 'Ask yourself from which difference on you would do it another way, and give that.',
    });
  }
  if (measure === 'trait' && plants !== undefined && seeds !== undefined && plants > seeds) {
    say(['plants'], {
      rule: 'more-plants-than-seeds',
      message: `${plants} plants are to be measured where ${seeds} seeds are sown`,
      remedy: 'Measure fewer plants, or sow more seeds.',
    });
  }
}
