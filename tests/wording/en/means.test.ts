import { expect, test } from 'vitest';
import type { Result } from '../../../src/analysis/analysis.ts';
import { makeCaveat } from '../../support/make-result.ts';
import { makeSowing } from '../../support/make-trial.ts';
import { tell, type Telling } from '../../support/tell.ts';

const byHand = makeCaveat('not-randomised', { evidence: { assignment: 'by-hand' } });
const shelf = makeCaveat('confounded-place', {
  weight: 'serious',
  evidence: {
    treatment: 'jar',
    control: 'packet',
    values: { treatment: ['lower shelf'], control: ['upper shelf'] },
  },
});

const group = (estimate: number, after: number | null = null, by: number | null = null) => ({
  estimate,
  count: null,
  seeds: null,
  bracket: after === null ? null : { after, by },
});
const days: Partial<Result> = { measure: 't50', unit: 'days', day: null };
const t50: Telling = {
  estimate: -1.2,
  lower: -2,
  upper: -0.4,
  margin: 1,
  verdict: 'different',
  jar: group(5.4, 5, 8),
  packet: group(6.6, 5, 8),
  result: days,
};

test('half of them up, with the checks between which the half lies', () => {
  expect(tell(t50)).toMatchInlineSnapshot(
    `"Half of the Sealed jar seeds that came up were up by day 5.4 (between the checks of day 5 and day 8) and half of the Paper packet seeds by day 6.6 (between the checks of day 5 and day 8): 1.2 days earlier (the data fit with 0.4 to 2.0 days earlier; 6 and 6 trays). So the Sealed jar seeds were up earlier. It may or may not be the 1 day that was to matter."`,
  );
  expect(
    tell({ ...t50, estimate: 1.2, lower: 0.4, upper: 2, jar: group(6.6, 5, 8), packet: group(5.4, 5, 8) }),
  ).toMatchInlineSnapshot(
    `"Half of the Sealed jar seeds that came up were up by day 6.6 (between the checks of day 5 and day 8) and half of the Paper packet seeds by day 5.4 (between the checks of day 5 and day 8): 1.2 days later (the data fit with 0.4 to 2.0 days later; 6 and 6 trays). So the Sealed jar seeds were up later. It may or may not be the 1 day that was to matter."`,
  );
  expect(tell({ ...t50, margin: 0.3, verdict: 'matters' })).toMatchInlineSnapshot(
    `"Half of the Sealed jar seeds that came up were up by day 5.4 (between the checks of day 5 and day 8) and half of the Paper packet seeds by day 6.6 (between the checks of day 5 and day 8): 1.2 days earlier (the data fit with 0.4 to 2.0 days earlier; 6 and 6 trays). So the Sealed jar seeds were up earlier, and all of that range is beyond the 0.3 days that were to matter."`,
  );
  expect(tell({ ...t50, upper: 0.6, verdict: 'unclear' })).toMatchInlineSnapshot(
    `"Half of the Sealed jar seeds that came up were up by day 5.4 (between the checks of day 5 and day 8) and half of the Paper packet seeds by day 6.6 (between the checks of day 5 and day 8): 1.2 days earlier (the data fit with 2.0 days earlier to 0.6 days later; 6 and 6 trays). A difference could not be shown, which is not proof of sameness."`,
  );
  expect(tell({ ...t50, ceiling: 'probably', caveats: [byHand] })).toMatchInlineSnapshot(
    `"Half of the Sealed jar seeds that came up were up by day 5.4 (between the checks of day 5 and day 8) and half of the Paper packet seeds by day 6.6 (between the checks of day 5 and day 8): 1.2 days earlier (the data fit with 0.4 to 2.0 days earlier; 6 and 6 trays). So the Sealed jar seeds were probably up earlier. It may or may not be the 1 day that was to matter. We say “probably” because the trays were placed by hand, not by lot."`,
  );
  expect(tell({ ...t50, ceiling: 'cause-unclear', caveats: [shelf] })).toMatchInlineSnapshot(
    `"Half of the Sealed jar seeds that came up were up by day 5.4 (between the checks of day 5 and day 8) and half of the Paper packet seeds by day 6.6 (between the checks of day 5 and day 8): 1.2 days earlier (the data fit with 0.4 to 2.0 days earlier; 6 and 6 trays). But the Sealed jar trays stood only at “lower shelf” and the Paper packet trays only at “upper shelf”. What caused the difference cannot be told."`,
  );
  expect(tell({ ...t50, estimate: 0.1, lower: -0.8, upper: 0.9, verdict: 'same' })).toMatchInlineSnapshot(
    `"Half of the Sealed jar seeds that came up were up by day 5.4 (between the checks of day 5 and day 8) and half of the Paper packet seeds by day 6.6 (between the checks of day 5 and day 8): 0.1 days later (the data fit with 0.8 days earlier to 0.9 days later; 6 and 6 trays). So the two were alike for this purpose: any difference is smaller than 1 day. The 1 day was set on 1 April 2026, before counting, as the authors state."`,
  );
});

