import fc from 'fast-check';
import { expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Comparison, Group } from '../../src/analysis/analysis.ts';
import { expectFigures, rFigures, vector } from '../support/r-figures.ts';
import {
  germinationTrial,
  makeCount,
  makeLot,
  makeOutcome,
  makeSowing,
  makeTreatment,
  makeTrial,
} from '../support/make-trial.ts';

type Units = readonly (readonly [germinated: number, seeds: number])[];

const outcomes = [makeOutcome({ matters: 5 })];
const treatments = [
  makeTreatment('packet', { control: true }),
  makeTreatment('jar'),
  makeTreatment('tin'),
  makeTreatment('cup'),
];

/** Units that share a level of germination, with the ends of the scale often enough. */
const units = (least: number, most: number): fc.Arbitrary<Units> =>
  fc.constantFrom(0, 0.03, 0.3, 0.5, 0.8, 0.95, 1).chain((share) => {
    const unit = fc.tuple(fc.integer({ min: 1, max: 120 }), fc.double({ min: -0.2, max: 0.2, noNaN: true }));
    const germinated = (seeds: number, luck: number) => {
      const own = share === 0 || share === 1 ? share : Math.min(1, Math.max(0, share + luck));
      return [Math.round(own * seeds), seeds] as const;
    };
    return fc.array(unit.map(([seeds, luck]) => germinated(seeds, luck)), { minLength: least, maxLength: most }); // prettier-ignore
  });

const inR = (group: Units) =>
  `list(x = ${vector(group.map(([germinated]) => germinated))}, n = ${vector(group.map(([, seeds]) => seeds))})`;

const find = (comparisons: readonly Comparison[] | undefined, lot: string, treatment: string) =>
  comparisons?.find((comparison) => comparison.lot === lot && comparison.treatment === treatment);

function common(comparison: Comparison | undefined) {
  const { interval, equivalence } = comparison ?? {};
  return {
    estimate: comparison?.estimate,
    lower: interval?.lower,
    upper: interval?.upper,
    lower90: equivalence?.interval.lower,
    upper90: equivalence?.interval.upper,
  };
}

function tested({ dispersion, test: score }: Comparison) {
  return {
    phi: dispersion?.phi,
    df: dispersion?.df,
    used: dispersion?.used,
    dfUsed: dispersion?.dfUsed,
    statistic: score?.statistic,
    p: score?.p,
  };
}

test('every figure of replicated groups agrees with R', async () => {
  const trials = fc.sample(
    fc.record({ packet: units(2, 6), jar: units(2, 6), others: fc.array(units(1, 4), { maxLength: 2 }) }),
    { numRuns: 120, seed: 20261 },
  );
  const expected = await rFigures(
    'analysis.R',
    trials.map(
      ({ packet, jar, others }) => `germination(${inR(jar)}, ${inR(packet)}, list(${others.map(inR).join()}))`,
    ),
  );

  for (const [index, { packet, jar, others }] of trials.entries()) {
    const counts = { packet, jar, ...(others[0] && { tin: others[0] }), ...(others[1] && { cup: others[1] }) };
    const [result] = analyse(germinationTrial(counts, { outcomes, treatments })).results;
    const comparison = find(result?.comparisons, 'leek', 'jar');
    const group = (id: string): Group | undefined => result?.groups.find(({ treatment }) => treatment === id);
    if (comparison === undefined) throw new Error('no comparison');
    const of = (id: string) => [group(id)?.estimate, group(id)?.interval?.lower, group(id)?.interval?.upper] as const;
    const [jarShare, jarLower, jarUpper] = of('jar');
    const [packetShare, packetLower, packetUpper] = of('packet');
    expectFigures(
      {
        jarShare,
        jarLower,
        jarUpper,
        packetShare,
        packetLower,
        packetUpper,
        ...common(comparison),
        ...tested(comparison),
        riskRatio: comparison.effects.riskRatio,
        oddsRatio: comparison.effects.oddsRatio,
        cohensH: comparison.effects.cohensH,
        arrangements: comparison.permutation?.arrangements,
        permutation: comparison.permutation?.p,
        detectable: comparison.detectable,
      },
      expected[index] ?? [],
      { detectable: 1e-8 },
    );
  }
});

test('every figure of blocks agrees with R', async () => {
  const blocks = fc.integer({ min: 3, max: 8 }).chain((size) => fc.record({ packet: units(size, size), jar: units(size, size) })); // prettier-ignore
  const trials = fc.sample(blocks, { numRuns: 80, seed: 20262 });
  const expected = await rFigures(
    'analysis.R',
    trials.map(({ packet, jar }) => `germination_blocks(${inR(jar)}, ${inR(packet)})`),
  );

  for (const [index, { packet, jar }] of trials.entries()) {
    const trial = germinationTrial({ packet, jar }, { outcomes });
    const sowings = trial.sowings.map((sowing) => ({ ...sowing, block: `shelf ${sowing.id.split('-').at(-1)}` }));
    const comparison = find(analyse({ ...trial, sowings }).results[0]?.comparisons, 'leek', 'jar');
    if (comparison === undefined) throw new Error('no comparison');
    expect(comparison.interval?.method).toBe('newcombe-blocks');
    expect(comparison.units).toEqual({ treatment: jar.length, control: jar.length, kind: 'block' });
    expectFigures(
      {
        ...common(comparison),
        ...tested(comparison),
        arrangements: comparison.permutation?.arrangements,
        permutation: comparison.permutation?.p,
        detectable: comparison.detectable,
      },
      expected[index] ?? [],
      { detectable: 1e-8 },
    );
  }
});

