import { expect, test } from 'vitest';
import { makeCaveat } from '../../support/make-result.ts';
import { makeLot } from '../../support/make-trial.ts';
import { tell } from '../../support/tell.ts';

const byHand = makeCaveat('not-randomised', { evidence: { assignment: 'by-hand' } });
const soaked = makeCaveat('unequal-soak', {
  weight: 'serious',
  evidence: {
    treatment: 'jar',
    control: 'packet',
    hours: { treatment: { shortest: 6, longest: 6 }, control: { shortest: 1, longest: 1 } },
  },
});
const many = makeCaveat('many-comparisons', { evidence: { comparisons: 8, p: 0.02, pAdjusted: 0.16 } });
const lowCounts = { jar: { count: 2, seeds: 150 }, packet: { count: 2, seeds: 150 } };

test('beyond what was to matter', () => {
  const more = { estimate: 26, lower: 17.2, upper: 34.6, margin: 10, verdict: 'matters' } as const;
  expect(tell(more)).toMatchInlineSnapshot(
    `"Sealed jar seed came up more: 88 of 100 against 62 of 100 (264 of 300 seeds and 186 of 300; 6 and 6 trays). The data fit with 17 to 35 more per 100, all beyond the 10 that was to matter."`,
  );
  expect(
    tell({
      ...more,
      estimate: -26,
      lower: -34.6,
      upper: -17.2,
      jar: { count: 186, estimate: 62 },
      packet: { count: 264, estimate: 88 },
    }),
  ).toMatchInlineSnapshot(
    `"Sealed jar seed came up less: 62 of 100 against 88 of 100 (186 of 300 seeds and 264 of 300; 6 and 6 trays). The data fit with 17 to 35 fewer per 100, all beyond the 10 that was to matter."`,
  );
  expect(tell({ ...more, fixed: false })).toMatchInlineSnapshot(
    `"Sealed jar seed came up more: 88 of 100 against 62 of 100 (264 of 300 seeds and 186 of 300; 6 and 6 trays). The data fit with 17 to 35 more per 100, all beyond the 10 named as mattering, though that was not fixed before counting."`,
  );
  expect(tell({ ...more, ceiling: 'probably', caveats: [byHand] })).toMatchInlineSnapshot(
    `"Sealed jar seed probably came up more: 88 of 100 against 62 of 100 (264 of 300 seeds and 186 of 300; 6 and 6 trays). The data fit with 17 to 35 more per 100, all beyond the 10 that was to matter. We say “probably” because the trays were placed by hand, not by lot."`,
  );
  expect(tell({ ...more, ceiling: 'cause-unclear', caveats: [soaked] })).toMatchInlineSnapshot(
    `"The trays differed: Sealed jar 26 more per 100 (17 to 35 more; 6 and 6 trays), but the soaking time also differed (Sealed jar 6 h, Paper packet 1 h). What caused it cannot be told."`,
  );
  expect(
    tell({ ...more, jar: { seeds: 100, count: 88 }, packet: { seeds: 100, count: 62 } }),
    '100 seeds each: the share is the count',
  ).toMatchInlineSnapshot(
    `"Sealed jar seed came up more: 88 of 100 against 62 of 100 (6 and 6 trays). The data fit with 17 to 35 more per 100, all beyond the 10 that was to matter."`,
  );
});

