import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { poolQuestion } from '../../../src/analysis/pooling/pool-question.ts';
import type { Pooled } from '../../../src/analysis/pooled.ts';
import type { Trial } from '../../../src/trial/trial.ts';
import { expectClose } from '../../support/close.ts';
import { makeLot, makeOutcome, makeSowing, makeCount, makeTrial, makeTreatment } from '../../support/make-trial.ts';
import { answerOf, entryOf, FOUR, pool, questionOf, trialOf, type Counts } from '../../support/pooled-trials.ts';
import { expectFigures, rFigures, vector } from '../../support/r-figures.ts';

const rowOf = (pooled: Pooled, trial: string) => pooled.trials.find((row) => row.trial === trial);
const reasons = (pooled: Pooled) => pooled.leftOut.map(({ trial, reason, found }) => [trial, reason, found]);

test('the keys stand in the order of the format', () => {
  expect(Object.keys(pool(FOUR)).slice(0, 15)).toEqual([
    'format', 'question', 'measure', 'unit', 'trials', 'estimate', 'interval', 'test', 'prediction', 'nextResult',
    'guarded', 'tau2', 'i2', 'q', 'leaveOneOut',
  ]); // prettier-ignore
  expect(Object.keys(pool(FOUR).trials[0] ?? {}).slice(0, 7)).toEqual([
    'trial', 'lot', 'estimate', 'se', 'lower', 'upper', 'weight',
  ]); // prettier-ignore
});

test('a replicated trial enters with its own interval, whatever quantile built it', () => {
  const [trial] = FOUR;
  const comparison = answerOf(trial as Trial).analysis.results[0]?.comparisons[0];
  const row = rowOf(pool(FOUR), 'a');
  expect([row?.estimate, row?.lower, row?.upper, row?.basis]).toEqual([
    comparison?.estimate,
    comparison?.interval?.lower,
    comparison?.interval?.upper,
    'interval',
  ]);
  const width = (comparison?.interval?.upper ?? NaN) - (comparison?.interval?.lower ?? NaN);
  expectClose(row?.se, width / 2 / 1.959963984540054, 1e-12);
});

test('a trial with one tray of each enters with half its seeds, and R agrees on the whole', async () => {
  const pooled = pool(FOUR);
  const [lower = NaN, upper = NaN] = (
    await rFigures('random-effects.R', [
      `{ wilson <- function(x, n) { z <- qnorm(0.975); p <- x / n; m <- n / 2
           centre <- (p + z^2 / (2 * m)) / (1 + z^2 / m); half <- z * sqrt(p * (1 - p) / m + z^2 / (4 * m^2)) / (1 + z^2 / m)
           c(centre - half, centre + half) }
         t <- wilson(22, 25); c <- wilson(18, 25); d <- 22 / 25 - 18 / 25
         100 * c(d - sqrt((22 / 25 - t[1])^2 + (c[2] - 18 / 25)^2), d + sqrt((t[2] - 22 / 25)^2 + (18 / 25 - c[1])^2)) }`,
    ])
  )[0] as number[];
  const row = rowOf(pooled, 'b');
  expect(row?.basis).toBe('half-seeds');
  expectClose(row?.estimate, 16, 1e-12);
  expectClose(row?.lower, lower);
  expectClose(row?.upper, upper);

  const [figures = []] = await rFigures('random-effects.R', [
    `random_effects(${vector(pooled.trials.map(({ estimate }) => estimate))}, ${vector(pooled.trials.map(({ se }) => se))})`,
  ]);
  const { estimate, interval, test: tested, guarded, prediction, nextResult, tau2, i2, q, trials } = pooled;
  const mine = {
    estimate,
    lower: interval?.lower,
    upper: interval?.upper,
    p: tested?.p,
    guarded: Number(guarded),
    predictionLower: prediction?.lower,
    predictionUpper: prediction?.upper,
    nextLower: nextResult?.lower,
    nextUpper: nextResult?.upper,
    tau2,
    i2,
    q: q?.statistic,
    qP: q?.p,
    ...Object.fromEntries(trials.map(({ trial, weight }) => [`weight ${trial}`, weight])),
  };
  expectFigures(mine, figures, Object.fromEntries(Object.keys(mine).map((name) => [name, 1e-6])));
});

