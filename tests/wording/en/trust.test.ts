import { expect, test } from 'vitest';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makePlan } from '../../support/make-plan.ts';
import { makeAnalysis, makeResult } from '../../support/make-result.ts';
import { germinationTrial, makeOutcome, makeSowing, makeTreatment } from '../../support/make-trial.ts';

const words = wordsFor('en');
const counts = {
  packet: [
    [40, 50],
    [42, 50],
  ],
  jar: [
    [45, 50],
    [48, 50],
  ],
} as const;
const six = { outcomes: [makeOutcome({ matters: 10 })] };

const answers = (trial: Trial, repeatedBy?: readonly string[]) =>
  words
    .trust(trial, publishedAnalysis(trial, words), repeatedBy)
    .map(({ question, answerWords, detail }) => `${question} ${answerWords}. ${detail}`)
    .join('\n');
const answer = (id: string, trial: Trial, repeatedBy?: readonly string[]) =>
  words.trust(trial, publishedAnalysis(trial, words), repeatedBy).find((row) => row.id === id);

test('a trial without a blemish', () => {
  expect(answers(germinationTrial(counts, six))).toMatchInlineSnapshot(`
    "Separate trays of each? yes. 2 Paper packet trays and 2 Sealed jar trays.
    Placed at random? yes. The places of the trays were drawn by lot.
    Counted without knowing which is which? yes. As the authors state.
    Same lot, same soak, same day? yes. All were sown on 4 April 2026. No soak is recorded.
    Question and measure fixed beforehand? partly. On 1 April 2026, as the authors state.
    All results shown? yes. Every measure in the files is shown, and the raw counts can be fetched.
    Anything left out? no. Every tray in the files counts.
    Repeated by others? not recorded. No repeat by others is known here. Yours would be the first."
  `);
});

test('a trial of one tray each, nothing recorded', () => {
  const bare = germinationTrial(
    { packet: [[40, 50]], jar: [[45, 50]] },
    {
      sowing: { container: null, assignment: 'unknown', treated: 'unknown', block: null },
      scoring: { germinated: null, blind: 'unknown', days: [], counts: 'cumulative' },
      fixedBeforehand: null,
      outcomes: [],
      sown: null,
    },
  );
  const unknown = { ...bare, sowings: bare.sowings.map((sowing) => ({ ...sowing, sown: null })) };
  expect(answers(unknown)).toMatchInlineSnapshot(`
    "Separate sowings of each? no. 1 Paper packet sowing and 1 Sealed jar sowing.
    Placed at random? not recorded. How the sowings were placed is not recorded.
    Counted without knowing which is which? not recorded. It is not recorded.
    Same lot, same soak, same day? not recorded. The sowing days are not all recorded.
    Question and measure fixed beforehand? not recorded. No plan was frozen, and no date is stated.
    All results shown? yes. Every measure in the files is shown, and the raw counts can be fetched.
    Anything left out? no. Every sowing in the files counts.
    Repeated by others? not recorded. No repeat by others is known here. Yours would be the first."
  `);
});

test('what is not recorded is never taken for a yes', () => {
  const trial = germinationTrial(counts, six);
  const { assignment, ...sowing } = trial.sowing;
  expect(assignment).toBe('random');
  expect(answer('random', { ...trial, sowing: { ...sowing, assignment: 'unknown' } })?.answer).toBe('not recorded');
  expect(answer('random', { ...trial, sowing: { ...sowing, assignment: 'by-hand' } })?.answer).toBe('no');
  expect(answer('blind', { ...trial, scoring: { ...trial.scoring, blind: 'unknown' } })?.answer).toBe('not recorded');
  expect(answer('separate', { ...trial, sowing: { ...trial.sowing, treated: 'unknown' } })?.answer).toBe('partly');
  expect(answer('separate', { ...trial, sowing: { ...trial.sowing, treated: 'at-once' } })?.detail).toContain(
    'one batch',
  );
  expect(answer('fixed', { ...trial, fixedBeforehand: null })?.answer).toBe('not recorded');
  expect(answer('fixed', { ...trial, fixedBeforehand: '2026-05-01' })?.answer).toBe('no');
});

