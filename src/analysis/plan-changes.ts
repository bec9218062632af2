import type { Plan, Trial } from '../trial/trial.ts';
import type { Analysis, PlanChange } from './analysis.ts';
import { onceATrial } from './once-a-trial.ts';
import { doneParts } from './plan/done-parts.ts';
import type { PlanPart } from './plan/plan-part.ts';
import { plannedParts } from './plan/planned-parts.ts';

/**
 * Every difference between the frozen plan and what the trial's files say now: what was added (planned
 * null), dropped (done null) or altered; sowings left out (`sowings.s07.left-out`, done: what happened);
 * another key than the sealed one (`key_sha256`); a plan edited after it was sealed (`digest`). A section
 * that the plan does not hold is not compared, outcomes excepted: each outcome without a plan is an addition.
 *
 * @returns the plan's date and the changes, sorted by path; null and none without plan.yaml
 */
export const planChanges = onceATrial((trial: Trial): Analysis['plan'] => {
  const { plan } = trial;
  if (plan === null) return { fixed: null, changes: [] };

  const planned = new Map(
    plannedParts(
      plan.copy,
      trial.lots.map(({ id }) => id),
    ).map((part) => [part.path, part]),
  );
  const sections = new Set(['outcomes', ...Array.from(planned.keys(), sectionOf)]);
  const done = new Map(
    doneParts(trial)
      .filter(({ path }) => sections.has(sectionOf(path)))
      .map((part) => [part.path, part]),
  );

  const paths = [...new Set([...planned.keys(), ...done.keys()])];
  const changes = [
    ...paths.flatMap((path) => differences(path, planned.get(path), done.get(path))),
    ...leftOut(trial),
    ...sealChanges(plan, trial),
  ];
  return { fixed: plan.fixed, changes: changes.toSorted((a, b) => (a.what < b.what ? -1 : a.what > b.what ? 1 : 0)) };
});

const sectionOf = (path: string): string => path.split('.')[0] ?? '';

function differences(path: string, planned: PlanPart | undefined, done: PlanPart | undefined): PlanChange[] {
  if (planned === undefined || done === undefined) {
    return [{ what: path, planned: planned?.name ?? null, done: done?.name ?? null }];
  }
  return Object.entries(planned.fields)
    .map(([field, text]) => ({
      what: path === '' ? field : `${path}.${field}`,
      planned: text,
      done: done.fields[field] ?? null,
    }))
    .filter((change) => change.planned !== change.done);
}

const leftOut = ({ events }: Trial): PlanChange[] =>
  events
    .filter(({ action }) => action === 'left-out')
    .flatMap(({ sowings, what }) =>
      sowings.map((sowing) => ({ what: `sowings.${sowing}.left-out`, planned: null, done: what })),
    );

function sealChanges({ copy, digest, computedDigest }: Plan, { inputs }: Trial): PlanChange[] {
  const sealed = typeof copy.key_sha256 === 'string' ? copy.key_sha256 : null;
  const key = inputs.find(({ file }) => file.split('/').at(-1) === 'key.csv')?.sha256 ?? null;
  return [
    { what: 'key_sha256', planned: sealed, done: sealed === null ? null : (key ?? sealed) },
    { what: 'digest', planned: digest, done: digest === null ? null : computedDigest },
  ].filter(({ planned, done }) => planned !== done);
}
