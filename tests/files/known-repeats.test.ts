import { expect, test } from 'vitest';
import { knownRepeats } from '../../src/files/known-repeats.ts';
import { DEFAULT_SITE } from '../../src/trial/read-site.ts';
import { makeTrial } from '../support/make-trial.ts';

const site = { ...DEFAULT_SITE, base: 'https://example.org/garden/' };
const first = makeTrial({ id: 'first', aliases: ['older'] });
const at = (id: string, repeats: string | null) => makeTrial({ id, repeats });
const found = (trial: typeof first, others: readonly (typeof first)[], questions = {}) =>
  knownRepeats([first, ...others], { ...site, questions })(trial).map(({ trial: { id }, how }) => [id, how]);

test.each([
  'https://example.org/garden/trials/first/',
  'http://example.org/garden/trials/first',
  'https://www.example.org/garden/trials/first/index.html',
  'https://example.org/garden/trials/first/#results',
  'https://example.org/garden/trials/older/',
])('%s leads to the trial that is repeated', (address) => {
  const again = at('again', address);
  expect(found(first, [again])).toEqual([['again', 'repeats']]);
  expect(found(again, [again])).toEqual([['first', 'original']]);
});

test.each([
  null,
  'https://example.org/garden/trials/first-of-all/',
  'https://elsewhere.org/garden/trials/first/',
  'https://example.org/trials/first/',
  'not an address',
])('%s does not', (address) => expect(found(first, [at('again', address)])).toEqual([]));

test('trials of one question know each other, and a trial is no repeat of itself', () => {
  const question = { id: 'q', title: 'Q', question: 'Q?', measure: 'germination', matters: null };
  const answers = ['first', 'other'].map((trial) => ({ trial, outcome: null, lot: null, treatment: null, control: null })); // prettier-ignore
  const others = [at('other', null), at('apart', null)];
  expect(found(first, others, { q: { ...question, trials: answers } })).toEqual([['other', 'question']]);
});
