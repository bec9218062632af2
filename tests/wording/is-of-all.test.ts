import { expect, test } from 'vitest';
import type { UnitValue } from '../../src/analysis/analysis.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { makeAnalysis, makeCaveat, makeGroup, makeResult } from '../support/make-result.ts';
import { makeTrial } from '../support/make-trial.ts';

const said = (language: string, own: boolean) => {
  const of = ['packet', 'jar'];
  const value = (treatment: string) => ({ lot: 'leek', treatment, stored: 0, unit: own ? treatment : 's1' });
  const result = makeResult({
    groups: of.map((treatment) => makeGroup(treatment, { stored: 0 })),
    values: of.map((treatment) => value(treatment) as UnitValue),
  });
  const evidence = { stored: 0, estimate: 95, limit: 100, germinated: 190, seeds: 200 };
  const told = of.map((treatment) =>
    makeCaveat('near-limit', { outcome: result.outcome, lot: 'leek', treatment, evidence }),
  );
  const analysis = makeAnalysis({ results: [result], caveats: told });
  return told.map((caveat) => wordsFor(language).caveat(makeTrial(), analysis, caveat).sentence.split('. ')[0]);
};

test('what came up of sowings that stand for every treatment is said of none', () => {
  expect([...said('en', false), ...said('de', false)]).toMatchInlineSnapshot(`
    [
      "Nearly all seeds came up (at the start: 190 of 200)",
      "Nearly all seeds came up (at the start: 190 of 200)",
      "Vor der Lagerung gingen fast alle Samen auf (am Anfang: 190 von 200)",
      "Vor der Lagerung gingen fast alle Samen auf (am Anfang: 190 von 200)",
    ]
  `);
  expect([...said('en', true), ...said('de', true)]).toMatchInlineSnapshot(`
    [
      "Nearly all seeds of Paper packet came up (at the start: 190 of 200)",
      "Nearly all seeds of Sealed jar came up (at the start: 190 of 200)",
      "Bei „Paper packet“ gingen fast alle Samen auf (am Anfang: 190 von 200)",
      "Bei „Sealed jar“ gingen fast alle Samen auf (am Anfang: 190 von 200)",
    ]
  `);
});
