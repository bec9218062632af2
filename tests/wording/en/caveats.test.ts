import { expect, test } from 'vitest';
import type { CaveatId } from '../../../src/analysis/analysis.ts';
import { makeCaveat as caveatOf } from '../../../src/analysis/caveats/make-caveat.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeAnalysis } from '../../support/make-result.ts';
import { makeLot, makeTrial } from '../../support/make-trial.ts';
import { EXAMPLES } from './caveat-examples.ts';

const words = wordsFor('en');
const trial = makeTrial({
  sowing: { container: 'tray', assignment: 'random', treated: 'each-sowing', block: 'shelf' },
});
const analysis = makeAnalysis();

const of = <Id extends CaveatId>(id: Id) =>
  EXAMPLES[id].map((evidence) =>
    words.caveat(trial, analysis, caveatOf(id, { outcome: 'germination', treatment: 'jar' }, evidence)),
  );
const shown = (ids: readonly CaveatId[]) =>
  ids.flatMap((id) => of(id).map(({ reason, sentence }) => `${id}\n  … ${reason}\n  ${sentence}`)).join('\n');
const ids = (weight: string) =>
  (Object.keys(EXAMPLES) as CaveatId[]).filter((id) => caveatOf(id, {}, EXAMPLES[id][0] as never).weight === weight);

test('serious caveats', () => {
  expect(shown(ids('serious'))).toMatchInlineSnapshot(`
    "one-sowing
      … there was only one tray of each
      There was only one tray of each. Trays differ by luck even when they are treated alike, and with one of a kind that luck cannot be told from the treatment.
    one-sowing
      … only one tray of Sealed jar entered the comparison
      Only one tray of Sealed jar entered the comparison. Trays differ by luck even when they are treated alike, and with one of a kind that luck cannot be told from the treatment.
    one-sowing
      … no tray of Paper packet could be counted
      No tray of Paper packet could be counted. Trays differ by luck even when they are treated alike, and with one of a kind that luck cannot be told from the treatment.
    one-batch
      … all 4 Sealed jar trays came from one batch (j1)
      All 4 Sealed jar trays came from one batch (j1). Whatever befell that one batch befell all of them, so the luck of the batch cannot be told from Sealed jar.
    one-batch
      … all 4 Sealed jar trays were treated in one go
      All 4 Sealed jar trays were treated in one go. Whatever befell that one batch befell all of them, so the luck of the batch cannot be told from Sealed jar.
    one-batch
      … there was only one Sealed jar tray stored 2 years
      There was only one Sealed jar tray stored 2 years. Its luck cannot be told from Sealed jar.
    confounded-place
      … the Sealed jar trays stood only at “lower shelf” and the Paper packet trays only at “upper shelf” and “window”
      The Sealed jar trays stood only at “lower shelf” and the Paper packet trays only at “upper shelf” and “window”. Whatever else was different there may have made a difference, or hidden one.
    confounded-block
      … the Sealed jar trays stood only in shelf “A” and the Paper packet trays only in shelf “B”
      The Sealed jar trays stood only in shelf “A” and the Paper packet trays only in shelf “B”. Whatever else was different there may have made a difference, or hidden one.
    confounded-position
      … the Sealed jar trays stood only in row 1 and 2 and the Paper packet trays only in row 3
      The Sealed jar trays stood only in row 1 and 2 and the Paper packet trays only in row 3. Whatever else was different there may have made a difference, or hidden one.
    confounded-scorer
      … the Sealed jar trays were counted only by Mara and the Paper packet trays only by “jon”
      The Sealed jar trays were counted only by Mara and the Paper packet trays only by “jon”. Whatever else was different there may have made a difference, or hidden one.
    confounded-sowing-day
      … the Sealed jar trays were sown only on 4 April 2026 and the Paper packet trays only on 5 April 2026
      The Sealed jar trays were sown only on 4 April 2026 and the Paper packet trays only on 5 April 2026. Whatever else was different there may have made a difference, or hidden one.
    confounded-count-day
      … the Sealed jar trays were last checked on day 14 and the Paper packet trays on day 15
      The Sealed jar trays were last checked on day 14 and the Paper packet trays on day 15. Whatever else was different there may have made a difference, or hidden one.
    unequal-soak
      … the soaking time also differed (Sealed jar 5 to 6 h, Paper packet not recorded)
      The soaking time also differed (Sealed jar 5 to 6 h, Paper packet not recorded). Soaking alone changes how fast and how well seed comes up.
    unequal-soak
      … the soaking time also differed (Sealed jar 6 h, Paper packet 1 h)
      The soaking time also differed (Sealed jar 6 h, Paper packet 1 h). Soaking alone changes how fast and how well seed comes up.
    unequal-handling
      … some trays had something done to them that others had not (Sealed jar 3 of 6, Paper packet 0 of 6: “watered twice”)
      Some trays had something done to them that others had not (Sealed jar 3 of 6, Paper packet 0 of 6: “watered twice”). That, rather than the treatment, may have made a difference.
    checked-on-different-days
      … the trays of Sealed jar and Paper packet were not all checked on the same days
      The trays of Sealed jar and Paper packet were not all checked on the same days (s1 missed day 4). A seedling is seen only when someone looks, so unequal looks can make one kind seem faster."
  `);
});