test('one-tray trials that cannot tell alone, repeated by others, can tell together', () => {
  const single = ([packet, jar]: readonly [number, number], index: number) =>
    trialOf(`s${index}`, { packet: [[packet, 50]], jar: [[jar, 50]] });
  const trials = ([[36, 46], [33, 44], [38, 47], [35, 45], [34, 46]] as const).map(single); // prettier-ignore
  const pooled = pool(trials);
  expect(pooled.trials.map(({ verdict, basis }) => [verdict, basis])).toEqual(
    trials.map(() => ['untestable', 'half-seeds']),
  );
  expect(pooled.verdict).toBe('matters');
  expect(pooled.trials.every(({ doubts }) => !doubts.includes('one-sowing'))).toBe(true);
});

test('two trials are shown and not pooled', () => {
  const pooled = pool(FOUR.slice(0, 2));
  expect(pooled).toMatchObject({
    estimate: null, interval: null, test: null, prediction: null, nextResult: null, guarded: null, tau2: null, i2: null,
    q: null, leaveOneOut: [], verdict: 'not-pooled', within: null,
  }); // prettier-ignore
  expect(pooled.trials.map(({ trial, weight }) => [trial, weight])).toEqual([
    ['a', null],
    ['b', null],
  ]);
});

test('three trials are pooled; without one of them two are left, which are not', () => {
  const pooled = pool(FOUR.slice(0, 3));
  expect(pooled.estimate).not.toBeNull();
  expect(pooled.leaveOneOut).toEqual([]);
  expect(pool(FOUR).leaveOneOut.map(({ trial }) => trial)).toEqual(['a', 'b', 'c', 'd']);
});

describe('the verdict', () => {
  test.each([
    [0, 'matters'],
    [6, 'different'],
    [10, 'unclear'],
  ] as const)('with %d seeds fewer in each jar', (fewer, verdict) => {
    const trials = [0, 1, 2, 3, 4].map((i) =>
      trialOf(`v${i}`, {
        packet: [[60 + i, 100], [61, 100], [59, 100], [60, 100]],
        jar: [[80 + i - fewer * 2, 100], [81 - fewer * 2, 100], [79 - fewer * 2, 100], [80 - fewer * 2, 100]],
      }),
    ); // prettier-ignore
    const pooled = pool(trials);
    expect(pooled.verdict).toBe(verdict);
    expect(pooled.within).toBe(verdict === 'unclear');
  });

  test('no smallest difference that matters: none lies within it', () => {
    expect(pool(FOUR, { matters: null })).toMatchObject({ matters: null, within: null, verdict: 'different' });
  });
});

describe('the ceiling', () => {
  const clean = { sowing: { container: 'tray', assignment: 'random', treated: 'each-sowing', block: null } } as const;
  const withSeeds = (id: string, parts: Partial<Trial>) =>
    trialOf(id, { packet: [[30, 50], [31, 50]], jar: [[42, 50], [44, 50]] }, { ...clean, ...parts }); // prettier-ignore
  const soaked = (id: string) => {
    const trial = withSeeds(id, {});
    const hours = ({ treatment }: Trial['sowings'][number]) => (treatment === 'jar' ? 9 : 0);
    return { ...trial, sowings: trial.sowings.map((sowing) => ({ ...sowing, soakHours: hours(sowing) })) };
  };

  test('nothing in doubt: none', () => {
    expect(pool(['a', 'b', 'c'].map((id) => withSeeds(id, {}))).ceiling).toBe('none');
  });

  test('one tray of each is no doubt of trials together', () => {
    const singles = ['a', 'b', 'c'].map((id) => trialOf(id, { packet: [[30, 50]], jar: [[44, 50]] }, clean));
    expect(pool(singles)).toMatchObject({ ceiling: 'none', trials: [{ doubtful: null }, { doubtful: null }, {}] });
  });

  test('places chosen by hand in one of them: probably', () => {
    const byHand = { sowing: { ...clean.sowing, assignment: 'by-hand' } } as const;
    const pooled = pool([withSeeds('a', byHand), withSeeds('b', {}), withSeeds('c', {})]);
    expect(pooled.ceiling).toBe('probably');
    expect(rowOf(pooled, 'a')).toMatchObject({ doubts: ['not-randomised'], doubtful: 'caution' });
  });

  test('something serious in those that hold half of the weight or more: cause unclear; in less: probably', () => {
    const few = pool([soaked('a'), withSeeds('b', {}), withSeeds('c', {})]);
    expect(rowOf(few, 'a')).toMatchObject({ doubts: ['unequal-soak'], doubtful: 'serious' });
    expect(few.ceiling).toBe('probably');
    expect(pool([soaked('a'), soaked('b'), withSeeds('c', {})]).ceiling).toBe('cause-unclear');
  });
});

