import { expect, test } from 'vitest';
import { analyse } from '../../../src/analysis/analyse.ts';
import { carriedClaim, CLAIMS } from '../../../src/analysis/claims.ts';
import { checkProse } from '../../../src/files/prose/check-prose.ts';
import { claimText } from '../../../src/files/prose/claim-text.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { demoTrials, proseProblemsOf, proseSaid } from './prose-said.ts';

const claim = (attributes: string, text = 'This is claimed.') => `<Claim ${attributes}>${text}</Claim>`;

test.each([
  ['parsley-soaked-a-day', 'is="higher"', 'Soaked seed came up more.'],
  ['parsley-soaked-a-day', 'outcome="speed" is="earlier"', 'Soaked seed was up sooner.'],
  ['lettuce-surface-or-covered', 'is="higher"', 'Seed on the surface probably came up more.'],
  ['tomato-tin-or-envelope', 'is="same"', 'They were alike for this purpose.'],
  ['carrots-under-vermiculite', 'is="unclear"', 'We cannot tell.'],
  ['peas-soaked-balcony', 'is="unclear"', 'We cannot tell.'],
  ['leek-shed-or-fridge', 'stored="2" is="unclear"', 'We cannot tell.'],
])('%s carries <Claim %s>', (trial, attributes, text) => {
  expect(proseSaid(claim(attributes, text), trial)).toBe('');
});

test('an unsupported claim is an error with the place, the reason and the sentence to paste', () => {
  expect(proseSaid(`Words.\n\n${claim('is="higher"')}`, 'carrots-under-vermiculite')).toMatchInlineSnapshot(`
    "report.mdx:3:1: <Claim is="higher">: a difference could not be shown, which is not proof of sameness
      error: The data carry: <Claim outcome="germination" lot="carrot-2025" treatment="vermiculite" is="unclear">A difference could not be shown (Vermiculite-covered: 9 more per 100; 4 and 4 trays). That is not proof of sameness: the data fit with anything from 9 fewer to 26 more per 100. At this trial’s tray-to-tray spread, about 21 trays of each would settle a difference of 10 per 100.</Claim>"
  `);
  expect(proseSaid(claim('is="same"'), 'parsley-soaked-a-day')).toMatchInlineSnapshot(`
    "report.mdx:1:1: <Claim is="same">: a difference was shown, and it is "higher"
      error: The data carry: <Claim outcome="germination" lot="parsley-2025" treatment="soaked" is="higher">Soaked seed came up more: 78 of 100 against 62 of 100 (313 of 400 seeds and 248 of 400; 8 and 8 trays). The data fit with just over 8 to 24 more per 100, all beyond the 8 that was to matter.</Claim>"
  `);
  expect(proseSaid(claim('is="lower"'), 'lettuce-surface-or-covered')).toMatchInlineSnapshot(`
    "report.mdx:1:1: <Claim is="lower">: a difference was shown, and it is "higher"
      error: The data carry: <Claim outcome="germination" lot="lettuce-2025" treatment="surface" is="higher">Surface-sown seed probably came up more (14 more per 100; the data fit with 5 to 23 more; both in each of 5 shelves). It may or may not be the 8 per 100 that was to matter. We say “probably” because 1 tray was left out.</Claim>"
  `);
  expect(proseSaid(claim('outcome="speed" is="lower"'), 'parsley-soaked-a-day')).toMatchInlineSnapshot(`
    "report.mdx:1:1: <Claim is="lower">: this outcome is a number of days; say earlier or later
      error: The data carry: <Claim outcome="speed" lot="parsley-2025" treatment="soaked" is="earlier">Half of the Soaked seeds that came up were up by day 14.8 (between the checks of day 13 and day 15) and half of the Dry seeds by day 17.7 (between the checks of day 17 and day 19): 2.9 days earlier (the data fit with 2.1 to 3.8 days earlier; 8 and 8 trays). So the Soaked seeds were up earlier, and all of that range is beyond the 2 days that were to matter.</Claim>"
  `);
  expect(proseSaid(claim('is="unclear"'), 'tomato-tin-or-envelope')).toMatchInlineSnapshot(`
    "report.mdx:1:1: <Claim is="unclear">: any difference is smaller than what was to matter
      error: The data carry: <Claim outcome="germination" lot="all" treatment="tin" is="same">Together, in these 2 lots: The two were alike for this purpose: any difference is smaller than 10 per 100 (the data fit with 3 fewer to 3 more; 12 and 12 batches). The 10 per 100 was set on 26 September 2025, before counting.</Claim>"
  `);
  expect(proseSaid(claim('is="higher"'), 'peas-soaked-balcony')).toMatchInlineSnapshot(`
    "report.mdx:1:1: <Claim is="higher">: too few were treated separately to tell a difference from ordinary luck
      error: The data carry: <Claim outcome="germination" lot="pea-2025" treatment="soaked" is="unclear">Cannot tell. 17 of 20 seeds came up in the Soaked pot and 16 of 20 in the Dry pot. With one pot of each, the treatment cannot be told from ordinary pot-to-pot luck. A first look, worth repeating with 32 pots of each, enough for a difference of 10 per 100.</Claim>"
  `);
});

