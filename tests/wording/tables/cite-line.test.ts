import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { citeLine } from '../../../src/wording/tables/cite-line.ts';
import { DEFAULT_SITE } from '../../../src/trial/read-site.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeTrial } from '../../support/make-trial.ts';

const site = { ...DEFAULT_SITE, name: 'Seed Bench', licence: 'CC-BY-4.0' };
const address = 'https://example.org/trials/test/';

test.each([
  [
    {},
    'Mara (2026). Jar or packet. Version 1, digest 4f53cda18c2b. Seed Bench. https://example.org/trials/test/. CC-BY-4.0.',
  ],
  [
    { finished: '2027-01-03' },
    'Mara (2027). Jar or packet. Version 1, digest 4f53cda18c2b. Seed Bench. https://example.org/trials/test/. CC-BY-4.0.',
  ],
  [
    { sown: null },
    'Mara. Jar or packet. Version 1, digest 4f53cda18c2b. Seed Bench. https://example.org/trials/test/. CC-BY-4.0.',
  ],
  [
    { doi: '10.5281/zenodo.1', licence: 'CC0-1.0' },
    'Mara (2026). Jar or packet. Version 1, digest 4f53cda18c2b. Seed Bench. https://doi.org/10.5281/zenodo.1. CC0-1.0.',
  ],
])('%j is cited as %s', (parts, line) => {
  expect(citeLine(wordsFor('en'), makeTrial(parts), site, address)).toBe(line);
});

test('a change raises the version, another byte in a file the digest', () => {
  const changes = [{ date: '2026-07-01', what: 'one count mended', why: null }];
  const line = (sha256: string) =>
    citeLine(wordsFor('en'), makeTrial({ changes, inputs: [{ file: 'counts.csv', sha256, bytes: 3 }] }), site, address);
  const expected = createHash('sha256').update('[{"bytes":3,"file":"counts.csv","sha256":"ab"}]').digest('hex');
  expect(line('ab')).toContain(`Version 2, digest ${expected.slice(0, 12)}.`);
  expect(line('ab')).not.toBe(line('ac'));
  expect(citeLine(wordsFor('de'), makeTrial(), site, address)).toContain('Version 1, Prüfsumme 4f53cda18c2b.');
});