describe('which comparison of a trial is meant', () => {
  const labels = (treatment: string, control: string) => ({
    treatments: [makeTreatment(control, { control: true }), makeTreatment(treatment)],
  });

  test('a trial whose treatments are called otherwise is named and left out', () => {
    const other = trialOf('e', { bag: [[30, 50], [31, 50]], tin: [[40, 50], [41, 50]] }, labels('tin', 'bag')); // prettier-ignore
    const pooled = pool([...FOUR, other]);
    expect(reasons(pooled)).toEqual([['e', 'treatments-differ', 'bag, tin']]);
    expect(pooled.treatment).toEqual({ id: 'jar', label: 'Sealed jar' });
  });

  test('unless the question names them', () => {
    const other = trialOf('e', { bag: [[30, 50], [31, 50]], tin: [[40, 50], [41, 50]] }, labels('tin', 'bag')); // prettier-ignore
    const answers = new Map([...FOUR, other].map((trial) => [trial.id, answerOf(trial)]));
    const named = [...FOUR.map(({ id }) => id), entryOf('e', { treatment: 'tin', control: 'bag' })];
    const pooled = poolQuestion(questionOf(named), answers);
    expect(pooled.leftOut).toEqual([]);
    expect(rowOf(pooled, 'e')).toMatchObject({ treatment: 'tin', control: 'bag' });
    expect(pooled.treatment).toEqual({ id: 'jar', label: 'Sealed jar' });
  });

  test('a trial whose control was the other kind is turned round', () => {
    const there = trialOf('e', { packet: [[30, 50], [31, 50]], jar: [[40, 50], [43, 50]] }); // prettier-ignore
    const turned = { ...there, treatments: [makeTreatment('packet'), makeTreatment('jar', { control: true })] };
    const row = (trial: Trial) => rowOf(pool([...FOUR, trial]), 'e');
    expectClose(row(turned)?.estimate, row(there)?.estimate ?? NaN, 1e-12);
    expectClose(row(turned)?.lower, row(there)?.lower ?? NaN, 1e-12);
    expectClose(row(turned)?.se, row(there)?.se ?? NaN, 1e-12);
    expect(row(turned)?.seeds).toEqual(row(there)?.seeds);
  });

  test('of three treatments the pair that the others compare', () => {
    const three = trialOf(
      'e',
      { packet: [[30, 50], [31, 50]], bag: [[20, 50], [22, 50]], jar: [[40, 50], [43, 50]] },
      { treatments: [makeTreatment('packet', { control: true }), makeTreatment('bag'), makeTreatment('jar')] },
    ); // prettier-ignore
    expect(rowOf(pool([...FOUR, three]), 'e')).toMatchObject({ treatment: 'jar', estimate: expect.closeTo(22, 9) });
  });

  test('an outcome of another measure, a named one that is not of it, a storage series, no interval, other units', () => {
    const counts: Counts = { packet: [[30, 50], [31, 50]], jar: [[40, 50], [43, 50]] }; // prettier-ignore
    const speed = trialOf('e', counts, { outcomes: [makeOutcome({ id: 'speed', measure: 't50', day: null })] });
    const series = trialOf('f', counts);
    const stored = { ...series, sowings: series.sowings.map((sowing) => ({ ...sowing, stored: 1 })) };
    expect(reasons(pool([...FOUR, speed, stored]))).toEqual([
      ['e', 'other-measure', null],
      ['f', 'several-times', null],
    ]);

    const height = (id: string, unit: string, trays: number, column = 'height') => {
      const sowings = ['packet', 'jar'].flatMap((treatment) =>
        Array.from({ length: trays }, (_, i) => makeSowing(`${treatment}${i}`, treatment)),
      );
      return makeTrial({
        id,
        outcomes: [makeOutcome({ id: 'height', measure: 'trait', column, day: 14 })],
        traits: [{ column, unit }],
        sowings,
        counts: sowings.map((sowing) => makeCount(sowing.id, 14, 40)),
        measurements: sowings.flatMap(
          (sowing, i) =>
          [1, 2, 3].map((plant) => ({ sowing: sowing.id, day: 14, plant: String(plant), values: { [column]: 40 + (sowing.treatment === 'jar' ? 4 : 0) + ((i * 7 + plant) % 5) }, line: 2 })), // prettier-ignore
        ),
      });
    };
    const tall = [height('a', 'mm', 3), height('b', 'mm', 4), height('c', 'mm', 3), height('d', 'cm', 3), height('e', 'mm', 1)]; // prettier-ignore
    const pooled = pool(tall, { measure: 'trait', matters: 5 });
    expect(reasons(pooled)).toEqual([
      ['d', 'other-unit', 'height, cm'],
      ['e', 'no-interval', null],
    ]);
    expect(pooled).toMatchObject({ unit: 'mm', column: 'height', trials: [{ seeds: null }, {}, {}] });
  });

  test('the same records count once, under whatever name', () => {
    const [first] = FOUR as readonly [Trial];
    const input = { file: 'counts.csv', sha256: 'ab', bytes: 9 };
    const mine = { ...first, inputs: [input] };
    const answers = new Map([...FOUR.slice(1), mine].map((trial) => [trial.id, answerOf(trial)]));
    answers.set('copy', answerOf({ ...mine, id: 'elsewhere' }, { address: 'https://other.example/trials/a/' }));
    const pooled = poolQuestion(questionOf(['copy', 'a', 'b', 'c', 'd', entryOf('b', { lot: 'leek' })]), answers);
    expect(reasons(pooled)).toEqual([
      ['b', 'same-records', null],
      ['copy', 'same-records', null],
    ]);
  });

  test('two growers who counted the same, down to the byte, both count', () => {
    const input = { file: 'counts.csv', sha256: 'ab', bytes: 9 };
    const [first] = FOUR as readonly [Trial];
    const authors = first.authors.map((author) => ({ ...author, name: 'Kesh' }));
    const alike = [
      { ...first, inputs: [input] },
      { ...first, id: 'e', inputs: [input], authors },
    ];
    expect(pool([...alike, ...FOUR.slice(1)])).toMatchObject({ leftOut: [], trials: { length: 5 } });
  });

  test('several lots: their pooled comparison, a named one, else the first with a remark', () => {
    const lots = [makeLot('old'), makeLot('new')];
    const sowings = (trays: number) =>
      ['old', 'new'].flatMap((lot) =>
        ['packet', 'jar'].flatMap((treatment) =>
          Array.from({ length: trays }, (_, i) => makeSowing(`${lot}-${treatment}-${i}`, treatment, { lot })),
        ),
      );
    const two = (id: string, trays: number) => {
      const sown = sowings(trays);
      const up = (i: number) => 30 + ((i * 5) % 7) + (sown[i]?.treatment === 'jar' ? 6 : 0);
      return makeTrial({
        id,
        lots,
        sowings: sown,
        counts: sown.map(({ id: sowing }, i) => makeCount(sowing, 14, up(i))),
      });
    };
    expect(rowOf(pool([...FOUR, two('e', 3)]), 'e')).toMatchObject({ lot: 'all', firstLotOnly: false, seeds: null });
    expect(rowOf(pool([...FOUR, two('e', 1)]), 'e')).toMatchObject({ lot: 'old', firstLotOnly: true });
    const answers = new Map([...FOUR, two('e', 3)].map((trial) => [trial.id, answerOf(trial)]));
    const pooled = poolQuestion(questionOf(['a', 'b', 'c', entryOf('e', { lot: 'new' })]), answers);
    expect(rowOf(pooled, 'e')).toMatchObject({ lot: 'new', firstLotOnly: false });
  });
});