test('sowing days and soaks that differ are said', () => {
  const trial = germinationTrial(counts, { ...six, varies: 'storage' });
  const late = trial.sowings.map((sowing) =>
    sowing.treatment === 'jar' ? { ...sowing, sown: '2026-04-06', soakHours: 6 } : { ...sowing, soakHours: 1 },
  );
  expect(answer('alike', { ...trial, sowings: late })).toMatchObject({
    answer: 'no',
    detail: expect.stringMatching(/sown only on 6 April 2026.*soaking time also differed/),
  });
});

test('a kept-apart key, what was left out, and repeats', () => {
  const trial = germinationTrial(
    { packet: counts.packet, jar: [...counts.jar, [2, 50]] },
    {
      ...six,
      keyKeptApart: true,
      repeats: 'https://example.org/trials/leek/',
      events: [{ day: 6, date: null, sowings: ['leek-jar-3'], what: 'dropped', action: 'left-out' }],
    },
  );
  expect(answer('blind', trial)?.detail).toBe('The key was kept apart until the last count.');
  expect(answer('left-out', trial)).toMatchObject({ answer: 'yes', detail: expect.stringContaining('leek-jar-3') });
  expect(answer('repeated', trial)).toMatchObject({ answer: 'partly' });
  expect(answer('repeated', trial, ['Peas at school'])).toMatchObject({
    answer: 'yes',
    detail: 'Also asked by Peas at school.',
  });
});

test('a frozen plan, and an outcome of it that was dropped', () => {
  const trial = germinationTrial(counts, six);
  const planned = { ...trial, plan: makePlan(trial) };
  expect(answer('fixed', planned)?.answer).toBe('yes');
  const dropped = {
    ...trial,
    outcomes: [makeOutcome({ id: 'height', measure: 'trait', column: 'height', matters: 5 }), ...trial.outcomes],
  };
  expect(answer('all-shown', { ...trial, plan: makePlan(dropped) })).toMatchObject({
    answer: 'no',
    detail: 'The plan also had height.',
  });
});

test('a growing trial says that nothing is compared yet', () => {
  const sowings = [1, 2].map((each) => makeSowing(`s${each}`, 'jar', { treatment: null }));
  const growing = { ...germinationTrial({}, { status: 'growing' }), sowings };
  expect(answer('separate', growing)?.detail).toBe('2 trays; which is which is kept apart until the last count.');
  expect(answer('all-shown', growing)).toMatchObject({ answer: 'no', detail: 'Nothing has been compared yet.' });
});

const WAYS = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
const seven = germinationTrial(Object.fromEntries(WAYS.map((way) => [way, counts.jar])), {
  ...six,
  treatments: WAYS.map((way, at) => makeTreatment(way, { control: at === 0 })),
});

test('many treatments of as many trays each are not listed by name', () => {
  expect(answer('separate', seven)?.detail).toBe('2 trays of each of 7 treatments.');
  const other = { ...seven, sowings: seven.sowings.slice(1) };
  expect(answer('separate', other)?.detail).toContain('2 b trays, 2 c trays');
});

test('what was treated separately is counted for one test of stored seed, not for all', () => {
  const detail = (stored: number | null) => {
    const units = { treatment: 2, control: 2, kind: 'batch' } as const;
    const comparisons = [makeComparison({ estimate: 1, parts: { units, stored } })];
    const analysis = makeAnalysis({ results: [makeResult({ comparisons })] });
    return words.trust(germinationTrial(counts, six), analysis).find(({ id }) => id === 'separate')?.detail;
  };
  expect(detail(2)).toContain('What was treated separately: 2 and 2 batches at a test.');
  expect(detail(null)).toContain('What was treated separately: 2 and 2 batches.');
});
