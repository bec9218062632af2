import { expect, test } from 'vitest';
import { CREDIT_ROLES } from '../../src/wording/credit-role.ts';
import { wordsFor } from '../../src/wording/words-for.ts';

const en = wordsFor('en').creditRole;
const de = wordsFor('de').creditRole;

test.each([
  ['planned', 'methodology'],
  ['planted', null],
  ['drew lots', 'methodology'],
  ['drew the charts', 'visualization'],
  ['sowed', 'investigation'],
  ['Counted', 'investigation'],
  ['keeps the key', 'methodology'],
  ['typed the counts', 'data-curation'],
  ['wrote', 'writing-original-draft'],
  ['re-checked the counts', 'validation'],
  ['lent the bench', 'resources'],
  ['Writing – review & editing', 'writing-review-editing'],
  ['funding-acquisition', 'funding-acquisition'],
  ['made the tea', null],
  ['', null],
])('%s: %s', (role, credit) => {
  expect(en(role)).toBe(credit);
});

test.each([
  ['geplant', 'methodology'],
  ['ausgesät', 'investigation'],
  ['Gezählt', 'investigation'],
  ['gegengelesen', 'writing-review-editing'],
  ['Formal analysis', 'formal-analysis'],
  ['Tee gekocht', null],
])('auf Deutsch, %s: %s', (role, credit) => {
  expect(de(role)).toBe(credit);
});

test('the taxonomy has its fourteen roles', () => {
  expect(Object.keys(CREDIT_ROLES)).toHaveLength(14);
});
