import type { PlanAnswer } from '../../analysis/planning/plan-answer.ts';
import { MOST } from '../../analysis/planning/design-faults.ts';
import { planAmounts, type PlanAmounts, type PlanSpeech } from './plan-amounts.ts';

/**
 * What a trial of this design could and could not show, a sentence each; the first is the answer. By simulation where
 * there is one, else by formula, which is said.
 *
 * @param unit of a trait: "mm", "g"; empty otherwise
 */
export function planSentences(answer: PlanAnswer, unit: string, speech: PlanSpeech): readonly string[] {
  const { design, closed } = answer;
  const amounts = planAmounts(design.measure, unit, speech);
  const alone =
    closed.crop === null
      ? [speech.say(design.crops > 1 ? 'answer.oneTrayCrops' : 'answer.oneTray', {})]
      : cropSentences(answer, unit, amounts, speech);
  return [
    ...alone,
    ...togetherSentences(answer, amounts, speech),
    ...neededSentences(answer, amounts, speech),
    ...(closed.crop === null ? [] : [speech.say('answer.shuffle', { p: speech.pValue(closed.smallestP) })]),
    ...howFound(answer, speech),
  ];
}

function cropSentences(answer: PlanAnswer, unit: string, amounts: PlanAmounts, { say, number }: PlanSpeech): string[] {
  const { design, treated, closed, simulated } = answer;
  const { measure, base, matters, units, crops } = design;
  const crop = simulated?.crop ?? null;
  const change = say(`answer.change.${measure}`, { treated: number(treated), base: number(base), unit });
  const trays =
    measure === 'trait'
      ? say('answer.trays', { count: number(units) })
      : say('answer.traysOfSeeds', { count: number(units), seeds: number(design.seeds) });
  const rate = amounts.rate(crop?.shown.share ?? closed.crop?.power ?? 0);
  const range = crop?.halfWidth.value ?? closed.crop?.halfWidth ?? 0;
  const key = crops > 1 ? 'answer.shownCrops' : 'answer.shown';
  return [
    say(key, { trays, size: amounts.ofSize(matters), change, rate }),
    say('answer.range', { size: amounts.size(range) }),
    ...(crop === null
      ? []
      : [say(crops > 1 ? 'answer.alarmCrops' : 'answer.alarm', { rate: amounts.rate(crop.falseAlarm.share) })]),
    ...(crop === null || units < 3
      ? []
      : [say('answer.alike', { rate: amounts.rate(crop.alike.share), size: amounts.asGiven(matters) })]),
  ];
}

function togetherSentences(answer: PlanAnswer, amounts: PlanAmounts, { say, number }: PlanSpeech): string[] {
  const { design, closed, simulated } = answer;
  const any =
    simulated?.crop && design.crops > 1
      ? [
          say('answer.anyAlarm', {
            rate: amounts.rate(simulated.anyAlarm.share),
            firm: amounts.rate(simulated.anyFirmAlarm.share),
          }),
        ]
      : [];
  const common = { crops: number(design.crops), matters: amounts.ofSize(design.matters) };
  if (simulated?.together) {
    const { shown, halfWidth, falseAlarm } = simulated.together;
    const [rate, alarm] = [amounts.rate(shown.share), amounts.rate(falseAlarm.share)];
    return [...any, say('answer.together', { ...common, rate, alarm, size: amounts.size(halfWidth.value) })];
  }
  if (closed.together === null) return any;
  const { power, halfWidth } = closed.together;
  return [
    ...any,
    say('answer.togetherFormula', { ...common, rate: amounts.rate(power), size: amounts.size(halfWidth) }),
  ];
}

/** How many trays would do, where these do not. */
function neededSentences(answer: PlanAnswer, amounts: PlanAmounts, { say, number }: PlanSpeech): string[] {
  const { design, closed, needed, simulated } = answer;
  const power = simulated?.crop?.shown.share ?? closed.crop?.power ?? 0;
  if (power >= 0.8 || (needed !== null && needed <= design.units)) return [];
  const trays = say('answer.trays', { count: number(needed ?? MOST.units) });
  const size = amounts.ofSize(design.matters);
  return [say(needed === null ? 'answer.neededTooMany' : 'answer.needed', { trays, size })];
}

function howFound(answer: PlanAnswer, { say, number }: PlanSpeech): string[] {
  const { simulated, closed } = answer;
  if (simulated !== null) {
    return [say('answer.simulated', { trials: number(simulated.trials), error: number(largestError(answer)) })];
  }
  return closed.crop === null && closed.together === null ? [] : [say('answer.formula', {})];
}

/** Two standard errors of the least certain share, of 100, rounded up. */
function largestError({ simulated }: PlanAnswer): number {
  const all = [simulated?.crop, simulated?.together].flatMap((chances) =>
    chances ? [chances.shown, chances.falseAlarm, chances.alike] : [],
  );
  return Math.ceil(200 * Math.max(0, ...all.map(({ error }) => error)));
}
