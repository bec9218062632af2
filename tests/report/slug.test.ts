import { expect, test } from 'vitest';
import { slug } from '../../src/report/slug.ts';

test.each([
  [['result', 'Height (mm)'], 'result-height-mm'],
  [['  Käse & Öl '], 'kase-ol'],
  [['words', 'germination', 2], 'words-germination-2'],
])('%j makes the id %s', (parts, id) => {
  expect(slug(...parts)).toBe(id);
});