test('a difference that may or may not matter', () => {
  const more = { estimate: 12, lower: 3.1, upper: 20.8, margin: 10, verdict: 'different' } as const;
  expect(tell(more)).toMatchInlineSnapshot(
    `"Sealed jar seed came up more (12 more per 100; the data fit with 3 to 21 more; 6 and 6 trays). It may or may not be the 10 per 100 that was to matter."`,
  );
  expect(tell({ ...more, estimate: -12, lower: -20.8, upper: -3.1 })).toMatchInlineSnapshot(
    `"Sealed jar seed came up less (12 fewer per 100; the data fit with 3 to 21 fewer; 6 and 6 trays). It may or may not be the 10 per 100 that was to matter."`,
  );
  expect(tell({ ...more, fixed: false })).toMatchInlineSnapshot(
    `"Sealed jar seed came up more (12 more per 100; the data fit with 3 to 21 more; 6 and 6 trays). It may or may not be the 10 per 100 named as mattering, which was not fixed before counting."`,
  );
  expect(tell({ ...more, margin: undefined })).toMatchInlineSnapshot(
    `"Sealed jar seed came up more (12 more per 100; the data fit with 3 to 21 more; 6 and 6 trays). No smallest difference that matters was set beforehand."`,
  );
  expect(tell({ ...more, ceiling: 'probably', caveats: [many] })).toMatchInlineSnapshot(
    `"Sealed jar seed probably came up more (12 more per 100; the data fit with 3 to 21 more; 6 and 6 trays). It may or may not be the 10 per 100 that was to matter. We say “probably” because 8 comparisons were made, and with that many one such gap by luck is not surprising."`,
  );
  expect(tell({ ...more, ceiling: 'cause-unclear', caveats: [soaked] })).toMatchInlineSnapshot(
    `"The trays differed: Sealed jar 12 more per 100 (3 to 21 more; 6 and 6 trays), but the soaking time also differed (Sealed jar 6 h, Paper packet 1 h). What caused it cannot be told."`,
  );
  expect(
    tell({
      ...more,
      estimate: 3,
      lower: 1,
      upper: 5,
      comparison: { units: { treatment: 2, control: 2, kind: 'sowing' } },
    }),
    'too few for likeness',
  ).toMatchInlineSnapshot(
    `"Sealed jar seed came up more (3 more per 100; the data fit with 1 to 5 more; 2 and 2 trays). The whole range is less than the 10 per 100 that was to matter, but with fewer than 3 trays of each the two are not called alike."`,
  );
  expect(tell({ ...more, estimate: 3, lower: 1, upper: 5, fixed: false }), 'likeness not agreed').toMatchInlineSnapshot(
    `"There was a small difference (Sealed jar: 3 more per 100; 1 to 5 more; 6 and 6 trays). Had 10 per 100 been agreed beforehand, this would count as too small to matter."`,
  );
});

test('alike for this purpose', () => {
  const same = { estimate: 1, lower: -4.4, upper: 6.3, margin: 10, verdict: 'same' } as const;
  expect(tell(same)).toMatchInlineSnapshot(
    `"The two were alike for this purpose: any difference is smaller than 10 per 100 (the data fit with 4 fewer to 6 more; 6 and 6 trays). The 10 per 100 was set on 1 April 2026, before counting, as the authors state."`,
  );
  expect(tell({ ...same, upper: 11.2, ninety: [-3.2, 9.7] }), 'the 95 % range reaches beyond').toMatchInlineSnapshot(
    `"The two were alike for this purpose: any difference is smaller than 10 per 100 (by the range that judges likeness, 3 fewer to just under 10 more; 6 and 6 trays). The 10 per 100 was set on 1 April 2026, before counting, as the authors state."`,
  );
  expect(tell({ ...same, estimate: 3, lower: 0.8, upper: 5.2 }), 'off zero').toMatchInlineSnapshot(
    `"There was a small difference (Sealed jar: 3 more per 100; 1 to 5 more; 6 and 6 trays), less than the 10 that was to matter."`,
  );
  expect(tell({ ...same, ceiling: 'probably', caveats: [byHand] })).toMatchInlineSnapshot(
    `"The two were probably alike for this purpose: any difference is smaller than 10 per 100 (the data fit with 4 fewer to 6 more; 6 and 6 trays). The 10 per 100 was set on 1 April 2026, before counting, as the authors state. We say “probably” because the trays were placed by hand, not by lot."`,
  );
  expect(tell({ ...same, ceiling: 'cause-unclear', caveats: [soaked] })).toMatchInlineSnapshot(
    `"No difference was seen (Sealed jar: 1 more per 100; 4 fewer to 6 more; 6 and 6 trays), but the soaking time also differed (Sealed jar 6 h, Paper packet 1 h), which could hide one."`,
  );
  expect(
    tell({ ...same, estimate: 3, lower: 0.8, upper: 5.2, ceiling: 'cause-unclear', caveats: [soaked] }),
    'off zero, cause unclear',
  ).toMatchInlineSnapshot(
    `"The trays differed: Sealed jar 3 more per 100 (1 to 5 more; 6 and 6 trays), but the soaking time also differed (Sealed jar 6 h, Paper packet 1 h). What caused it cannot be told."`,
  );
  expect(tell({ ...same, verdict: 'unclear', fixed: false }), 'margin not fixed beforehand').toMatchInlineSnapshot(
    `"No difference was shown (Sealed jar: 1 more per 100; 4 fewer to 6 more; 6 and 6 trays). Had 10 per 100 been agreed beforehand, this would count as alike."`,
  );
  expect(
    tell({ ...same, caveats: [makeCaveat('no-room', { weight: 'note' })], comparison: { ceilingFrom: [] } }),
    'nearly all came up',
  ).toMatchInlineSnapshot(
    `"The two were alike for this purpose: any difference is smaller than 10 per 100 (the data fit with 4 fewer to 6 more; 6 and 6 trays). The 10 per 100 was set on 1 April 2026, before counting, as the authors state. Nearly everything came up in both, so this seed had no room to show a gain. One might still show in older seed or colder soil."`,
  );
});

