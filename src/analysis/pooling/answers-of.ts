import type { Question } from '../../trial/trial.ts';
import { unitOfDifference } from '../measures/unit-of-difference.ts';
import type { LeftOutTrial, Pooled, PooledTrial, PoolReason } from '../pooled.ts';
import { toldOf, type Answer, type Entry } from './answer.ts';
import { candidatesOf, type Candidate } from './candidates-of.ts';
import { doubtsOf } from './doubts-of.ts';
import { matched, mostCommon } from './matched.ts';
import { studyOf } from './study-of.ts';

type Answers = Pick<Pooled, 'leftOut' | 'unreported' | 'unit' | 'valueUnit' | 'column'> & {
  readonly trials: readonly (PooledTrial & { readonly weight: null })[];
};

interface Asked {
  readonly entry: Entry;
  readonly answer: Answer | null;
}

/** Every entry of a question: trials with their differences, those left out with the reason, those not reported yet. */
export function answersOf(question: Question, answers: ReadonlyMap<string, Answer | null>): Answers {
  const asked = question.trials.map((entry) => ({ entry, answer: answers.get(entry.trial) ?? null })).toSorted(inOrder);
  const leftOut: LeftOutTrial[] = [];
  const leave = ({ entry, answer }: Asked, reason: PoolReason, found: string | null = null) =>
    void leftOut.push({ ...toldOf(entry, answer), reason, found });

  const open: { asked: Asked; candidates: readonly Candidate[] }[] = [];
  const seen = new Set<string>();
  for (const each of asked) {
    const { entry, answer } = each;
    if (answer === null) leave(each, 'data-fail');
    else if (answer.trial.status === 'finished') {
      const records = recordsOf(answer);
      const candidates = candidatesOf(question.measure, entry, answer);
      if (records.some((record) => seen.has(record))) leave(each, 'same-records');
      else if (typeof candidates === 'string') leave(each, candidates, foundIn(candidates, answer));
      else open.push({ asked: each, candidates });
      records.forEach((record) => seen.add(record));
    }
  }

  const choices = matched(open.map(({ candidates }) => candidates));
  const scale = mostCommon(choices.flatMap((choice) => (choice ? [scaleOf(choice)] : [])));
  const trials = open.flatMap(({ asked: each }, index) => {
    const choice = choices[index] ?? null;
    const row = choice && scaleOf(choice) === scale ? rowOf(each, choice) : null;
    if (row) return [row];
    if (choice === null) leave(each, 'treatments-differ', foundIn('treatments-differ', each.answer));
    else if (scaleOf(choice) === scale) leave(each, 'no-interval');
    else leave(each, 'other-unit', [choice.result.column, choice.result.unit].filter(Boolean).join(', '));
    return [];
  });
  const [column = null, unit = question.measure === 'germination' ? '%' : ''] = scale ? JSON.parse(scale) : [];
  return {
    trials,
    leftOut: leftOut.toSorted((a, b) => (a.trial < b.trial ? -1 : a.trial > b.trial ? 1 : 0)),
    unreported: asked.flatMap(({ entry, answer }) =>
      answer && answer.trial.status !== 'finished' ? [{ ...toldOf(entry, answer), status: answer.trial.status }] : [],
    ),
    unit: unitOfDifference(unit),
    valueUnit: unit,
    column,
  };
}

function rowOf({ entry, answer }: Asked, choice: Candidate): Answers['trials'][number] | null {
  const study = studyOf(choice);
  if (study === null || answer === null) return null;
  const { comparison, result } = choice;
  const lots = comparison.lots ?? [comparison.lot];
  const { treatment, control, kind } = comparison.units;
  const { basis, seeds, ...figures } = study;
  const { trial, ...told } = toldOf(entry, answer);
  return {
    trial,
    lot: comparison.lot,
    ...figures,
    weight: null,
    ...told,
    outcome: result.outcome,
    treatment: choice.treatment,
    control: choice.control,
    crops: [...new Set(answer.trial.lots.filter(({ id }) => lots.includes(id)).map(({ crop }) => crop))],
    day: result.day,
    units: choice.turned ? { treatment: control, control: treatment, kind } : comparison.units,
    basis,
    seeds,
    firstLotOnly: choice.firstLotOnly,
    verdict: comparison.verdict,
    ceiling: comparison.ceiling,
    ...doubtsOf(answer.analysis, choice),
  };
}

/** By the day of sowing, then by name; a trial of this site before its copy from elsewhere. */
function inOrder(a: Asked, b: Asked): number {
  const key = ({ entry, answer }: Asked) =>
    [answer?.trial.sown ?? '', answer?.origin ? 1 : 0, JSON.stringify(entry)].join(' ');
  return key(a) < key(b) ? -1 : 1;
}

/**
 * Names under which the same records are known again: the trial of this site; and the digests of its data with who sowed it
 * and when, since two growers with one tray of each can well have counted the same.
 */
function recordsOf({ trial, origin }: Answer): readonly string[] {
  const data = trial.inputs.filter(({ file }) => /^(counts|measurements|weighings)\.csv$/.test(file));
  const growers = trial.authors.map(({ name }) => name);
  const digests = data.map(({ sha256 }) => sha256);
  return [
    ...(origin ? [] : [`trial ${trial.id}`]),
    ...(data.length > 0 ? [JSON.stringify([trial.sown, growers, digests])] : []),
  ];
}

/** Values of one heading and one unit can be put together. */
const scaleOf = ({ result: { column, unit } }: Candidate): string => JSON.stringify([column, unit]);

function foundIn(reason: PoolReason, answer: Answer | null): string | null {
  if (reason !== 'treatments-differ') return null;
  return answer?.trial.treatments.map(({ label }) => label).join(', ') ?? null;
}
