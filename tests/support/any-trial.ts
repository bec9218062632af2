import fc from 'fast-check';
import type { Trial } from '../../src/trial/trial.ts';
import { makeCount, makeLot, makeOutcome, makeSowing, makeTrial } from './make-trial.ts';

const DAYS = [3, 5, 8, 11];

/** A trial of two lots with trays, blocks, batches, missed checks and a mishap, all at random. */
export const anyTrial: fc.Arbitrary<Trial> = fc
  .array(
    fc.record({
      lot: fc.constantFrom('a', 'b'),
      treatment: fc.constantFrom('packet', 'jar'),
      seeds: fc.integer({ min: 5, max: 60 }),
      block: fc.constantFrom('1', '2', '3'),
      tray: fc.constantFrom(null, null, 'T1', 'T2', 'T3'),
      newly: fc.array(fc.nat(12), { minLength: DAYS.length, maxLength: DAYS.length }),
      missed: fc.constantFrom(null, null, null, 1, 3),
      heights: fc.array(fc.integer({ min: 10, max: 90 }), { maxLength: 4 }),
      leftOut: fc.constantFrom(false, false, false, false, true),
    }),
    { minLength: 4, maxLength: 20 },
  )
  .chain((rows) => fc.tuple(fc.constant(rows), fc.boolean(), fc.boolean()))
  .map(([rows, inBlocks, inBatches]) => {
    const sowings = rows.map(({ lot, treatment, seeds, block, tray }, index) =>
      makeSowing(`s${index}`, treatment, {
        lot,
        seeds,
        block: inBlocks ? block : null,
        tray: inBlocks ? null : tray,
        batch: inBatches ? `${treatment}-${block}` : null,
      }),
    );
    return makeTrial({
      lots: [makeLot('a'), makeLot('b')],
      sowings,
      outcomes: [
        makeOutcome({ day: 11, matters: 10 }),
        makeOutcome({ id: 't50', measure: 't50', day: null, matters: 1, primary: false }),
        makeOutcome({ id: 'rate', measure: 'maguire', day: null, primary: false }),
        makeOutcome({ id: 'height', measure: 'trait', column: 'height', day: null, primary: false }),
      ],
      counts: rows.flatMap(({ newly, missed, seeds }, index) =>
        DAYS.flatMap((day, check) => {
          const total = newly.slice(0, check + 1).reduce((sum, number) => sum + number, 0);
          return check === missed ? [] : [makeCount(`s${index}`, day, Math.min(seeds, total))];
        }),
      ),
      traits: [{ column: 'height', unit: 'mm' }],
      measurements: rows.flatMap(({ heights }, index) =>
        heights.map((height, plant) => ({
          sowing: `s${index}`,
          day: 11,
          plant: String(plant),
          values: { height },
          line: 2,
        })),
      ),
      events: rows.flatMap(({ leftOut }, index) =>
        leftOut ? [{ day: 4, date: null, sowings: [`s${index}`], what: 'spilt', action: 'left-out' as const }] : [],
      ),
    });
  });
