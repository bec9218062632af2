import { expect, test } from 'vitest';
import { arrangedPhotos } from '../../src/files/arranged-photos.ts';
import type { Photo } from '../../src/trial/trial.ts';
import { makeSowing, makeTrial } from '../support/make-trial.ts';

const photo = (file: string, sowing: string | null, day: number | null): Photo => ({
  file,
  sowing,
  day,
  caption: null,
  alt: null,
});
const sowings = [makeSowing('j1', 'jar'), makeSowing('p1', 'packet'), makeSowing('j2', 'jar'), makeSowing('p2', 'packet')]; // prettier-ignore
const told = (photos: readonly Photo[]) =>
  arrangedPhotos(makeTrial({ sowings, photos })).map(
    ({ day, groups }) => `${day}: ${groups.map((group) => group.map(({ file }) => file).join('+')).join(' ')}`,
  );

test('pictures of two treatments on one day stand side by side, the control first', () => {
  expect(told([photo('a', 'j1', 5), photo('b', 'p1', 5)])).toEqual(['5: b+a']);
});

test('as many pairs as both treatments have pictures of; the rest stand alone', () => {
  expect(told([photo('a', 'j1', 5), photo('b', 'j2', 5), photo('c', 'p1', 5), photo('bench', null, 5)])).toEqual([
    '5: c+a b bench',
  ]);
});

test('pictures of one treatment, of different days, or of no known sowing are no pair; days stand in order', () => {
  expect(told([photo('a', 'j1', 9), photo('b', 'p1', 5), photo('c', null, null), photo('d', 'p2', 5)])).toEqual([
    '5: b d',
    '9: a',
    'null: c',
  ]);
});