test('a difference could not be shown', () => {
  const unclear = { estimate: 4, lower: -9.2, upper: 17.4, margin: 10 } as const;
  const settle = { wouldSettle: { units: 8, difference: 10 } };
  expect(tell({ ...unclear, comparison: settle })).toMatchInlineSnapshot(
    `"A difference could not be shown (Sealed jar: 4 more per 100; 6 and 6 trays). That is not proof of sameness: the data fit with anything from 9 fewer to 17 more per 100. At this trial’s tray-to-tray spread, about 8 trays of each would settle a difference of 10 per 100."`,
  );
  expect(tell({ ...unclear, estimate: 0 }), 'level counts').toMatchInlineSnapshot(
    `"A difference could not be shown (the two were level; 6 and 6 trays). That is not proof of sameness: the data fit with anything from 9 fewer to 17 more per 100."`,
  );
  expect(tell({ ...unclear, estimate: -4, lower: -17.4, upper: 0 }), 'one limit exactly zero').toMatchInlineSnapshot(
    `"A difference could not be shown (Sealed jar: 4 fewer per 100; 6 and 6 trays). That is not proof of sameness: the data fit with anything from 0 to 17 fewer per 100."`,
  );
  expect(tell({ ...unclear, lower: null, upper: null }), 'no range').toMatchInlineSnapshot(
    `"A difference could not be shown (Sealed jar: 4 more per 100; 6 and 6 trays). All trays of a kind gave the same figure, so their ordinary spread is not known."`,
  );
  expect(tell({ ...unclear, ceiling: 'cause-unclear', caveats: [soaked] })).toMatchInlineSnapshot(
    `"A difference could not be shown (Sealed jar: 4 more per 100; 6 and 6 trays). That is not proof of sameness: the data fit with anything from 9 fewer to 17 more per 100. Besides, the soaking time also differed (Sealed jar 6 h, Paper packet 1 h), which could hide a difference or make one."`,
  );
  expect(
    tell({ ...unclear, ceiling: 'probably', caveats: [byHand] }),
    'nothing is claimed, so no “probably”',
  ).toMatchInlineSnapshot(
    `"A difference could not be shown (Sealed jar: 4 more per 100; 6 and 6 trays). That is not proof of sameness: the data fit with anything from 9 fewer to 17 more per 100."`,
  );
  expect(
    tell({ ...unclear, lower: -4, upper: 6, comparison: { units: { treatment: 2, control: 2, kind: 'sowing' } } }),
    'inside the margin with too few units',
  ).toMatchInlineSnapshot(
    `"A difference could not be shown (Sealed jar: 4 more per 100; 2 and 2 trays). That is not proof of sameness: the data fit with anything from 4 fewer to 6 more per 100. The whole range is smaller than 10 per 100, but with fewer than 3 trays of each the two are not called alike."`,
  );
  expect(tell({ ...unclear, ...lowCounts, estimate: 0 }), 'hardly any').toMatchInlineSnapshot(
    `"So few seeds came up (2 of 150 and 2 of 150; 6 and 6 trays) that the finding is low germination in both."`,
  );
});

