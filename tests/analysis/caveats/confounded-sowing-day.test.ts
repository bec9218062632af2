import { expect, test } from 'vitest';
import { confoundedSowingDay } from '../../../src/analysis/caveats/confounded-sowing-day.ts';
import { germinationTrial } from '../../support/make-trial.ts';
import { resultOf } from '../../support/result-of.ts';

const told = (packet: readonly string[], jar: readonly string[]) => {
  const trays = (days: readonly string[]) => days.map(() => [45, 50] as const);
  const trial = germinationTrial({ packet: trays(packet), jar: trays(jar) });
  const sowings = trial.sowings.map((sowing, index) => ({ ...sowing, sown: [...packet, ...jar][index] ?? null }));
  return confoundedSowingDay({ ...trial, sowings }, [resultOf({ ...trial, sowings })]);
};
const [monday, tuesday, wednesday] = ['2026-04-06', '2026-04-07', '2026-04-08'] as const;

test('packets sown on one day and jars on another', () => {
  expect(told([monday, monday], [tuesday, tuesday])).toMatchObject([
    { weight: 'serious', evidence: { values: { treatment: [tuesday], control: [monday] } } },
  ]);
});

test('single trays sown on different days are told too', () => {
  expect(told([monday], [tuesday])).toHaveLength(1);
});

test('a day on which both were sown is enough', () => {
  expect(told([monday, tuesday], [tuesday, tuesday])).toEqual([]);
  expect(told([monday], [monday])).toEqual([]);
});

test('each tray on a day of its own tells nothing apart', () => {
  expect(told([monday, wednesday], [tuesday, '2026-04-09'])).toEqual([]);
});
