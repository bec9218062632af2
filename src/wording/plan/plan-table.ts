import type { ClosedForm } from '../../analysis/planning/closed-form.ts';
import type { PlanAnswer } from '../../analysis/planning/plan-answer.ts';
import type { Chances, Rate } from '../../analysis/planning/simulated.ts';
import { planAmounts, type PlanAmounts, type PlanSpeech } from './plan-amounts.ts';

/** A table of finished text; `head` has one column less where nothing was simulated. */
export interface PlanTable {
  readonly caption: string;
  readonly head: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Name, by simulation, by formula; null where it does not say. */
type Row = readonly [name: string, simulated: string | null, formula: string | null];

/**
 * Every number of a plan: simulated with its Monte Carlo error, and by formula beside it.
 *
 * @param unit of a trait: "mm", "g"; empty otherwise
 */
export function planTable(answer: PlanAnswer, unit: string, speech: PlanSpeech): PlanTable {
  const { design, closed, simulated } = answer;
  const { say } = speech;
  const amounts = planAmounts(design.measure, unit, speech);
  const rows: Row[] = [
    ...(closed.crop === null ? [] : cropRows(answer, closed.crop, amounts, speech)),
    ...togetherRows(answer, amounts, speech),
    ...(closed.crop === null
      ? []
      : [[say('answer.table.smallestP', {}), null, speech.pValue(closed.smallestP)] as const]),
  ];
  const isSimulated = simulated !== null;
  return {
    caption: isSimulated
      ? say('answer.table.caption', { trials: speech.number(simulated.trials) })
      : say('answer.table.captionFormula', {}),
    head: [
      say('answer.table.what', {}),
      ...(isSimulated ? [say('answer.table.simulated', {})] : []),
      say('answer.table.formula', {}),
    ],
    rows: rows
      .filter(([, found, formula]) => (isSimulated ? (found ?? formula) !== null : formula !== null))
      .map(([name, found, formula]) => [name, ...(isSimulated ? [found ?? '–'] : []), formula ?? '–']),
  };
}

function cropRows(
  { design, simulated }: PlanAnswer,
  closed: ClosedForm,
  amounts: PlanAmounts,
  speech: PlanSpeech,
): Row[] {
  const { say } = speech;
  const crop = simulated?.crop ?? null;
  const isMany = design.crops > 1;
  const of = (rate: (chances: Chances) => Rate) => crop && percent(rate(crop), speech);
  const detectable = closed.detectable === null ? say('answer.table.none', {}) : amounts.roundedUp(closed.detectable);
  return [
    [
      say(isMany ? 'answer.table.shownOne' : 'answer.table.shown', {}),
      of(({ shown }) => shown),
      whole(closed.power, speech),
    ],
    ...(isMany ? [[say('answer.table.shownFirmly', {}), of(({ shownFirmly }) => shownFirmly), null] as const] : []),
    [say('answer.table.alarm', {}), of(({ falseAlarm }) => falseAlarm), byDesign(5, speech)],
    ...(isMany && simulated?.crop
      ? [
          [say('answer.table.anyAlarm', {}), percent(simulated.anyAlarm, speech), null] as const,
          [say('answer.table.anyFirmAlarm', {}), percent(simulated.anyFirmAlarm, speech), null] as const,
        ]
      : []),
    [say('answer.table.alike', {}), of(({ alike }) => alike), null],
    [say('answer.table.falselyAlike', {}), of(({ falselyAlike }) => falselyAlike), null],
    [say('answer.table.range', {}), crop && width(crop, amounts), amounts.size(closed.halfWidth)],
    [say('answer.table.covered', {}), of(({ covered }) => covered), byDesign(95, speech)],
    [say('answer.table.detectable', {}), null, detectable],
  ];
}

function togetherRows({ closed, simulated }: PlanAnswer, amounts: PlanAmounts, speech: PlanSpeech): Row[] {
  const { together } = closed;
  if (together === null) return [];
  const { say } = speech;
  const found = simulated?.together ?? null;
  return [
    [say('answer.table.togetherShown', {}), found && percent(found.shown, speech), whole(together.power, speech)],
    [say('answer.table.togetherAlarm', {}), found && percent(found.falseAlarm, speech), byDesign(5, speech)],
    [say('answer.table.togetherRange', {}), found && width(found, amounts), amounts.size(together.halfWidth)],
  ];
}

const width = ({ halfWidth }: Chances, amounts: PlanAmounts) => amounts.sizeError(halfWidth.value, halfWidth.error);

const percent = ({ share, error }: Rate, { say, number }: PlanSpeech) =>
  say('answer.table.rateError', { number: number(100 * share, 1), error: number(100 * error, 1) });

const whole = (share: number, { say, number }: PlanSpeech) =>
  say('answer.table.rate', { number: number(Math.round(100 * share)) });

const byDesign = (share: number, { say, number }: PlanSpeech) =>
  say('answer.table.byDesign', { number: number(share) });