test('a difference within blocks that is not that of the means says how it was made', () => {
  const units = { treatment: 3, control: 3, kind: 'block' } as const;
  const result = { measure: 'trait', column: 'height', unit: 'mm' } as const;
  const of = (jar: number) =>
    tell({
      estimate: 3,
      lower: 1,
      upper: 5,
      result,
      comparison: { units },
      jar: { estimate: jar },
      packet: { estimate: 39 },
    });
  expect(of(43).split('.')[0]).toMatchInlineSnapshot(
    `"On day 14 Sealed jar trays averaged 43 mm and Paper packet trays 39 mm: compared block by block, 3 mm taller (the data fit with 1 to 5 mm taller; both in each of 3 blocks)"`,
  );
  expect(of(42).split('.')[0]).toMatchInlineSnapshot(
    `"On day 14 Sealed jar trays averaged 42 mm and Paper packet trays 39 mm: 3 mm taller (the data fit with 1 to 5 mm taller; both in each of 3 blocks)"`,
  );
});

test('blocks that all have the same difference do not make all trays alike', () => {
  const units = { treatment: 3, control: 3, kind: 'block' } as const;
  const text = tell({ estimate: 3, result: { measure: 'trait', column: 'height', unit: 'mm' }, comparison: { units } });
  expect(text).toContain(' The difference was the same in every block, so how much it ordinarily varies is not known.');
  expect(text).not.toContain('gave the same figure');
});

test('half up at the first check: an earlier first check is the cure', () => {
  const early = makeCaveat('half-before-first-check', {
    outcome: 'germination',
    lot: 'leek',
    treatment: 'packet',
    evidence: { day: 5, portion: 0.5, units: ['packet1'] },
  });
  const text = tell({ ...t50, estimate: null, verdict: 'unclear', lower: null, upper: null, caveats: [early] });
  expect(text).toContain('Half of what came up in at least one tray was up at the first check, so when is not known.');
  expect(text).toMatch(/A repeat needs an earlier first check\.$/);
  expect(text).not.toMatch(/too far apart|several trays/);
});

test('what would settle it is more than either side has', () => {
  const settling = (units: number) =>
    tell({ ...t50, upper: 0.6, verdict: 'unclear', comparison: { units: { treatment: 3, control: 8, kind: 'sowing' }, wouldSettle: { units, difference: 1 } } }); // prettier-ignore
  expect(settling(8)).not.toContain('would settle');
  expect(settling(9)).toContain('about 9 trays of each would settle');
});

test('a single tray of each with next to nothing up: that is the finding', () => {
  const none = { estimate: 0, count: 0, seeds: 25 };
  const text = tell({ estimate: 0, lower: -13, upper: 13, verdict: 'untestable', jar: none, packet: none });
  expect(text).toMatch(/So few seeds came up that the finding is low germination in both\.$/);
  expect(text).not.toContain('worth repeating');
});

test('a mean that lies outside the checks of the pooled half names no checks', () => {
  expect(tell({ ...t50, jar: group(4.8, 5, 8) })).toContain('up by day 4.8 and half');
});

test('checks too far apart: that there is a lag is said, not how long it is', () => {
  const coarse = {
    ...t50,
    jar: group(4.1, 3, 5),
    packet: group(6.6, 5, 8),
    comparison: {
      interval: { level: 0.95, lower: -5, upper: 0, method: 'welch-bracket' },
      welch: { level: 0.95, lower: -3.1, upper: -1.9 },
      bracket: { lower: -5, upper: 0 },
    },
  } as const;
  expect(tell(coarse)).toMatchInlineSnapshot(
    `"The Sealed jar seeds were up earlier, but the checks were too far apart to say by how many days. Half of the Sealed jar seeds were up between day 3 and day 5, half of the Paper packet seeds between day 5 and day 8 (the check days alone allow 0 to 5 days earlier; 6 and 6 trays)."`,
  );
  expect(tell({ ...coarse, result: { ...days, measure: 'spread' } })).not.toContain('by how many days');
  expect(tell({ ...coarse, result: { ...days, measure: 'mgt' } })).toMatchInlineSnapshot(
    `"The Sealed jar seeds were up earlier, but the checks were too far apart to say by how many days. The Sealed jar seeds that came up took 4.1 days on average and the Paper packet seeds 6.6 days (6 and 6 trays)."`,
  );
});

