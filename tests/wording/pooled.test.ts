import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Pooled, PoolReason } from '../../src/analysis/pooled.ts';
import { pooledVerdict } from '../../src/analysis/pooling/pooled-verdict.ts';
import { pooledNumbersTable } from '../../src/wording/tables/pooled-numbers-table.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeOutcome, makeTreatment } from '../support/make-trial.ts';
import { englishIn } from '../support/english-in.ts';
import { inGerman } from '../support/in-german.ts';
import { FOUR, pool, trialOf } from '../support/pooled-trials.ts';

const words = wordsFor('de');
const said = (language: string, pooled: Pooled) => {
  const { sentence, mark, headline, limits, leftOut } = wordsFor(language).pooled(pooled);
  return [sentence, `[${mark.words}; ${mark.shape}]`, headline, ...limits, ...leftOut].join('\n');
};
const growers = (trials: typeof FOUR) =>
  trials.map((trial, index) => ({
    ...trial,
    authors: trial.authors.map((author) => ({ ...author, name: `Grower ${index}` })),
  }));
const clear = [0, 1, 2, 3].map((index) =>
  trialOf(`m${index}`, {
    packet: [[60 + index, 100], [61, 100], [58, 100]],
    jar: [[84 - index, 100], [82, 100], [85, 100]],
  }),
); // prettier-ignore
const apart = [0, 10, 20, 30].map((more, index) =>
  trialOf(`h${index}`, {
    packet: [[120, 200], [122, 200], [118, 200]],
    jar: [[120 + more * 2, 200], [123 + more * 2, 200], [119 + more * 2, 200]],
  }),
); // prettier-ignore
const byHand = FOUR.map((trial) => ({ ...trial, sowing: { ...trial.sowing, assignment: 'by-hand' as const } }));
const soaked = clear.map((trial) => ({ ...trial, sowings: trial.sowings.map((sowing) => ({ ...sowing, soakHours: sowing.treatment === 'jar' ? 8 : 0 })) })); // prettier-ignore
const slow = trialOf('x', { packet: [[30, 50]], jar: [[31, 50]] }, { outcomes: [makeOutcome({ id: 'speed', measure: 't50', day: null })] }); // prettier-ignore
const tins = trialOf('y', { bag: [[30, 50]], tin: [[31, 50]] }, { treatments: [makeTreatment('bag', { control: true }), makeTreatment('tin')] }); // prettier-ignore