test.each([
  ['a growing trial', claim('is="unclear"'), 'leek-wet-start', 'the trial is still growing, so nothing can be claimed'],
  ['a planned trial', claim('is="unclear"'), 'spinach-fresh-or-old', 'the trial is planned, so nothing can be claimed'],
  ['no is', claim('lot="parsley-2025"'), undefined, 'found nothing; allowed: higher, lower, earlier, later'],
  ['a wrong is', claim('is="hihger"'), undefined, 'Did you mean "higher"?'],
  ['no words', claim('is="higher"', ' '), undefined, 'found no words inside it'],
  ['days that are called amounts', claim('outcome="speed" is="higher"'), undefined, 'say earlier or later'],
  ['amounts that are called days', claim('is="earlier"'), undefined, 'say higher or lower'],
  ['a claim inside a claim', claim('is="higher"', claim('is="higher"')), undefined, 'a claim inside a claim'],
  [
    'every test of a series',
    claim('is="same"'),
    'leek-shed-or-fridge',
    'stored 2 years: a difference could not be shown',
  ],
  ['a test that is not there', claim('stored="4" is="same"'), 'leek-shed-or-fridge', 'allowed: 1, 2, 3'],
])('refuses %s', (_, text, trial, message) => {
  expect(proseSaid(text, trial)).toContain(message);
  expect(proseProblemsOf(text, trial).some(({ level, rule }) => level === 'error' && rule === 'prose-claim')).toBe(
    true,
  );
});

test.each([
  [
    'carrots-under-vermiculite',
    'is="unclear"',
    'Vermiculite brought up more.',
    'say "more" and do not say that this is open',
  ],
  [
    'carrots-under-vermiculite',
    'is="unclear"',
    'They came up about alike.',
    'say "alike" and do not say that this is open',
  ],
  ['parsley-soaked-a-day', 'is="higher"', 'Soaked seed came up less.', 'say "less", which is not "higher"'],
  ['parsley-soaked-a-day', 'outcome="speed" is="earlier"', 'It came up later.', 'say "later", which is not "earlier"'],
  ['tomato-tin-or-envelope', 'is="same"', 'More came up from the tin.', 'say "More", which is not "same"'],
])('%s refuses <Claim %s> around "%s"', (trial, attributes, text, reason) => {
  expect(proseSaid(claim(attributes, text), trial)).toContain(`the words inside ${reason}`);
});

test.each([
  ['carrots-under-vermiculite', 'is="unclear"', 'More came up under vermiculite, but that may be luck.'],
  ['carrots-under-vermiculite', 'is="unclear"', 'It can’t be told whether more came up.'],
  ['parsley-soaked-a-day', 'is="higher"', 'More came up, and fewer stayed below.'],
  ['tomato-tin-or-envelope', 'is="same"', 'Any gain is smaller than we care about.'],
])('%s lets <Claim %s> say "%s"', (trial, attributes, text) => {
  expect(proseSaid(claim(attributes, text), trial)).toBe('');
});

const words = wordsFor('en');
const comparisons = demoTrials
  .filter(({ status }) => status === 'finished')
  .flatMap((trial) => {
    const analysis = analyse(trial);
    return analysis.results.flatMap((result) =>
      result.comparisons.map((comparison) => ({
        trial,
        analysis,
        result,
        comparison,
        name: `${trial.id} ${result.outcome} ${comparison.lot} ${comparison.stored ?? ''}`,
      })),
    );
  });

test.each(comparisons)(
  'the sentence that is offered passes when it is pasted: $name',
  ({ trial, analysis, result, comparison }) => {
    const carried = carriedClaim(result, comparison);
    const text = claimText(words, trial, analysis, result, comparison, carried);
    expect(proseSaid(text, trial.id)).toBe('');
    for (const other of CLAIMS.filter((is) => is !== carried.is)) {
      expect(proseSaid(text.replace(`is="${carried.is}"`, `is="${other}"`), trial.id), other).toContain(text);
    }
    if (carried.probably) expect(proseSaid(text.replace(/probably/gi, ''), trial.id)).toContain('must say "probably"');
  },
);

test('what German words take a side or leave it open is told apart as well', () => {
  const german = wordsFor('de');
  for (const { trial, analysis, result, comparison, name } of comparisons) {
    const carried = carriedClaim(result, comparison);
    const text = claimText(german, trial, analysis, result, comparison, carried);
    const problems = checkProse(new TextEncoder().encode(text), 'report.mdx', german, {
      trial,
      analysis: () => analysis,
    });
    expect(
      problems.map(({ message }) => message),
      name,
    ).toEqual([]);
  }
  const carrots = comparisons.find(({ trial }) => trial.id === 'carrots-under-vermiculite');
  const open = '<Claim is="unclear">Unter Vermiculit kam mehr.</Claim>';
  const [problem] = checkProse(
    new TextEncoder().encode(open),
    'report.mdx',
    german,
    carrots ? { trial: carrots.trial, analysis: () => carrots.analysis } : null,
  );
  expect(problem?.message).toContain('say "mehr" and do not say that this is open');
});