test('one tray of each: what the checks allow, and no more', () => {
  expect(
    tell({
      ...t50,
      lower: null,
      upper: null,
      verdict: 'untestable',
      jar: { ...group(4.1, 3, 5), units: 1 },
      packet: { ...group(6.6, 5, 8), units: 1 },
      comparison: {
        units: { treatment: 1, control: 1, kind: 'sowing' },
        bracket: { lower: -5, upper: 0 },
        repeatWith: { units: 6, difference: 1 },
      },
    }),
  ).toMatchInlineSnapshot(
    `"Cannot tell. Half of the Sealed jar seeds were up between day 3 and day 5, half of the Paper packet seeds between day 5 and day 8: 0 to 5 days earlier. The checks were too far apart to say more. With one tray of each, the treatment cannot be told from ordinary tray-to-tray luck. A first look, worth repeating with 6 trays of each, enough for a difference of 1 day."`,
  );
});

test('all trays of a kind alike: the checks only', () => {
  expect(
    tell({ ...t50, lower: null, upper: null, verdict: 'unclear', comparison: { bracket: { lower: -3, upper: 3 } } }),
  ).toMatchInlineSnapshot(
    `"Half of the Sealed jar seeds were up between day 5 and day 8, half of the Paper packet seeds between day 5 and day 8: 3 days earlier to 3 days later (6 and 6 trays). A difference could not be shown, which is not proof of sameness. All trays of a kind gave the same figure, so their ordinary spread is not known."`,
  );
});

test('mean time, spread and Maguire’s rate have words of their own', () => {
  expect(tell({ ...t50, result: { ...days, measure: 'mgt' } })).toMatchInlineSnapshot(
    `"The Sealed jar seeds that came up took 5.4 days on average and the Paper packet seeds 6.6 days: 1.2 days earlier (the data fit with 0.4 to 2.0 days earlier; 6 and 6 trays). So the Sealed jar seeds were up earlier. It may or may not be the 1 day that was to matter."`,
  );
  expect(
    tell({ ...t50, result: { ...days, measure: 'spread' }, jar: group(1.7), packet: group(2.9) }),
  ).toMatchInlineSnapshot(
    `"The middle half of the Sealed jar seedlings came up within 1.7 days and that of the Paper packet seedlings within 2.9 days: 1.2 days shorter (the data fit with 0.4 to 2.0 days shorter; 6 and 6 trays). So Sealed jar seed came up more evenly. It may or may not be the 1 day that was to matter."`,
  );
  const rate = { measure: 'maguire', unit: 'seeds per day per 100 sown', day: null } as const;
  expect(
    tell({
      ...t50,
      estimate: 2.3,
      lower: 0.6,
      upper: 4,
      margin: undefined,
      result: rate,
      jar: group(12.1),
      packet: group(9.8),
    }),
  ).toMatchInlineSnapshot(
    `"Maguire’s rate, which counts both how many came up and how fast, was 12.1 for Sealed jar seed and 9.8 for Paper packet seed: 2.3 higher (the data fit with 0.6 to 4.0 higher; 6 and 6 trays). So Sealed jar seed had the higher rate. No smallest difference that matters was set beforehand."`,
  );
});

const height: Partial<Result> = {
  measure: 'trait',
  unit: 'mm',
  column: 'height',
  values: ['jar', 'packet'].flatMap((treatment) =>
    [1, 2].map((each) => ({
      lot: 'leek',
      treatment,
      stored: null,
      block: null,
      unit: `${treatment}-${each}`,
      sowings: [`${treatment}-${each}`],
      seeds: null,
      count: null,
      value: 40,
      plants: 65,
    })),
  ),
};
const sowings = ['jar', 'packet'].flatMap((treatment) =>
  [1, 2].map((each) => makeSowing(`${treatment}-${each}`, treatment, { seeds: 75 })),
);
const trait: Telling = {
  estimate: 3,
  lower: -2.3,
  upper: 8.4,
  margin: 5,
  result: height,
  jar: group(42),
  packet: group(39),
  trial: { sowings },
};

