import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/analysis/analyse.ts';
import type { Analysis } from '../../src/analysis/analysis.ts';
import { readContent } from '../../src/files/read-content.ts';
import { readTrial } from '../../src/trial/read-trial.ts';
import type { Trial } from '../../src/trial/trial.ts';
import { anyTrial } from '../support/any-trial.ts';

const runs = { numRuns: 15, seed: 4711, endOnFailure: true };
const content = join(import.meta.dirname, '..', '..', 'content');
const { site } = await readContent(content);
const decoder = new TextDecoder();
const encoder = new TextEncoder();

/** Every figure of an analysis by what it is of, in no order. */
function figuresOf({ results, caveats }: Analysis, named: (id: string) => string = (id) => id): Map<string, unknown> {
  const figures = new Map<string, unknown>();
  for (const { outcome, groups, comparisons } of results) {
    for (const { lot, treatment, stored, ...figure } of groups) {
      figures.set(`${outcome} ${named(lot)} ${named(treatment)} ${stored}`, numbersOf(figure, named));
    }
    for (const { lot, treatment, control, stored, ...figure } of comparisons) {
      figures.set(`${outcome} ${named(lot)} ${named(treatment)}/${named(control)} ${stored}`, numbersOf(figure, named));
    }
  }
  figures.set(
    'caveats',
    caveats
      .map(({ id, outcome }) => `${id} ${outcome}`)
      .toSorted()
      .join(', '),
  );
  return figures;
}

/** Numbers and words by their path; ids by the name that they have in the other trial. */
function numbersOf(value: unknown, named: (id: string) => string, path = ''): [string, number | string][] {
  if (typeof value === 'number') return [[path, value]];
  if (typeof value === 'string') return [[path, named(value)]];
  if (value === null || typeof value !== 'object') return [[path, String(value)]];
  return Object.entries(value)
    .filter(([key, each]) => !['lots', 'sowings', 'leftOut'].includes(key) || !Array.isArray(each)) // by name, so in another order
    .flatMap(([key, each]) => numbersOf(each, named, `${path}.${key}`));
}

function expectAlike(actual: Map<string, unknown>, expected: Map<string, unknown>): void {
  expect([...actual.keys()].toSorted()).toEqual([...expected.keys()].toSorted());
  for (const [key, figures] of expected) {
    if (typeof figures === 'string') {
      expect(actual.get(key), key).toBe(figures);
      continue;
    }
    const twins = actual.get(key) as [string, number | string][];
    for (const [index, [path, value]] of (figures as [string, number | string][]).entries()) {
      const [twinPath, twin] = twins[index] ?? [];
      expect(twinPath, key).toBe(path);
      if (typeof value === 'number' && typeof twin === 'number') {
        expect(Math.abs(twin - value), `${key}${path}: ${twin} for ${value}`).toBeLessThanOrEqual(
          1e-9 * Math.max(1, Math.abs(value)),
        );
      } else expect(twin, `${key}${path}`).toBe(value);
    }
  }
}

test('the order of treatments and lots changes no figure', () => {
  fc.assert(
    fc.property(anyTrial, (trial) => {
      const turned = { ...trial, treatments: trial.treatments.toReversed(), lots: trial.lots.toReversed() };
      expectAlike(figuresOf(analyse(turned)), figuresOf(analyse(trial)));
    }),
    runs,
  );
});

test('other ids for sowings, batches, trays, blocks, lots and treatments change no figure', () => {
  fc.assert(
    fc.property(anyTrial, fc.integer({ min: 1, max: 1000 }), (trial, salt) => {
      const names = new Map<string, string>();
      const renamed = (id: string) => {
        if (!names.has(id)) names.set(id, `n${((names.size + 1) * 7919 * salt) % 100_003}-${names.size}`);
        return names.get(id) ?? id;
      };
      const known = new Map<string, string>();
      const other = withIds(trial, (id) => {
        const name = renamed(id);
        known.set(name, id);
        return name;
      });
      expectAlike(
        figuresOf(analyse(other), (id) => known.get(id) ?? id),
        figuresOf(analyse(trial)),
      );
    }),
    runs,
  );
});

function withIds(trial: Trial, id: (id: string) => string): Trial {
  const maybe = (given: string | null) => (given === null ? null : id(given));
  return {
    ...trial,
    lots: trial.lots.map((lot) => ({ ...lot, id: id(lot.id) })),
    treatments: trial.treatments.map((treatment) => ({ ...treatment, id: id(treatment.id) })),
    sowings: trial.sowings.map((sowing) => ({
      ...sowing,
      id: id(sowing.id),
      lot: id(sowing.lot),
      treatment: maybe(sowing.treatment),
      batch: maybe(sowing.batch),
      tray: maybe(sowing.tray),
      block: maybe(sowing.block),
    })) as Trial['sowings'],
    counts: trial.counts.map((count) => ({ ...count, sowing: id(count.sowing) })),
    measurements: trial.measurements.map((row) => ({ ...row, sowing: id(row.sowing) })),
    events: trial.events.map((event) => ({ ...event, sowings: event.sowings.map(id) })),
  };
}

