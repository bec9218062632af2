import type { LotTest } from '../../src/analysis/lot-tests.ts';
import { makeGroup, makeResult } from '../support/make-result.ts';
import { makeTreatment, makeTrial } from '../support/make-trial.ts';

/** Tests of one invented lot: two treatments over three years of one series, then two other trials on one day. */
export function inventTests(): readonly LotTest[] {
  const treatments = [
    makeTreatment('shed', { label: 'Shed', control: true }),
    makeTreatment('fridge', { label: 'Fridge' }),
  ];
  const series = makeTrial({ id: 'series', title: 'Shed or fridge', treatments });
  const test = (trial: LotTest['trial'], treatment: string, date: string, estimate: number, stored: number | null) => ({
    trial,
    result: makeResult(),
    date,
    day: 14,
    group: makeGroup(treatment, {
      stored,
      estimate,
      count: 2 * estimate,
      interval: {
        level: 0.95,
        lower: Math.max(0, estimate - 9),
        upper: Math.min(100, estimate + 7),
        method: 'wilson-effective',
      },
    }),
  });
  const years = [0, 1, 2, 3].flatMap((year) => [
    test(series, 'shed', `${2023 + year}-11-04`, 96 - 11 * year, year),
    test(series, 'fridge', `${2023 + year}-11-04`, 96 - 3 * year, year),
  ]);
  const others = [
    'Covered or bare, with a title that is long enough to be broken over more than one line',
    'Wet start',
  ].map((title, index) =>
    test(
      makeTrial({ id: `other-${index}`, title, treatments: [makeTreatment('dry', { label: 'Dry', control: true })] }),
      'dry',
      '2026-11-04',
      index === 0 ? 0 : 100,
      null,
    ),
  );
  return [...years, ...others];
}