describe('English', () => {
  test('every case', () => {
    expect(said('en', pool([]))).toMatchInlineSnapshot(`
      "No trial has answered this yet.
      [not put together; question]
      No trial has answered this yet."
    `);
    expect(said('en', pool(FOUR.slice(0, 1)))).toMatchInlineSnapshot(`
      "1 grower has asked this so far. The result was 14 more per 100. One trial is no pooled answer.
      [not put together; question]
      Sealed jar against Paper packet: 1 trial so far"
    `);
    expect(said('en', pool(growers(FOUR.slice(0, 2))))).toMatchInlineSnapshot(`
      "2 growers asked this. Results ran from 14 to 16 more per 100. Fewer than three trials are not put together: they are shown side by side.
      [not put together; question]
      Sealed jar against Paper packet: 2 trials side by side
      1 of the 2 trials had one tray of a kind only. Alone such a trial cannot tell the treatment from the luck of that tray. Repeated by others, it can help to answer."
    `);
    expect(said('en', pool(growers(FOUR)))).toMatchInlineSnapshot(`
      "4 growers asked this. Results ran from 14 to 20 more per 100. Together, Sealed jar against Paper packet: 15 more per 100 (the data fit with 7 to 23 more per 100). A next repeat may fall anywhere from 24 fewer to 53 more per 100.
      [came up more; above]
      Sealed jar against Paper packet, 4 trials together: 15 more per 100 (7 to 23 more per 100)
      The trials differ no more than the luck of their own trays explains. So few trials could hardly show that gardens differ.
      2 of the 4 trials had one tray of a kind only. Alone such a trial cannot tell the treatment from the luck of that tray. Among trials by others that luck is part of what differs from trial to trial, so here it helps to answer; its seeds count as half as many.
      No single trial carries this: whichever is left out, the range stays off zero.
      The trials agree more closely than their own luck would have it; so the wider of two ranges is given.
      The smallest difference that matters was named for the question, not agreed before the trials were counted."
    `);
    expect(said('en', pool(byHand))).toMatchInlineSnapshot(`
      "4 trials asked this. Results ran from 14 to 20 more per 100. Together, Sealed jar against Paper packet: probably 15 more per 100 (the data fit with 7 to 23 more per 100). We say “probably” because all 4 trials have doubts of their own. A next repeat may fall anywhere from 24 fewer to 53 more per 100.
      [probably more; above]
      Sealed jar against Paper packet, 4 trials together: probably 15 more per 100 (7 to 23 more per 100)
      The trials differ no more than the luck of their own trays explains. So few trials could hardly show that gardens differ.
      2 of the 4 trials had one tray of a kind only. Alone such a trial cannot tell the treatment from the luck of that tray. Among trials by others that luck is part of what differs from trial to trial, so here it helps to answer; its seeds count as half as many.
      No single trial carries this: whichever is left out, the range stays off zero.
      The trials agree more closely than their own luck would have it; so the wider of two ranges is given.
      All 4 trials have doubts of their own, which more trials do not take away: not placed by lot (4).
      The smallest difference that matters was named for the question, not agreed before the trials were counted."
    `);
    expect(said('en', pool(clear, { matters: 10 }))).toMatchInlineSnapshot(`
      "4 trials asked this. Results ran from 22 to 24 more per 100. Together, Sealed jar against Paper packet: 23 more per 100 (the data fit with 18 to 28 more per 100, all beyond the 10 per 100 named as mattering). A next repeat may fall anywhere from 6 to 40 more per 100.
      [came up more; above]
      Sealed jar against Paper packet, 4 trials together: 23 more per 100 (18 to 28 more per 100)
      The trials differ no more than the luck of their own trays explains. So few trials could hardly show that gardens differ.
      No single trial carries this: whichever is left out, the range stays off zero.
      The trials agree more closely than their own luck would have it; so the wider of two ranges is given.
      The smallest difference that matters was named for the question, not agreed before the trials were counted."
    `);
    expect(said('en', pool(soaked))).toMatchInlineSnapshot(`
      "4 trials asked this. Results ran from 22 to 24 more per 100. Together, Sealed jar against Paper packet: 23 more per 100 (the data fit with 18 to 28 more per 100). Trials with serious doubts of their own carry half of this or more, so what caused it cannot be told. A next repeat may fall anywhere from 6 to 40 more per 100.
      [cause unclear; question]
      Sealed jar against Paper packet, 4 trials together: 23 more per 100 (18 to 28 more per 100), cause unclear
      The trials differ no more than the luck of their own trays explains. So few trials could hardly show that gardens differ.
      No single trial carries this: whichever is left out, the range stays off zero.
      The trials agree more closely than their own luck would have it; so the wider of two ranges is given.
      All 4 trials have doubts of their own, which more trials do not take away: soak differed (4).
      The smallest difference that matters was named for the question, not agreed before the trials were counted."
    `);
    expect(said('en', pool(apart, { matters: null }))).toMatchInlineSnapshot(`
      "4 trials asked this. Results ran from less than 1 to 30 more per 100. Together, a difference could not be shown (Sealed jar against Paper packet: 15 more per 100; the data fit with anything from 5 fewer to 36 more per 100). That is not proof of sameness. A next repeat may fall anywhere from 31 fewer to 61 more per 100.
      [not settled; open]
      Sealed jar against Paper packet, 4 trials together: not settled (5 fewer to 36 more per 100)
      The trials differ more than the luck of their own trays explains; in another garden the true difference may lie anywhere from 29 fewer to 60 more per 100."
    `);
    expect(said('en', pool([apart[0], apart[0], apart[0]].map((trial, i) => ({ ...(trial as (typeof apart)[0]), id: `z${i}` }))))).toMatchInlineSnapshot(`
      "3 trials asked this. The result was less than 1 more per 100. Together, a difference could not be shown (Sealed jar against Paper packet: less than 1 more per 100; the data fit with anything from 4 fewer to 5 more per 100). Had 10 per 100 been agreed beforehand, this would count as alike. A next repeat may fall anywhere from 18 fewer to 19 more per 100.
      [not settled; open]
      Sealed jar against Paper packet, 3 trials together: not settled (4 fewer to 5 more per 100)
      The trials differ no more than the luck of their own trays explains. So few trials could hardly show that gardens differ.
      The trials agree more closely than their own luck would have it; so the wider of two ranges is given.
      The smallest difference that matters was named for the question, not agreed before the trials were counted."
    `); // prettier-ignore
    expect(said('en', pool([...FOUR, slow, tins]))).toMatchInlineSnapshot(`
      "4 trials asked this. Results ran from 14 to 20 more per 100. Together, Sealed jar against Paper packet: 15 more per 100 (the data fit with 7 to 23 more per 100). A next repeat may fall anywhere from 24 fewer to 53 more per 100.
      [came up more; above]
      Sealed jar against Paper packet, 4 trials together: 15 more per 100 (7 to 23 more per 100)
      The trials differ no more than the luck of their own trays explains. So few trials could hardly show that gardens differ.
      2 of the 4 trials had one tray of a kind only. Alone such a trial cannot tell the treatment from the luck of that tray. Among trials by others that luck is part of what differs from trial to trial, so here it helps to answer; its seeds count as half as many.
      No single trial carries this: whichever is left out, the range stays off zero.
      The trials agree more closely than their own luck would have it; so the wider of two ranges is given.
      The smallest difference that matters was named for the question, not agreed before the trials were counted.
      It compares nothing of what is asked here.
      It compares other treatments: bag, tin."
    `);
  });
});