test('one tray of each, or of one', () => {
  const one = {
    estimate: 8,
    lower: -13,
    upper: 28,
    verdict: 'untestable',
    ceiling: 'cause-unclear',
    caveats: [makeCaveat('one-sowing', { weight: 'serious' })],
    jar: { units: 1, count: 22, seeds: 25, estimate: 88 },
    packet: { units: 1, count: 20, seeds: 25, estimate: 80 },
    comparison: { units: { treatment: 1, control: 1, kind: 'sowing' }, repeatWith: { units: 6, difference: 10 } },
  } as const;
  expect(tell(one)).toMatchInlineSnapshot(
    `"Cannot tell. 22 of 25 seeds came up in the Sealed jar tray and 20 of 25 in the Paper packet tray. With one tray of each, the treatment cannot be told from ordinary tray-to-tray luck. A first look, worth repeating with 6 trays of each, enough for a difference of 10 per 100."`,
  );
  expect(tell({ ...one, caveats: [...one.caveats, soaked] })).toMatchInlineSnapshot(
    `"Cannot tell. 22 of 25 seeds came up in the Sealed jar tray and 20 of 25 in the Paper packet tray. With one tray of each, the treatment cannot be told from ordinary tray-to-tray luck. Besides, the soaking time also differed (Sealed jar 6 h, Paper packet 1 h). A first look, worth repeating with 6 trays of each, enough for a difference of 10 per 100."`,
  );
  expect(
    tell({
      ...one,
      packet: { units: 4, count: 80, seeds: 100, estimate: 80 },
      comparison: { units: { treatment: 1, control: 4, kind: 'sowing' } },
    }),
  ).toMatchInlineSnapshot(
    `"Cannot tell. 22 of 25 seeds came up in the Sealed jar tray and 80 of 100 in the 4 Paper packet trays. With only one tray of Sealed jar, the treatment cannot be told from ordinary tray-to-tray luck. A first look, worth repeating with several trays of each."`,
  );
  expect(
    tell({ ...one, estimate: null, jar: { units: 0, count: null, seeds: null, estimate: null } }),
    'nothing left to count',
  ).toMatchInlineSnapshot(
    `"Cannot tell. For at least one of the two there is no number to compare. A first look, worth repeating with 6 trays of each, enough for a difference of 10 per 100."`,
  );
});

test('the unit is named as it stood on the bench', () => {
  const more = { estimate: 12, lower: 3.1, upper: 20.8, margin: 10, verdict: 'different' } as const;
  const units = (treatment: number, control: number, kind: 'sowing' | 'tray' | 'batch' | 'block') => ({
    comparison: { units: { treatment, control, kind } },
  });
  const sowing = { container: 'petri dishes', assignment: 'random', treated: 'each-sowing', block: 'shelf' } as const;
  expect(tell({ ...more, ...units(4, 5, 'sowing'), trial: { sowing } })).toContain('4 and 5 dishes');
  expect(tell({ ...more, ...units(3, 4, 'batch'), trial: { sowing } })).toContain('3 and 4 batches');
  expect(tell({ ...more, ...units(6, 6, 'block'), trial: { sowing } })).toContain('both in each of 6 shelves');
  expect(
    tell({ ...more, comparison: { lot: 'all', lots: ['leek'], units: { treatment: 5, control: 5, kind: 'block' } } }),
  ).toContain('both in each of 5 lots');
  expect(tell({ ...more, ...units(3, 3, 'tray'), trial: { sowing: { ...sowing, container: null } } })).toContain(
    '3 and 3 trays',
  );
});

test('the lot, and how long it was stored, open the sentence', () => {
  const more = { estimate: 12, lower: 3.1, upper: 20.8, margin: 10, verdict: 'different' } as const;
  const lots = [makeLot('leek'), makeLot('cress', 'cress', 'Lepidium sativum')];
  expect(tell({ ...more, trial: { lots } })).toMatch(/^Leek: Sealed jar seed came up more/);
  expect(tell({ ...more, trial: { lots }, comparison: { lot: 'all', lots: ['leek', 'cress'] } })).toMatchInlineSnapshot(
    `"Together, in these 2 lots: Sealed jar seed came up more (12 more per 100; the data fit with 3 to 21 more; 6 and 6 trays). It may or may not be the 10 per 100 that was to matter."`,
  );
  const stored = { stored: 1, interval: null } as const;
  expect(
    tell({
      ...more,
      verdict: 'unclear',
      trial: { status: 'growing' },
      comparison: { stored: 1 },
      jar: { ...stored },
      packet: { ...stored },
    }),
  ).toMatch(/^So far, after 1 year of storage: A difference could not be shown/);
});

test('a long label reads as a name', () => {
  const treatments = [
    { id: 'packet', label: 'Paper packet in the shed', control: true },
    { id: 'jar', label: 'Sealed jar with silica gel in the fridge', control: false },
  ].map((each) => ({ ...each, soakHours: null, handling: null, temperature: null, moisture: null }));
  expect(
    tell({ estimate: 12, lower: 3.1, upper: 20.8, margin: 10, verdict: 'different', trial: { treatments } }),
  ).toMatch(/^“Sealed jar with silica gel in the fridge” seed came up more/);
});