test('cautions', () => {
  expect(shown(ids('caution'))).toMatchInlineSnapshot(`
    "not-randomised
      … the trays were placed by hand, not by lot
      The trays were placed by hand, not by lot. A better place may then have gone to one kind more often.
    not-randomised
      … the trays were placed in turn, not by lot
      The trays were placed in turn, not by lot. A better place may then have gone to one kind more often.
    not-randomised
      … it is not recorded whether the trays were placed by lot
      It is not recorded whether the trays were placed by lot. A better place may then have gone to one kind more often.
    positions-unbalanced
      … Sealed jar and Paper packet were not spread evenly over the places
      Sealed jar and Paper packet were not spread evenly over the places (Sealed jar trays and Paper packet trays: “left” 5 and 1 and “right” 1 and 5). Of 100 random layouts about 8 would be as uneven.
    positions-unbalanced
      … Sealed jar and Paper packet were not spread evenly over the rows
      Sealed jar and Paper packet were not spread evenly over the rows (Sealed jar trays and Paper packet trays: “1” 4 and 0).
    batch-unknown
      … it is not recorded which trays were treated together
      Seed was treated in batches, but it is not recorded which trays share one. What befell one batch may then look like an effect of the treatment.
    batch-unknown
      … it is not recorded whether the seed of each tray was treated by itself
      It is not recorded whether the seed of each tray was treated by itself or all in one go. If all in one go, the luck of that one batch cannot be told from the treatment.
    outcomes-not-fixed
      … what was to be compared was not listed beforehand
      What was to be compared was not listed beforehand. With many days and measures to choose from, one that looks good by luck is easily found.
    outcomes-not-fixed
      … nothing shows that what was to be compared was fixed before the first count
      Nothing shows that what was to be compared was fixed before the first count. With many days and measures to choose from, one that looks good by luck is easily found.
    outcomes-not-fixed
      … what was to be compared was fixed on 10 April 2026, not before the first count on 9 April 2026
      What was to be compared was fixed on 10 April 2026, not before the first count on 9 April 2026. With many days and measures to choose from, one that looks good by luck is easily found.
    outcomes-not-fixed
      … the plan was changed after it had been fixed
      The plan was changed after it had been fixed. With many days and measures to choose from, one that looks good by luck is easily found.
    outcomes-not-fixed
      … this was not in the plan
      This was not in the plan. With many days and measures to choose from, one that looks good by luck is easily found.
    plan-changed
      … the plan was not kept in 4 points
      The plan said day 14; the count is of day 15. t7 was planned and left out: knocked over. The counting without knowing which is which: the plan said “yes”; now it is “no”. And 1 more change.
    still-germinating
      … seeds were still coming up when counting stopped
      Seeds of Sealed jar were still coming up when counting stopped: 6 of 100 between day 12 and day 14. A later count might read otherwise.
    sowings-left-out
      … 1 tray was left out
      Tray T7 (knocked over on day 5) was left out. With it in, the finding does not change.
    sowings-left-out
      … 2 trays were left out
      Trays T7 (not checked on the day) and T8 (not measured on the day) were left out. With them in, the finding about Sealed jar changes to “not settled”. What the finding about Paper packet would be with them in could not be worked out.
    many-comparisons
      … 8 comparisons were made, and with that many one such gap by luck is not surprising
      8 comparisons were made. With that many, one such gap by luck is not surprising.
    unequal-spread
      … the Sealed jar trays vary more than the Paper packet trays
      The Sealed jar trays vary more than the Paper packet trays. The range given takes one spread for both.
    unequal-trays
      … the trays held very unequal numbers of seeds (20 to 100)
      The trays held very unequal numbers of seeds, from 20 to 100. The largest then weigh most.
    incomplete-blocks
      … there were only two shelves, too few to compare within them
      There were only two shelves, too few to compare within them. So the shelves were set aside, and differences between them count as ordinary spread.
    incomplete-blocks
      … not every shelf held both kinds (C did not)
      Not every shelf held both kinds (C did not). So the shelves were set aside, and differences between them count as ordinary spread.
    incomplete-blocks
      … for 2 trays no shelf is named
      For 2 trays no shelf is named. So the shelves were set aside, and differences between them count as ordinary spread.
    seeds-by-mass
      … seeds were weighed, not counted
      In 2 trays seeds were weighed, not counted (350 seeds to the gram). The number sown is then only about right.
    no-seed-number
      … it is not known how many seeds were sown in s1 and s2
      It is not known how many seeds were sown in s1 and s2. Counts are shown; nothing is compared with them."
  `);
});