describe('German', () => {
  test('every case', () => {
    expect(said('de', pool([]))).toMatchInlineSnapshot(`
      "Noch hat kein Versuch darauf geantwortet.
      [nicht zusammengefasst; question]
      Noch hat kein Versuch darauf geantwortet."
    `);
    expect(said('de', pool(FOUR.slice(0, 1)))).toMatchInlineSnapshot(`
      "Bisher ging 1 Person dieser Frage nach. Das Ergebnis war: 14 mehr je 100. Ein Versuch allein ist keine gemeinsame Antwort.
      [nicht zusammengefasst; question]
      „Sealed jar“ gegenüber „Paper packet“: bisher 1 Versuch"
    `);
    expect(said('de', pool(growers(FOUR.slice(0, 2))))).toMatchInlineSnapshot(`
      "2 Personen gingen dieser Frage nach. Die Ergebnisse: 14 bis 16 mehr je 100. Weniger als drei Versuche werden nicht zusammengefasst: Sie stehen nebeneinander.
      [nicht zusammengefasst; question]
      „Sealed jar“ gegenüber „Paper packet“: 2 Versuche nebeneinander
      1 der 2 Versuche hat von einer Behandlung nur eine Schale. Allein kann ein solcher Versuch die Behandlung nicht vom Zufall dieser Schale trennen. Von anderen wiederholt, kann er zur Antwort beitragen."
    `);
    expect(said('de', pool(growers(FOUR)))).toMatchInlineSnapshot(`
      "4 Personen gingen dieser Frage nach. Die Ergebnisse: 14 bis 20 mehr je 100. Zusammen ergibt das für „Sealed jar“ gegenüber „Paper packet“: 15 mehr je 100 (die Daten passen zu allem zwischen 7 und 23 mehr je 100). Eine nächste Wiederholung kann irgendwo zwischen 24 weniger und 53 mehr je 100 liegen.
      [mehr aufgegangen; above]
      „Sealed jar“ gegenüber „Paper packet“, 4 Versuche zusammen: 15 mehr je 100 (7 bis 23 mehr je 100)
      Die Versuche unterscheiden sich nicht mehr, als der Zufall ihrer eigenen Schalen erklärt. So wenige Versuche könnten kaum zeigen, dass Gärten sich unterscheiden.
      2 der 4 Versuche haben von einer Behandlung nur eine Schale. Allein kann ein solcher Versuch die Behandlung nicht vom Zufall dieser Schale trennen. Unter Versuchen anderer gehört dieser Zufall zu dem, was sich von Versuch zu Versuch unterscheidet; darum hilft er hier zu antworten, und seine Samen zählen halb.
      Kein einzelner Versuch trägt das allein: Welcher auch weggelassen wird, der Bereich lässt die Null aus.
      Die Versuche stimmen enger überein, als ihr eigener Zufall erwarten ließe; darum ist der weitere von zwei Bereichen angegeben.
      Der kleinste Unterschied, der zählt, ist für die Frage genannt und nicht vor dem Zählen der Versuche vereinbart worden."
    `);
    expect(said('de', pool(byHand))).toMatchInlineSnapshot(`
      "4 Versuche gingen dieser Frage nach. Die Ergebnisse: 14 bis 20 mehr je 100. Zusammen ergibt das für „Sealed jar“ gegenüber „Paper packet“: wahrscheinlich 15 mehr je 100 (die Daten passen zu allem zwischen 7 und 23 mehr je 100). „Wahrscheinlich“ heißt es, weil alle 4 Versuche eigene Vorbehalte haben. Eine nächste Wiederholung kann irgendwo zwischen 24 weniger und 53 mehr je 100 liegen.
      [wahrscheinlich mehr aufgegangen; above]
      „Sealed jar“ gegenüber „Paper packet“, 4 Versuche zusammen: wahrscheinlich 15 mehr je 100 (7 bis 23 mehr je 100)
      Die Versuche unterscheiden sich nicht mehr, als der Zufall ihrer eigenen Schalen erklärt. So wenige Versuche könnten kaum zeigen, dass Gärten sich unterscheiden.
      2 der 4 Versuche haben von einer Behandlung nur eine Schale. Allein kann ein solcher Versuch die Behandlung nicht vom Zufall dieser Schale trennen. Unter Versuchen anderer gehört dieser Zufall zu dem, was sich von Versuch zu Versuch unterscheidet; darum hilft er hier zu antworten, und seine Samen zählen halb.
      Kein einzelner Versuch trägt das allein: Welcher auch weggelassen wird, der Bereich lässt die Null aus.
      Die Versuche stimmen enger überein, als ihr eigener Zufall erwarten ließe; darum ist der weitere von zwei Bereichen angegeben.
      Alle 4 Versuche haben eigene Vorbehalte, die weitere Versuche nicht beheben: Nicht durch Los aufgestellt (4).
      Der kleinste Unterschied, der zählt, ist für die Frage genannt und nicht vor dem Zählen der Versuche vereinbart worden."
    `);
    expect(said('de', pool(clear, { matters: 10 }))).toMatchInlineSnapshot(`
      "4 Versuche gingen dieser Frage nach. Die Ergebnisse: 22 bis 24 mehr je 100. Zusammen ergibt das für „Sealed jar“ gegenüber „Paper packet“: 23 mehr je 100 (die Daten passen zu allem zwischen 18 und 28 mehr je 100, alles jenseits der 10 je 100, die zählen sollen). Eine nächste Wiederholung kann irgendwo zwischen 6 und 40 mehr je 100 liegen.
      [mehr aufgegangen; above]
      „Sealed jar“ gegenüber „Paper packet“, 4 Versuche zusammen: 23 mehr je 100 (18 bis 28 mehr je 100)
      Die Versuche unterscheiden sich nicht mehr, als der Zufall ihrer eigenen Schalen erklärt. So wenige Versuche könnten kaum zeigen, dass Gärten sich unterscheiden.
      Kein einzelner Versuch trägt das allein: Welcher auch weggelassen wird, der Bereich lässt die Null aus.
      Die Versuche stimmen enger überein, als ihr eigener Zufall erwarten ließe; darum ist der weitere von zwei Bereichen angegeben.
      Der kleinste Unterschied, der zählt, ist für die Frage genannt und nicht vor dem Zählen der Versuche vereinbart worden."
    `);
    expect(said('de', pool(soaked))).toMatchInlineSnapshot(`
      "4 Versuche gingen dieser Frage nach. Die Ergebnisse: 22 bis 24 mehr je 100. Zusammen ergibt das für „Sealed jar“ gegenüber „Paper packet“: 23 mehr je 100 (die Daten passen zu allem zwischen 18 und 28 mehr je 100). Versuche mit schweren eigenen Vorbehalten tragen die Hälfte davon oder mehr, also lässt sich nicht sagen, woran es lag. Eine nächste Wiederholung kann irgendwo zwischen 6 und 40 mehr je 100 liegen.
      [Ursache unklar; question]
      „Sealed jar“ gegenüber „Paper packet“, 4 Versuche zusammen: 23 mehr je 100 (18 bis 28 mehr je 100), Ursache unklar
      Die Versuche unterscheiden sich nicht mehr, als der Zufall ihrer eigenen Schalen erklärt. So wenige Versuche könnten kaum zeigen, dass Gärten sich unterscheiden.
      Kein einzelner Versuch trägt das allein: Welcher auch weggelassen wird, der Bereich lässt die Null aus.
      Die Versuche stimmen enger überein, als ihr eigener Zufall erwarten ließe; darum ist der weitere von zwei Bereichen angegeben.
      Alle 4 Versuche haben eigene Vorbehalte, die weitere Versuche nicht beheben: Verschieden lange eingeweicht (4).
      Der kleinste Unterschied, der zählt, ist für die Frage genannt und nicht vor dem Zählen der Versuche vereinbart worden."
    `);
    expect(said('de', pool(apart, { matters: null }))).toMatchInlineSnapshot(`
      "4 Versuche gingen dieser Frage nach. Die Ergebnisse: unter 1 bis 30 mehr je 100. Zusammen ließ sich ein Unterschied nicht zeigen („Sealed jar“ gegenüber „Paper packet“: 15 mehr je 100; die Daten passen zu allem zwischen 5 weniger und 36 mehr je 100). Das heißt nicht, dass beide gleich sind. Eine nächste Wiederholung kann irgendwo zwischen 31 weniger und 61 mehr je 100 liegen.
      [offen; open]
      „Sealed jar“ gegenüber „Paper packet“, 4 Versuche zusammen: offen (5 weniger bis 36 mehr je 100)
      Die Versuche unterscheiden sich mehr, als der Zufall ihrer eigenen Schalen erklärt; in einem anderen Garten kann der wahre Unterschied irgendwo zwischen 29 weniger und 60 mehr je 100 liegen."
    `);
    expect(said('de', pool([apart[0], apart[0], apart[0]].map((trial, i) => ({ ...(trial as (typeof apart)[0]), id: `z${i}` }))))).toMatchInlineSnapshot(`
      "3 Versuche gingen dieser Frage nach. Das Ergebnis war: unter 1 mehr je 100. Zusammen ließ sich ein Unterschied nicht zeigen („Sealed jar“ gegenüber „Paper packet“: unter 1 mehr je 100; die Daten passen zu allem zwischen 4 weniger und 5 mehr je 100). Wären 10 je 100 vorher vereinbart gewesen, gälte das als gleich genug. Eine nächste Wiederholung kann irgendwo zwischen 18 weniger und 19 mehr je 100 liegen.
      [offen; open]
      „Sealed jar“ gegenüber „Paper packet“, 3 Versuche zusammen: offen (4 weniger bis 5 mehr je 100)
      Die Versuche unterscheiden sich nicht mehr, als der Zufall ihrer eigenen Schalen erklärt. So wenige Versuche könnten kaum zeigen, dass Gärten sich unterscheiden.
      Die Versuche stimmen enger überein, als ihr eigener Zufall erwarten ließe; darum ist der weitere von zwei Bereichen angegeben.
      Der kleinste Unterschied, der zählt, ist für die Frage genannt und nicht vor dem Zählen der Versuche vereinbart worden."
    `); // prettier-ignore
    expect(said('de', pool([...FOUR, slow, tins]))).toMatchInlineSnapshot(`
      "4 Versuche gingen dieser Frage nach. Die Ergebnisse: 14 bis 20 mehr je 100. Zusammen ergibt das für „Sealed jar“ gegenüber „Paper packet“: 15 mehr je 100 (die Daten passen zu allem zwischen 7 und 23 mehr je 100). Eine nächste Wiederholung kann irgendwo zwischen 24 weniger und 53 mehr je 100 liegen.
      [mehr aufgegangen; above]
      „Sealed jar“ gegenüber „Paper packet“, 4 Versuche zusammen: 15 mehr je 100 (7 bis 23 mehr je 100)
      Die Versuche unterscheiden sich nicht mehr, als der Zufall ihrer eigenen Schalen erklärt. So wenige Versuche könnten kaum zeigen, dass Gärten sich unterscheiden.
      2 der 4 Versuche haben von einer Behandlung nur eine Schale. Allein kann ein solcher Versuch die Behandlung nicht vom Zufall dieser Schale trennen. Unter Versuchen anderer gehört dieser Zufall zu dem, was sich von Versuch zu Versuch unterscheidet; darum hilft er hier zu antworten, und seine Samen zählen halb.
      Kein einzelner Versuch trägt das allein: Welcher auch weggelassen wird, der Bereich lässt die Null aus.
      Die Versuche stimmen enger überein, als ihr eigener Zufall erwarten ließe; darum ist der weitere von zwei Bereichen angegeben.
      Der kleinste Unterschied, der zählt, ist für die Frage genannt und nicht vor dem Zählen der Versuche vereinbart worden.
      Er vergleicht nichts von dem, was hier gefragt ist.
      Er vergleicht andere Behandlungen: bag, tin."
    `);
  });
});