test('trials whose data fail are left out; those not finished are listed', () => {
  const open = (['planned', 'growing', 'abandoned'] as const).map((status) =>
    trialOf(status, { packet: [[1, 50]], jar: [[2, 50]] }, { status }),
  );
  const answers = new Map([...FOUR, ...open].map((trial) => [trial.id, answerOf(trial)]));
  const failing = new Map([...answers, ['broken', null] as const]);
  const pooled = poolQuestion(questionOf([...failing.keys()]), failing);
  expect(reasons(pooled)).toEqual([['broken', 'data-fail', null]]);
  expect(pooled.unreported.map(({ trial, status }) => [trial, status])).toEqual([
    ['abandoned', 'abandoned'],
    ['growing', 'growing'],
    ['planned', 'planned'],
  ]);
  expect(pooled.trials).toHaveLength(4);
});

const share = fc.integer({ min: 5, max: 45 });
const trays = fc.array(fc.tuple(share, share), { minLength: 1, maxLength: 4 });
const drawn = fc.array(trays, { minLength: 3, maxLength: 6 });
const trialsOf = (all: readonly (readonly (readonly [number, number])[])[], seeds = 1) =>
  all.map((units, index) =>
    trialOf(`t${index}`, {
      packet: units.map(([packet]) => [packet * seeds, 50 * seeds] as const),
      jar: units.map(([, jar]) => [jar * seeds, 50 * seeds] as const),
    }),
  );

