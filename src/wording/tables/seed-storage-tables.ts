import { overReadings } from '../../analysis/moisture/over-readings.ts';
import { expectedStorage } from '../../analysis/storage/expected-storage.ts';
import { SEALED_MOISTURE } from '../../analysis/storage/sealed-moisture.ts';
import { VIABILITY_CROPS } from '../../analysis/storage/viability-crops.ts';
import { massAtMoisture } from '../../statistics/moisture/mass-at-moisture.ts';
import { moistureAfter } from '../../statistics/moisture/moisture-after.ts';
import { waterLost } from '../../statistics/moisture/water-lost.ts';
import type { Words } from '../words.ts';
import type { TextTable } from './numbers-table.ts';

/** Viability at the start and at the end of the expected times, of 100. */
export const FALL = { from: 90, to: 70 } as const;
/** Years beyond which the equation is not trusted to tell anything apart. */
export const MOST_YEARS = 20;
/** A reading of water lost, %, that scales of unlike steps may mean. */
export const READ_LOSS = 4;

const CASES = [
  { moisture: 6, temperature: 5 },
  { moisture: 8, temperature: 5 },
  { moisture: 8, temperature: 15 },
  { moisture: 10, temperature: 20 },
  { moisture: 12, temperature: 25 },
] as const;
const DAYS_A_YEAR = 365.25;

/** Years that the viability equation expects, a row a crop with published constants. */
export function expectedTable(words: Words): TextTable {
  const { ui } = words;
  return {
    head: [
      ui['seedStorage.crop'],
      ...CASES.map(({ moisture, temperature }) => words.say('seedStorage.case', { moisture, temperature })),
    ],
    rows: VIABILITY_CROPS.map(({ id, species }) => [
      ui[`viability.${id}`],
      ...CASES.map((given) => {
        const answer = expectedStorage({ species, ...given, ...FALL });
        return 'days' in answer ? yearsText(words, answer.days / DAYS_A_YEAR) : ui['table.none'];
      }),
    ]),
  };
}

/** Two figures, for the equation carries no more; nothing told apart beyond what it is trusted with. */
function yearsText(words: Words, years: number): string {
  if (years > MOST_YEARS) return words.say('seedStorage.over', { years: MOST_YEARS });
  return words.number(years, years < 9.95 ? 1 : 0);
}

/** What 100 g of seed must weigh at a wanted moisture, by its moisture now. */
export function dryingTable(words: Words): TextTable {
  const wanted = [5, 6, 7, 8, 10];
  return {
    head: [words.ui['seedStorage.from'], ...wanted.map((percent) => words.say('seedStorage.toMoisture', { percent }))],
    rows: [7, 8, 9, 10, 12, 14, 16].map((now) => [
      words.say('seedStorage.percent', { value: now }),
      ...wanted.map((target) => (target < now ? words.number(massAtMoisture(100, now, target), 1) : '')),
    ]),
  };
}

/** Moisture after drying, by the moisture at the start and the share of the mass that was lost. */
export function afterTable(words: Words): TextTable {
  const lost = [1, 2, 3, 4, 5];
  return {
    head: [words.ui['seedStorage.start'], ...lost.map((percent) => words.say('seedStorage.lost', { percent }))],
    rows: [6, 8, 10, 12, 14, 16].map((now) => [
      words.say('seedStorage.percent', { value: now }),
      ...lost.map((percent) => words.number(moistureAfter(now, 100, 100 - percent), 1)),
    ]),
  };
}

/** What a reading of water lost fits with, by how much seed was weighed and the steps of the scale. */
export function scaleTable(words: Words): TextTable {
  const steps = [0.01, 0.1, 1];
  const reading = (value: number, step: number) => ({
    value,
    range: { lower: value - step / 2, upper: value + step / 2 },
  });
  return {
    head: [words.ui['seedStorage.seed'], ...steps.map((step) => words.say('seedStorage.steps', { step: words.number(step, step < 1 ? (step < 0.1 ? 2 : 1) : 0) }))], // prettier-ignore
    rows: [5, 20, 50, 100, 500].map((mass) => [
      words.say('seedStorage.grams', { mass }),
      ...steps.map((step) => {
        const after = mass * (1 - READ_LOSS / 100);
        const { range } = overReadings(waterLost, [reading(mass, step), reading(after, step)]);
        const lower = Math.max(0, range?.lower ?? 0);
        return words.say('seedStorage.lossRange', {
          lower: words.number(lower, 2),
          upper: words.number(range?.upper ?? 0, 2),
        });
      }),
    ]),
  };
}

/** Greatest moisture in sealed packets, by crop. */
export function sealedTable(words: Words): TextTable {
  return {
    head: [words.ui['moisture.limit'], words.ui['seedStorage.crops']],
    rows: SEALED_MOISTURE.map(([percent, crops]) => [
      words.say('seedStorage.percent', { value: words.number(percent, 1) }),
      words.list(crops.map((crop) => words.ui[`sealed.${crop}`])),
    ]),
  };
}