test('an answer that leans on single trials, or would be another without one, says so', () => {
  const without = (lower: number, upper: number) => {
    const base = pool(FOUR);
    const leaveOneOut = base.leaveOneOut.map((each, index) => (index < 2 ? { ...each, lower, upper } : { ...each }));
    return { ...base, leaveOneOut };
  };
  const offZero = without(-1, 20);
  const zero = { ...without(1, 20), verdict: 'unclear', interval: { ...offZero.interval, lower: -3 } } as Pooled;
  const at = (language: string, pooled: Pooled) => wordsFor(language).pooled(pooled).limits[2];
  const steady = { ...zero, leaveOneOut: zero.leaveOneOut.map((each) => ({ ...each, lower: -2 })) };
  expect([at('en', offZero), at('en', zero), at('de', offZero), at('de', zero), at('en', steady)])
    .toMatchInlineSnapshot(`
    [
      "This still leans on single trials. Leave one out, and in 2 of 4 cases the range takes in zero.",
      "Leave one out, and in 4 of 4 cases the range comes off zero; luck has as much part in that as those trials.",
      "Das hängt noch an einzelnen Versuchen. Lässt man einen weg, schließt der Bereich in 2 von 4 Fällen die Null ein.",
      "Lässt man einen weg, lässt der Bereich in 4 von 4 Fällen die Null aus; daran hat der Zufall so viel Anteil wie diese Versuche.",
      "The trials agree more closely than their own luck would have it; so the wider of two ranges is given.",
    ]
  `);
});

