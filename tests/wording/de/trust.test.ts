import { expect, test } from 'vitest';
import { publishedAnalysis } from '../../../src/wording/published-analysis.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeComparison } from '../../support/make-comparison.ts';
import { makePlan } from '../../support/make-plan.ts';
import { makeAnalysis, makeResult } from '../../support/make-result.ts';
import { germinationTrial, makeOutcome, makeSowing, makeTreatment } from '../../support/make-trial.ts';

const words = wordsFor('de');
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
    "Eigene Schalen für jede Behandlung? ja. 2 Schalen „Paper packet“ und 2 Schalen „Sealed jar“.
    Durch Los aufgestellt? ja. Die Plätze der Schalen wurden ausgelost.
    Gezählt, ohne zu wissen, was was ist? ja. So geben es die Beteiligten an.
    Gleiche Partie, gleich lang eingeweicht, gleicher Tag? ja. Alles wurde am 4. April 2026 gesät. Ein Einweichen ist nicht aufgezeichnet.
    Frage und Messgröße vorher festgelegt? teilweise. Am 1. April 2026, wie die Beteiligten angeben.
    Alle Ergebnisse gezeigt? ja. Jede Messgröße in den Dateien ist gezeigt, und die Zählungen selbst kann man herunterladen.
    Etwas weggelassen? nein. Alle Schalen in den Dateien zählen mit.
    Von anderen wiederholt? nicht aufgezeichnet. Hier ist keine Wiederholung durch andere bekannt. Ihre wäre die erste."
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
    "Eigene Aussaaten für jede Behandlung? nein. 1 Aussaat „Paper packet“ und 1 Aussaat „Sealed jar“.
    Durch Los aufgestellt? nicht aufgezeichnet. Wie die Aussaaten aufgestellt wurden, ist nicht aufgezeichnet.
    Gezählt, ohne zu wissen, was was ist? nicht aufgezeichnet. Das ist nicht aufgezeichnet.
    Gleiche Partie, gleich lang eingeweicht, gleicher Tag? nicht aufgezeichnet. Die Tage der Aussaat sind nicht alle aufgezeichnet.
    Frage und Messgröße vorher festgelegt? nicht aufgezeichnet. Es wurde kein Plan eingefroren und kein Datum angegeben.
    Alle Ergebnisse gezeigt? ja. Jede Messgröße in den Dateien ist gezeigt, und die Zählungen selbst kann man herunterladen.
    Etwas weggelassen? nein. Alle Aussaaten in den Dateien zählen mit.
    Von anderen wiederholt? nicht aufgezeichnet. Hier ist keine Wiederholung durch andere bekannt. Ihre wäre die erste."
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
    'einer einzigen Charge',
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
    detail: expect.stringMatching(/nur am 6\.\u00A0April 2026 gesät.*Dauer des Einweichens war verschieden/),
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
  expect(answer('blind', trial)?.detail).toBe('Der Schlüssel wurde bis zur letzten Auszählung getrennt verwahrt.');
  expect(answer('left-out', trial)).toMatchObject({ answer: 'yes', detail: expect.stringContaining('leek-jar-3') });
  expect(answer('repeated', trial)).toMatchObject({ answer: 'partly' });
  expect(answer('repeated', trial, ['Erbsen in der Schule'])).toMatchObject({
    answer: 'yes',
    detail: 'Dasselbe fragte auch: Erbsen in der Schule.',
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
    detail: 'Im Plan stand außerdem: height.',
  });
});

test('a growing trial says that nothing is compared yet', () => {
  const sowings = [1, 2].map((each) => makeSowing(`s${each}`, 'jar', { treatment: null }));
  const growing = { ...germinationTrial({}, { status: 'growing' }), sowings };
  expect(answer('separate', growing)?.detail).toBe(
    '2 Schalen; was was ist, bleibt bis zur letzten Auszählung getrennt verwahrt.',
  );
  expect(answer('all-shown', growing)).toMatchObject({ answer: 'no', detail: 'Noch ist nichts verglichen.' });
});

const WAYS = ['a', 'b', 'c', 'd', 'e', 'f', 'g'];
const seven = germinationTrial(Object.fromEntries(WAYS.map((way) => [way, counts.jar])), {
  ...six,
  treatments: WAYS.map((way, at) => makeTreatment(way, { control: at === 0 })),
});

test('viele Behandlungen mit je gleich vielen Schalen werden nicht aufgezählt', () => {
  expect(answer('separate', seven)?.detail).toBe('2 Schalen von jeder der 7 Behandlungen.');
});

test('what was treated separately is counted for one test of stored seed, not for all', () => {
  const detail = (stored: number | null) => {
    const units = { treatment: 2, control: 2, kind: 'batch' } as const;
    const comparisons = [makeComparison({ estimate: 1, parts: { units, stored } })];
    const analysis = makeAnalysis({ results: [makeResult({ comparisons })] });
    return words.trust(germinationTrial(counts, six), analysis).find(({ id }) => id === 'separate')?.detail;
  };
  expect(detail(2)).toContain('Für sich behandelt wurden: 2 und 2 Chargen bei einer Prüfung.');
  expect(detail(null)).toContain('Für sich behandelt wurden: 2 und 2 Chargen.');
});