test('a trait of plants, with how many could be measured', () => {
  expect(tell(trait)).toMatchInlineSnapshot(
    `"On day 14 Sealed jar seedlings averaged 42 mm and Paper packet seedlings 39 mm: 3 mm taller (the data fit with 2 mm shorter to 8 mm taller; 6 and 6 trays). A difference could not be shown, which is not proof of sameness. Only seedlings that came up could be measured (130 from 150 seeds; 130 from 150)."`,
  );
  expect(tell({ ...trait, lower: 1.2, upper: 4.8, verdict: 'different' })).toMatchInlineSnapshot(
    `"On day 14 Sealed jar seedlings averaged 42 mm and Paper packet seedlings 39 mm: 3 mm taller (the data fit with 1 to just under 5 mm taller; 6 and 6 trays). So Sealed jar seedlings were taller. It may or may not be the 5 mm that was to matter. Only seedlings that came up could be measured (130 from 150 seeds; 130 from 150)."`,
  );
  expect(
    tell({ ...trait, estimate: -8, lower: -10.2, upper: -5.8, verdict: 'matters', jar: group(31) }),
  ).toMatchInlineSnapshot(
    `"On day 14 Sealed jar seedlings averaged 31 mm and Paper packet seedlings 39 mm: 8 mm shorter (the data fit with 6 to 10 mm shorter; 6 and 6 trays). So Sealed jar seedlings were shorter, and all of that range is beyond the 5 mm that was to matter. Only seedlings that came up could be measured (130 from 150 seeds; 130 from 150)."`,
  );
  expect(tell({ ...trait, lower: 1.2, upper: 4.8, verdict: 'same' })).toMatchInlineSnapshot(
    `"On day 14 Sealed jar seedlings averaged 42 mm and Paper packet seedlings 39 mm: 3 mm taller (the data fit with 1 to just under 5 mm taller; 6 and 6 trays). So Sealed jar seedlings were taller, but by less than the 5 mm that was to matter. Only seedlings that came up could be measured (130 from 150 seeds; 130 from 150)."`,
  );
  expect(
    tell({ ...trait, lower: -1.2, upper: 4.8, verdict: 'same', ceiling: 'cause-unclear', caveats: [shelf] }),
  ).toMatchInlineSnapshot(
    `"On day 14 Sealed jar seedlings averaged 42 mm and Paper packet seedlings 39 mm: 3 mm taller (the data fit with 1 mm shorter to just under 5 mm taller; 6 and 6 trays). No difference was seen, but the Sealed jar trays stood only at “lower shelf” and the Paper packet trays only at “upper shelf”, which could hide one. Only seedlings that came up could be measured (130 from 150 seeds; 130 from 150)."`,
  );
  expect(
    tell({ ...trait, verdict: 'untestable', comparison: { units: { treatment: 1, control: 1, kind: 'sowing' } } }),
  ).toMatchInlineSnapshot(
    `"Cannot tell. On day 14 Sealed jar seedlings averaged 42 mm and Paper packet seedlings 39 mm. With one tray of each, the treatment cannot be told from ordinary tray-to-tray luck. A first look, worth repeating with several trays of each. Only seedlings that came up could be measured (130 from 150 seeds; 130 from 150)."`,
  );
});

test.each([
  ['height', 'mm', 'taller'],
  ['root length', 'mm', 'longer'],
  ['fresh mass', 'g', 'heavier'],
  ['stem diameter', 'mm', 'wider'],
  ['leaves', '', 'more'],
  ['vigour', '', 'larger'],
  ['cover', '%', 'larger'],
])('a difference of %s in "%s" is %s', (column, unit, word) => {
  const sentence = tell({
    ...trait,
    result: { ...height, column, unit },
    lower: 1.2,
    upper: 4.8,
    verdict: 'different',
  });
  expect(sentence).toContain(word);
  expect(sentence).not.toMatch(/% (more|larger)/);
});

test('grams get as many digits as their range bears', () => {
  const mass = { ...height, column: 'mass', unit: 'g' };
  expect(
    tell({
      ...trait,
      result: mass,
      estimate: 0.312,
      lower: 0.108,
      upper: 0.516,
      margin: undefined,
      jar: group(2.412),
      packet: group(2.1),
    }),
  ).toContain(
    'averaged 2.41 g and Paper packet seedlings 2.10 g: 0.31 g heavier (the data fit with 0.11 to 0.52 g heavier; ',
  );
});

test('more water lost is drier, not moister', () => {
  const lost: Telling = {
    estimate: 4.7,
    lower: 4.1,
    upper: 5.3,
    verdict: 'different',
    jar: group(4.9),
    packet: group(0.2),
  };
  const moisture = (unit: string) => tell({ ...lost, result: { measure: 'moisture', unit, day: null } });
  expect(moisture('% of mass lost')).toMatchInlineSnapshot(
    `"Sealed jar seed lost 4.9 % of its mass and Paper packet seed 0.2 %: 4.7 points more (the data fit with 4.1 to 5.3 points more; 6 and 6 trays). So Sealed jar seed lost more water. No smallest difference that matters was set beforehand."`,
  );
  expect(moisture('% wet basis')).toMatchInlineSnapshot(
    `"Sealed jar seed had 4.9 % moisture and Paper packet seed 0.2 %: 4.7 points more (the data fit with 4.1 to 5.3 points more; 6 and 6 trays). So Sealed jar seed was moister. No smallest difference that matters was set beforehand."`,
  );
});