test('no English word stands in the German texts', () => {
  const cases = [[], FOUR.slice(0, 1), FOUR.slice(0, 2), growers(FOUR), byHand, clear, soaked, apart];
  const texts = cases.flatMap((trials) => {
    const answer = pool(trials.map(inGerman));
    const { sentence, mark, headline, limits, trials: rows, without } = words.pooled(answer);
    const numbers = answer.interval ? pooledNumbersTable(words, answer).rows.flat() : [];
    const ofRows = rows.flatMap(({ difference, range, finding, units }) => [difference, range, finding, units]);
    return [sentence, mark.words, headline, ...limits, ...ofRows, ...without, ...numbers];
  });
  const titles = /„Trial \w+“/g;
  expect(texts.flatMap((text) => englishIn(text.replace(titles, '')))).toEqual([]);
});

const REASONS: readonly PoolReason[] = [
  'data-fail', 'other-measure', 'outcome-not-named', 'treatments-differ', 'other-unit', 'several-times', 'no-interval',
  'same-records',
]; // prettier-ignore

test.each(['en', 'de'])('%s: every reason to leave a trial out is a sentence', (language) => {
  const base = pool(FOUR);
  const leftOut = REASONS.map((reason) => ({ trial: reason, title: reason, growers: [], sown: null, from: null, elsewhere: false, reason, found: 'cm' })); // prettier-ignore
  for (const text of wordsFor(language).pooled({ ...base, leftOut }).leftOut) expect(text).toMatch(/^\p{Lu}.{20,}\.$/u);
});

