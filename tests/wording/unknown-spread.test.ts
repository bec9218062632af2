import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import { leftToSettle } from '../../src/analysis/left-to-settle.ts';
import { relabelled } from '../../src/analysis/relabelled.ts';
import { settlePlot } from '../../src/charts/settle-plot.ts';
import { wordsFor } from '../../src/wording/words-for.ts';
import { germinationTrial } from '../support/make-trial.ts';

const four = (count: number) => [1, 2, 3, 4].map(() => [count, 50] as const);
const trialOf = (count: number) => {
  const trial = germinationTrial({ packet: four(count), jar: four(count) });
  const analysis = analyse({ ...trial, outcomes: trial.outcomes.map((outcome) => ({ ...outcome, matters: 5 })) });
  const [result] = analysis.results;
  return { trial, analysis, result: result!, comparison: result!.comparisons[0]! };
};

test('where all trays are full their spread is assumed, and said to be', () => {
  const { trial, analysis, result, comparison } = trialOf(50);
  const said = ['en', 'de'].map((language) =>
    wordsFor(language).comparisonSentence(trial, analysis, result, comparison),
  );
  expect(said).toMatchInlineSnapshot(`
    [
      "A difference could not be shown (the two were level; 4 and 4 trays). That is not proof of sameness: the data fit with anything from 16 fewer to 16 more per 100. If trays vary twice as much as single seeds do by luck, which this trial could not show, about 8 trays of each would settle a difference of 5 per 100. Nearly everything came up in both, so this seed had no room to show a gain. One might still show in older seed or colder soil.",
      "Ein Unterschied ließ sich nicht zeigen (beide lagen gleichauf; 4 und 4 Schalen). Das heißt nicht, dass beide gleich sind: Die Daten passen zu allem zwischen 16 weniger und 16 mehr je 100. Wenn Schalen doppelt so stark schwanken, wie es der Zufall einzelner Samen täte (dieser Versuch konnte es nicht zeigen), würden etwa 8 Schalen je Behandlung einen Unterschied von 5 je 100 klären. Bei beiden ging fast alles auf, also hatte dieses Saatgut keinen Raum, einen Gewinn zu zeigen. Bei älterem Saatgut oder in kälterem Boden könnte sich noch einer zeigen.",
    ]
  `);
  const plots = ['en', 'de'].map((language) => settlePlot(trial, result, comparison, wordsFor(language))?.subtitle);
  expect(plots).toMatchInlineSnapshot(`
    [
      "Mark: the smallest difference that so many of each would show 4 times in 5. Assumed, as this trial tells nothing about it: they vary twice as much as the luck of single seeds (φ = 2). Line: 5 per 100.",
      "Zeichen: der kleinste Unterschied, den so viele je Behandlung in 4 von 5 Fällen zeigen. Angenommen, da dieser Versuch darüber nichts sagt: sie schwanken doppelt so stark wie der Zufall einzelner Samen (φ = 2). Linie: ein Unterschied von 5 je 100.",
    ]
  `);
  expect(relabelled('a', result, comparison), 'there is nothing to deal anew').toBeNull();
});

test('where nothing came up more trays are not said to settle anything', () => {
  const { result, comparison } = trialOf(0);
  expect(comparison.wouldSettle).not.toBeNull();
  expect(leftToSettle(result, comparison)).toBeNull();
});
