import { expect, test } from 'vitest';
import { lotsUsed } from '../../src/report/lots-used.ts';
import { peopleShown } from '../../src/report/people-shown.ts';
import type { Published } from '../../src/report/front-page.ts';
import type { Person, Site, Trial } from '../../src/trial/trial.ts';
import { makeAnalysis } from '../support/make-result.ts';
import { makeLot, makeTrial } from '../support/make-trial.ts';

const entry = (id: string, parts: Partial<Trial>): Published => ({
  trial: makeTrial({ id, ...parts }),
  analysis: makeAnalysis({ trial: id }),
});
const person = (id: string, name: string): Person => ({ id, name, affiliation: null, orcid: null, url: null });

test('a lot stands once with all its trials; an id used for different seed keeps both passports', () => {
  const lots = lotsUsed([
    entry('x', { lots: [makeLot('leek'), makeLot('bean', 'bean')] }),
    entry('y', { lots: [makeLot('leek')] }),
    entry('z', { lots: [{ ...makeLot('leek'), harvested: '2020' }] }),
  ]);
  expect(
    lots.map(({ id, passports, trials }) => [id, passports.map(({ trials: of }) => of.length), trials.length]),
  ).toEqual([
    ['bean', [1], 1],
    ['leek', [2, 1], 3],
  ]);
});

test('people are those whom trials name, by name, with what they did', () => {
  const site = { people: { b: person('b', 'Berta'), n: person('n', 'Nobody'), a: person('a', 'Änne') } };
  const shown = peopleShown(
    site as unknown as Site,
    [
      entry('x', { authors: [person('b', 'Berta')], roles: { b: ['sowed'], a: ['counted'] } }),
      entry('y', { authors: [person('c', 'Cem')], roles: { gone: ['watered'] } }),
    ],
    'de',
  );
  expect(
    shown.map(({ person: { name }, trials }) => [
      name,
      trials.map(({ entry: { trial }, isAuthor, roles }) => [trial.id, isAuthor, ...roles]),
    ]),
  ).toEqual([
    ['Änne', [['x', false, 'counted']]],
    ['Berta', [['x', true, 'sowed']]],
    ['Cem', [['y', true]]],
  ]);
});
