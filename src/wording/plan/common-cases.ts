import { closedForm } from '../../analysis/planning/closed-form.ts';
import { planDesign } from '../../analysis/planning/plan-design.ts';
import { simulatePlan } from '../../analysis/planning/simulate-plan.ts';
import { simulated } from '../../analysis/planning/simulated.ts';
import { smallestP } from '../../statistics/permutation/smallest-p.ts';
import type { PlanSpeech } from './plan-amounts.ts';
import type { PlanTable } from './plan-table.ts';

const TRAYS = [2, 3, 4, 6, 8, 12];
const FALLS = [
  { base: 90, matters: 10 },
  { base: 70, matters: 10 },
  { base: 90, matters: 20 },
  { base: 70, matters: 20 },
];
const MULTIPLES = [1, 1.5, 2, 3];
/** Few enough that the page is made in about a second. */
const TRIALS = 400;

/** Plans that are common, worked out beforehand, for readers whose browser runs no script. */
export function commonCases(speech: PlanSpeech): readonly PlanTable[] {
  const { say, number } = speech;
  const trays = say('planPage.common.trays', {});
  const whole = (share: number) => number(Math.round(100 * share));
  return [
    {
      caption: say('planPage.common.germination', {
        trials: number(TRIALS),
        error: number(Math.ceil(200 * Math.sqrt(0.25 / TRIALS))),
      }),
      head: [
        trays,
        ...FALLS.map(({ base, matters }) =>
          say('planPage.common.fall', { treated: number(base - matters), base: number(base) }),
        ),
        say('planPage.common.smallestP', {}),
      ],
      rows: TRAYS.map((units) => [
        number(units),
        ...FALLS.map((fall) => whole(fallShown(fall, units))),
        speech.pValue(smallestP(units)),
      ]),
    },
    {
      caption: say('planPage.common.means', {}),
      head: [trays, ...MULTIPLES.map((times) => say('planPage.common.times', { times: number(times) }))],
      rows: TRAYS.map((units) => [
        number(units),
        ...MULTIPLES.map((matters) => {
          const design = planDesign({ measure: 'trait', base: 10, spread: 1, matters, units });
          return whole(closedForm(design).crop?.power ?? 0);
        }),
      ]),
    },
  ];
}

function fallShown(fall: { readonly base: number; readonly matters: number }, units: number): number {
  const design = planDesign({ measure: 'germination', units, ...fall });
  return simulated(simulatePlan(design, { seed: 'common cases', from: 0, count: TRIALS })).crop?.shown.share ?? 0;
}