test('the order of trials does not matter, to the last digit', () => {
  fc.assert(
    fc.property(drawn, (all) => {
      const trials = trialsOf(all);
      const answers = new Map(trials.map((trial) => [trial.id, answerOf(trial)]));
      const ids = [...answers.keys()];
      expect(poolQuestion(questionOf(ids.toReversed()), answers)).toEqual(poolQuestion(questionOf(ids), answers));
    }),
    { seed: 1, numRuns: 15 },
  );
});

test('more seeds, of which as many of 100 come up, narrow one-tray trials and what may come next', () => {
  const single = fc.array(fc.tuple(share, share).map((pair) => [pair]), { minLength: 3, maxLength: 6 }); // prettier-ignore
  fc.assert(
    fc.property(single, (all) => {
      const [few, many] = [pool(trialsOf(all)), pool(trialsOf(all, 8))];
      few.trials.forEach(({ se }, index) => expect(many.trials[index]?.se).toBeLessThan(se));
      const width = ({ nextResult }: Pooled) => (nextResult?.upper ?? NaN) - (nextResult?.lower ?? NaN);
      expect(width(many)).toBeLessThan(width(few) * 1.2);
    }),
    { seed: 2, numRuns: 20 },
  );
});

test('with trials that agree, more seeds narrow the pooled interval as well', () => {
  const alike = fc.array(fc.constantFrom<readonly [number, number]>([30, 38], [31, 38], [30, 39]).map((pair) => [pair]), { minLength: 3, maxLength: 6 }); // prettier-ignore
  fc.assert(
    fc.property(alike, (all) => {
      const width = ({ interval }: Pooled) => (interval?.upper ?? NaN) - (interval?.lower ?? NaN);
      expect(width(pool(trialsOf(all, 4)))).toBeLessThan(width(pool(trialsOf(all))));
    }),
    { seed: 3, numRuns: 10 },
  );
});