test('notes', () => {
  expect(shown(ids('note'))).toMatchInlineSnapshot(`
    "few-units
      … there were only 3 trays of each
      There were only 3 trays of each. So few show a difference only where it is large.
    few-units
      … there were only 2 and 3 batches
      There were only 2 and 3 batches. So few show a difference only where it is large.
    few-seeds
      … only 30 seeds of Sealed jar were sown
      Only 30 seeds of Sealed jar were sown. One seed more or less then moves the share by 3 of 100.
    not-blind
      … whoever counted knew which tray was which
      Whoever counted knew which tray was which. Hope can then lean on the count.
    not-blind
      … it is not recorded whether whoever counted knew which tray was which
      It is not recorded whether whoever counted knew which tray was which. Hope can then lean on the count.
    no-margin
      … no smallest difference that matters was set
      No smallest difference that matters was set. So nothing here can be called alike.
    more-varied-than-luck
      … trays of a kind differ more than seed luck explains
      Trays of a kind differ more than seed luck explains: look for a mix-up, mould, an edge. The range given allows for it.
    more-varied-than-luck
      … trays of a kind differ more than seed luck explains
      Trays of a kind differ more than seed luck explains (Sealed jar trays from 60 to 92 of 100, where luck alone seldom gives a gap above 22): look for a mix-up, mould, an edge. The range given allows for it.
    more-alike-than-luck
      … the trays agree more closely than seed luck allows
      The trays of a kind agree more closely than seed luck usually allows (φ 0.08). Is there a reason, such as seeds picked by size, or one count looked up while making the next?
    near-limit
      … nearly all seeds of Sealed jar came up
      Nearly all seeds of Sealed jar came up (197 of 200). So close to 100 %, a range is only roughly right.
    near-limit
      … hardly any seeds of Sealed jar came up
      Hardly any seeds of Sealed jar came up (at the start: 3 of 250). So close to 0 %, a range is only roughly right.
    hardly-any
      … hardly any seeds came up (1 of 150 and 2 of 150)
      Hardly any seeds came up: 1 of 150 and 2 of 150. That is too few to compare.
    no-room
      … nearly everything came up in both
      Nearly everything came up in both: at least 96 of 100 in every tray. So this seed had no room to show a gain.
    no-room
      … everything came up in both
      Everything came up in both. So this seed had no room to show a gain.
    coarse-checks
      … the checks were too far apart
      The checks were far apart: 81 of 100 seedlings of Sealed jar came up between those of day 3 and day 8. On which of those days, nobody saw.
    coarse-readings
      … every tray of a kind has the same reading
      Every tray of a kind has the same reading (Sealed jar 5.0 days, Paper packet 5.0 days). Readings are too coarse to show how trays differ.
    lots-differ
      … the lots do not agree
      The lots do not agree (Leek 12 more per 100 and cress 1 fewer per 100). One figure for all of them hides that.
    ungerminated-not-sorted
      … seeds that did not come up were not looked at
      36 of 300 seeds did not come up. Whether they were dead or only resting was not looked at.
    tested-straight-away
      … the seed was sown straight after the treatment
      The question is about keeping seed, but it was sown straight after the treatment. How well it keeps, only a later sowing can show.
    start-moisture-unknown
      … moisture at the start was not measured
      Moisture at the start was not measured, so how dry the seed is now is not known.
    two-changes
      … the treatments differ in more than one thing (soaking and storage)
      The treatments differ in more than one thing (soaking and storage). Which of them made a difference cannot be told.
    survivors-only
      … only seedlings that came up could be measured
      Only seedlings that came up could be measured (Sealed jar 131 from 150 seeds and Paper packet 128 from 150 seeds). Seeds that stayed below have no size.
    one-lot
      … only one lot of leek was sown
      Only one lot of leek was sown. Another harvest, another age or another crop may behave otherwise.
    batches-span-blocks
      … batches were spread over several shelves
      1 batch stood in several shelves. The batch is what was treated, so it is what is compared, and the shelves are set aside.
    half-before-first-check
      … half were up before anyone looked
      In 2 trays half of what came up was up at the first check, on day 5. When, nobody saw, so the time is not given.
    half-before-first-check
      … a quarter were up before anyone looked
      In 1 tray a quarter of what came up was up at the first check, on day 5. When, nobody saw, so the time is not given.
    nothing-came-up
      … nothing of Sealed jar came up
      Nothing of Sealed jar came up (150 seeds in 3 trays). The seed may be dead, resting, or too cold or wet; a test of the same seed in better conditions would tell.
    nothing-came-up
      … nothing of Sealed jar came up
      Nothing of Sealed jar came up. The seed may be dead, resting, or too cold or wet; a test of the same seed in better conditions would tell.
    no-half-life
      … no half-life of Sealed jar could be given
      Sealed jar seed: 95 of 100 at the start, 60 of 100 after 2 years. Too few test dates for a line (2 test dates; it needs three).
    no-half-life
      … no half-life of Sealed jar could be given
      Sealed jar seed fell too steeply to place (95 of 100 at the start, 60 of 100 after 2 years): at all tests but one, all of it or none of it came up, so when it was at half is not known.
    no-half-life
      … no half-life of Sealed jar could be given
      Sealed jar seed shows no fall (95 of 100 at the start, 60 of 100 after 2 years). That is no proof that it keeps.
    no-half-life
      … no half-life of Sealed jar could be given
      Sealed jar seed has hardly fallen (95 of 100 at the start, 60 of 100 after 2 years): at all tests but one, all of it came up, which is too little to place a line.
    no-half-life
      … no half-life of Sealed jar could be given
      No Sealed jar seed came up at any test, so how long it keeps cannot be told.
    no-half-life
      … no half-life of Sealed jar could be given
      No line could be put through the tests of Sealed jar seed (95 of 100 at the start, 60 of 100 after 2 years).
    no-half-life
      … no half-life of Sealed jar could be given
      By the line through the tests, Sealed jar seed has not yet fallen to half (95 of 100 at the start, 60 of 100 after 2 years). No half-life is given, for no forecast is made.
    no-half-life
      … no half-life of Sealed jar could be given
      By the line through the tests, Sealed jar seed was below half at the first test already (95 of 100 at the start, 60 of 100 after 2 years), so when it was at half is not known.
    no-half-life
      … no half-life of Sealed jar could be given
      Sealed jar seed came down to about half (95 of 100 at the start, 60 of 100 after 2 years), but the tests scatter so much that the fall is not told from none. No half-life is given.
    no-half-life
      … no half-life of Sealed jar could be given
      No test of Sealed jar seed gives a share that came up."
  `);
});

test.each(Object.keys(EXAMPLES) as CaveatId[])('%s reads as a clause and as a sentence', (id) => {
  for (const { reason, sentence } of of(id)) {
    expect(reason).not.toMatch(/[.?!]$/);
    expect(sentence).toMatch(/^[“\p{Lu}\d].*[.?]$/u);
    expect(`${reason} ${sentence}`).not.toMatch(/undefined|NaN|null|significan|% more|  |\.\.|−/);
    expect(words.caveatName(id).length).toBeGreaterThan(3);
  }
});

test('a caveat of one lot among several names it', () => {
  const lots = [makeLot('leek'), makeLot('cress', 'cress', 'Lepidium sativum')];
  const caveat = caveatOf('few-seeds', { lot: 'cress', treatment: 'jar' }, { seeds: 30 });
  expect(words.caveat({ ...trial, lots }, analysis, caveat).sentence).toMatch(/^Cress: Only 30 seeds of Sealed jar/);
});