const filesOf = (id: string): Map<string, Uint8Array> =>
  new Map(
    readdirSync(join(content, 'trials', id))
      .filter((name) => /\.(csv|yaml)$/.test(name))
      .map((name) => [name, readFileSync(join(content, 'trials', id, name))]),
  );

function analysed(id: string, files: ReadonlyMap<string, Uint8Array>): Analysis {
  const { trial, problems } = readTrial({ id, folder: id, files, site });
  if (!trial) throw new Error(problems.map(({ file, line, message }) => `${file}:${line} ${message}`).join('\n'));
  return analyse(trial);
}

const withoutInputs = ({ inputs: _, ...analysis }: Analysis) => JSON.stringify(analysis);

describe.each(readdirSync(join(content, 'trials')))('%s', (id) => {
  const files = filesOf(id);

  test('the order of its files does not matter', () => {
    const turned = analysed(id, new Map([...files].toReversed()));
    expect(withoutInputs(turned)).toBe(withoutInputs(analysed(id, files)));
  });

  // A key that was sealed with the plan is the same key only byte for byte.
  test('its rows may come in any order', () => {
    const turned = new Map(
      [...files].map(([name, bytes]) =>
        name.endsWith('.csv') && name !== 'key.csv' ? [name, turnedRows(bytes)] : [name, bytes],
      ),
    );
    expect(withoutInputs(analysed(id, turned))).toBe(withoutInputs(analysed(id, files)));
  });
});

function turnedRows(bytes: Uint8Array): Uint8Array {
  const rows = decoder.decode(bytes).trimEnd().split(/\r?\n/);
  const head = rows.splice(0, rows[0]?.startsWith('sep=') ? 2 : 1);
  return encoder.encode(`${[...head, ...rows.toReversed()].join('\n')}\n`);
}

test('counts a day a column say what counts a row say', () => {
  const id = 'parsley-soaked-a-day';
  const files = filesOf(id);
  const [, ...rows] = decoder.decode(files.get('counts.csv')).trim().split('\n');
  const cells = rows.map((row) => row.split(','));
  const days = [...new Set(cells.map(([, day]) => day))];
  const sowings = [...new Set(cells.map(([sowing]) => sowing))];
  const wide = [
    ['sowing', ...days.map((day) => `day ${day}`)],
    ...sowings.map((sowing) => [
      sowing,
      ...days.map((day) => cells.find(([a, b]) => a === sowing && b === day)?.[2] ?? 'NC'),
    ]),
  ];
  const widely = analysed(
    id,
    new Map(files).set('counts.csv', encoder.encode(wide.map((row) => row.join(',')).join('\n'))),
  );
  expect(JSON.stringify(widely.results)).toBe(JSON.stringify(analysed(id, files).results));
});

test('heights in inches are the heights in millimetres, divided by 25.4', () => {
  const id = 'parsley-soaked-a-day';
  const files = filesOf(id);
  const [, ...rows] = decoder.decode(files.get('measurements.csv')).trim().split('\n');
  const inches = rows.map((row) => {
    const cells = row.split(',');
    return [...cells.slice(0, 3), Number(cells[3]) / 25.4].join(',');
  });
  const table = encoder.encode(['sowing,day,plant,height (in)', ...inches].join('\n'));
  const yaml = decoder
    .decode(files.get('trial.yaml'))
    .replace(/(column: height\n +day: 42\n +matters: )6/, `$1${6 / 25.4}`);
  const changed = new Map(files).set('measurements.csv', table).set('trial.yaml', encoder.encode(yaml));
  const heights = ({ results }: Analysis) => results.find(({ outcome }) => outcome === 'height');
  const [mm, inch] = [heights(analysed(id, files)), heights(analysed(id, changed))];
  expect([mm?.unit, inch?.unit]).toEqual(['mm', 'in']);
  const [a, b] = [mm?.comparisons[0], inch?.comparisons[0]];
  expect((b?.estimate ?? NaN) * 25.4).toBeCloseTo(a?.estimate ?? NaN, 9);
  expect((b?.interval?.lower ?? NaN) * 25.4).toBeCloseTo(a?.interval?.lower ?? NaN, 9);
  expect((b?.interval?.upper ?? NaN) * 25.4).toBeCloseTo(a?.interval?.upper ?? NaN, 9);
  expect(b?.effects.hedgesG?.estimate).toBeCloseTo(a?.effects.hedgesG?.estimate ?? NaN, 9);
  expect([b?.verdict, b?.permutation?.p]).toEqual([a?.verdict, a?.permutation?.p]);
});