const lotsTrial = (lots: readonly { readonly packet: Units; readonly jar: Units }[]) => {
  const ids = lots.map((_, index) => `lot${index}`);
  const rows = lots.flatMap((lot, index) =>
    (['packet', 'jar'] as const).flatMap((treatment) =>
      lot[treatment].map(([germinated, seeds], unit) => ({
        sowing: makeSowing(`${ids[index]}-${treatment}-${unit}`, treatment, { lot: ids[index] ?? '', seeds }),
        germinated,
      })),
    ),
  );
  return makeTrial({
    outcomes,
    lots: ids.map((id) => makeLot(id)),
    sowings: rows.map(({ sowing }) => sowing),
    counts: rows.map(({ sowing, germinated }) => makeCount(sowing.id, 14, germinated)),
  });
};

test('every figure pooled over lots agrees with R', async () => {
  const trials = fc.sample(
    fc.array(fc.record({ packet: units(2, 4), jar: units(2, 4) }), { minLength: 2, maxLength: 4 }),
    { numRuns: 80, seed: 20263 },
  );
  const lotInR = ({ packet, jar }: { packet: Units; jar: Units }) => `list(t = ${inR(jar)}, c = ${inR(packet)})`;
  const expected = await rFigures(
    'analysis.R',
    trials.map((lots) => `germination_pooled(list(${lots.map(lotInR).join()}))`),
  );

  for (const [index, lots] of trials.entries()) {
    const pooled = find(analyse(lotsTrial(lots)).results[0]?.comparisons, 'all', 'jar');
    expect(pooled?.interval?.method).toBe('mantel-haenszel');
    expectFigures(
      {
        ...common(pooled),
        used: pooled?.dispersion?.used,
        dfUsed: pooled?.dispersion?.dfUsed,
        p: pooled?.test?.p,
        lotsDiffer: pooled?.lotsDiffer?.statistic,
        lotsDifferP: pooled?.lotsDiffer?.p,
      },
      expected[index] ?? [],
    );
  }
});

test('lots with one unit of each treatment are blocks, and agree with R', async () => {
  const lots = fc.array(fc.record({ packet: units(1, 1), jar: units(1, 1) }), { minLength: 3, maxLength: 7 });
  const trials = fc.sample(lots, { numRuns: 40, seed: 20264 });
  const side = (of: readonly { packet: Units; jar: Units }[], id: 'packet' | 'jar') => inR(of.flatMap((lot) => lot[id])); // prettier-ignore
  const expected = await rFigures(
    'analysis.R',
    trials.map((of) => `germination_blocks(${side(of, 'jar')}, ${side(of, 'packet')})`),
  );
  for (const [index, of] of trials.entries()) {
    const { comparisons } = analyse(lotsTrial(of)).results[0] ?? { comparisons: [] };
    const pooled = find(comparisons, 'all', 'jar');
    if (pooled === undefined) throw new Error('no pooled comparison');
    expect(comparisons.filter(({ lot }) => lot !== 'all').every(({ verdict }) => verdict === 'untestable')).toBe(true);
    expectFigures(
      {
        ...common(pooled),
        ...tested(pooled),
        arrangements: pooled.permutation?.arrangements,
        permutation: pooled.permutation?.p,
        detectable: pooled.detectable,
      },
      expected[index] ?? [],
      { detectable: 1e-8 },
    );
  }
});

test('one unit of a treatment: every figure, the tipping point and the size of a repeat agree with R', async () => {
  const sides = fc.oneof(
    fc.record({ packet: units(1, 1), jar: units(1, 1) }),
    fc.record({ packet: units(2, 3), jar: units(1, 1) }),
  );
  const trials = fc.sample(sides, { numRuns: 60, seed: 20272 });
  const expected = await rFigures(
    'analysis.R',
    trials.map(({ packet, jar }) => `germination_single(${inR(jar)}, ${inR(packet)}, 5)`),
  );
  for (const [index, { packet, jar }] of trials.entries()) {
    const [result] = analyse(germinationTrial({ packet, jar }, { outcomes })).results;
    const comparison = find(result?.comparisons, 'leek', 'jar');
    expect(comparison?.verdict).toBe('untestable');
    expectFigures(
      {
        ...common(comparison),
        riskRatio: comparison?.effects.riskRatio,
        oddsRatio: comparison?.effects.oddsRatio,
        cohensH: comparison?.effects.cohensH,
        rho: comparison?.tipping?.rho,
        units: comparison?.repeatWith?.units,
      },
      expected[index] ?? [],
    );
    expect(comparison?.tipping?.note === null).toBe(comparison?.tipping?.rho !== null);
  }
});

test('the number of units that would settle it agrees with R', async () => {
  const trials = fc.sample(fc.record({ packet: units(2, 5), jar: units(2, 5) }), { numRuns: 30, seed: 20273 });
  const found = trials.map(({ packet, jar }) => {
    const [result] = analyse(germinationTrial({ packet, jar }, { outcomes })).results;
    return find(result?.comparisons, 'leek', 'jar');
  });
  const expected = await rFigures(
    'analysis.R',
    trials.map(({ packet, jar }, index) => {
      const [x, n] = [0, 1].map((at) => packet.reduce((sum, unit) => sum + (unit[at] ?? 0), 0)) as [number, number];
      const seeds = [...packet, ...jar].reduce((sum, [, own]) => sum + own, 0) / (packet.length + jar.length);
      return `units_needed(5, ${(x + 0.5) / (n + 1)}, ${seeds}, ${found[index]?.dispersion?.used})`;
    }),
  );
  for (const [index, comparison] of found.entries()) {
    expectFigures({ units: comparison?.wouldSettle?.units }, expected[index] ?? []);
  }
});
