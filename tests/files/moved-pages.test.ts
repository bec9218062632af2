import { expect, test } from 'vitest';
import { movedPages } from '../../src/files/moved-pages.ts';

test('an address is an old one where its page names another as its own', () => {
  const pages = movedPages();
  const link = (address: string) => `<head><link rel="canonical" href="${address}"></head>`;
  pages.note('https://seed.example/circle/trials/peas/', link('https://seed.example/circle/trials/peas/'));
  pages.note('https://seed.example/circle/trials/old/', link('https://seed.example/circle/trials/peas/'));
  pages.note('https://seed.example/circle/404/', '<head></head>');
  expect(['peas', 'old'].map((id) => pages.has(`https://seed.example/circle/trials/${id}/`))).toEqual([false, true]);
  expect(pages.has('https://seed.example/circle/404/')).toBe(false);
});
