import { expect, test } from 'vitest';
import { repeatedBy } from '../../src/report/repeated-by.ts';
import { FOUR, pool } from '../support/pooled-trials.ts';
import type { Trial } from '../../src/trial/trial.ts';

const by = (trial: Trial, name: string): Trial => ({
  ...trial,
  authors: trial.authors.map((author) => ({ ...author, name })),
});
const [a, b, c, d] = FOUR as readonly [Trial, Trial, Trial, Trial];
const mine = by(a, 'Oda');
const pooled = pool([mine, by(b, 'Lio'), by(c, 'Oda'), by(d, 'Kesh')]);

test('repeats by others are those of the same question, not one’s own', () => {
  expect(repeatedBy(mine, [pooled], [])).toEqual(['Trial b', 'Trial d']);
});

test('a trial that does not count in a question is not repeated by it', () => {
  expect(repeatedBy({ ...mine, id: 'elsewhere' }, [pooled], [])).toEqual([]);
  expect(repeatedBy(mine, [], [])).toEqual([]);
});

test('a trial that two questions name is told once', () => {
  expect(repeatedBy(mine, [pooled, pooled], [])).toEqual(['Trial b', 'Trial d']);
});

test('a finished trial by others that names this one has repeated it, in a question or not', () => {
  const again: Trial = { ...by(b, 'Lio'), id: 'again', title: 'Again' };
  expect(repeatedBy(mine, [], [again, { ...again, title: 'So far', status: 'growing' }, by(c, 'Oda')])).toEqual([
    'Again',
  ]);
  expect(repeatedBy(mine, [pooled], [again, by(d, 'Kesh')])).toEqual(['Trial b', 'Trial d', 'Again']);
});
