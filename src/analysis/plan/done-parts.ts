import type { Trial } from '../../trial/trial.ts';
import { dayText, textOf, yesOrNo, type PlanPart } from './plan-part.ts';

/** What the trial's files say now, part by part, in the same shape as `plannedParts`. */
export function doneParts(trial: Trial): PlanPart[] {
  const lots = trial.lots.map(({ id }) => id);
  return [
    { path: '', name: '', fields: texts({ question: trial.question, varies: trial.varies, sown: trial.sown }) },
    ...lots.map((lot) => ({ path: `lots.${lot}`, name: lot, fields: {} })),
    ...trial.treatments.map(({ id, label, control, soakHours, handling, temperature, moisture }) => ({
      path: `treatments.${id}`,
      name: label,
      fields: {
        label: textOf(label),
        control: yesOrNo(control),
        soak_hours: textOf(soakHours),
        handling: textOf(handling),
        temperature: textOf(temperature),
        moisture: textOf(moisture),
      },
    })),
    { path: 'sowing', name: 'sowing', fields: texts({ ...trial.sowing }) },
    { path: 'scoring', name: 'scoring', fields: texts({ ...trial.scoring }) },
    ...trial.outcomes.map(({ id, measure, column, day, matters, primary, pool }) => ({
      path: `outcomes.${id}`,
      name: id,
      fields: {
        ...texts({ measure, column, matters }),
        day: dayText(day, lots),
        primary: yesOrNo(primary),
        pool: yesOrNo(pool),
      },
    })),
    ...trial.sowings.map(({ id, lot, treatment, block, seeds, mass, batch, tray, position, label, sown }) => ({
      path: `sowings.${id}`,
      name: id,
      fields: texts({ lot, treatment, block, seeds, mass, batch, tray, position, label, sown }),
    })),
  ];
}

const texts = (values: Readonly<Record<string, unknown>>): Record<string, string | null> =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [key, textOf(value)]));