const limit = fc.oneof(
  fc.double({ min: -40, max: 40, noNaN: true }),
  fc.constantFrom(0, 0.4, -0.4, 10, 10.4, 9.6, -10.4),
);
const drawn = fc
  .record({
    limits: fc.tuple(limit, limit, limit).map((three) => three.toSorted((a, b) => a - b)),
    doubtful: fc.constantFrom(null, 'caution', 'serious'),
    matters: fc.constantFrom(null, 10),
  })
  .map(({ limits: [lower = 0, estimate = 0, upper = 0], doubtful, matters }): Pooled => {
    const base = pool(FOUR, { matters });
    const trials = base.trials.map((trial) => ({ ...trial, doubtful, doubts: doubtful ? (['not-randomised'] as const) : [] })); // prettier-ignore
    const interval = { level: 0.95, method: 'normal', lower, upper } as const;
    return { ...base, trials, estimate, interval, ...pooledVerdict(trials, interval, matters) };
  });

const SAYS = [
  { language: 'en', claims: /together: (probably )?\d/, probably: 'probably', beyond: 'all beyond', unsure: 'cause' },
  { language: 'de', claims: /zusammen: (wahrscheinlich )?\d/, probably: 'wahrscheinlich', beyond: 'alles jenseits', unsure: 'Ursache' }, // prettier-ignore
] as const;

test.each(SAYS)('$language: no more is claimed than the interval carries', ({ language, probably, beyond, unsure }) => {
  fc.assert(
    fc.property(drawn, (pooled) => {
      const { sentence, headline, mark } = wordsFor(language).pooled(pooled);
      const { lower, upper } = pooled.interval ?? { lower: null, upper: null };
      const offZero = (lower ?? 0) > 0 || (upper ?? 0) < 0;
      const serious = pooled.trials[0]?.doubtful === 'serious';
      const claims = mark.shape === 'above' || mark.shape === 'below';
      expect(claims).toBe(offZero && !serious);
      if (claims) expect(mark.shape).toBe((pooled.estimate ?? 0) > 0 ? 'above' : 'below');
      expect(mark.words.includes(unsure)).toBe(offZero && serious);
      for (const text of [sentence.toLowerCase(), headline, mark.words]) {
        if (claims) expect(text.includes(probably)).toBe(pooled.trials[0]?.doubtful === 'caution');
      }
      const isBeyond = pooled.matters !== null && ((lower ?? 0) > 10 || (upper ?? 0) < -10);
      expect(sentence.includes(beyond)).toBe(isBeyond && !serious);
    }),
    { seed: 5, numRuns: 400 },
  );
});
