import { expect, test } from 'vitest';
import { citeLine } from '../../../src/wording/tables/cite-line.ts';
import { DEFAULT_SITE } from '../../../src/trial/read-site.ts';
import { wordsFor } from '../../../src/wording/words-for.ts';
import { makeTrial } from '../../support/make-trial.ts';

const site = { ...DEFAULT_SITE, name: 'Seed Bench', licence: 'CC-BY-4.0' };
const address = 'https://example.org/trials/test/';

test.each([
  [{}, 'Mara (2026). Jar or packet. Seed Bench. https://example.org/trials/test/. CC-BY-4.0.'],
  [{ finished: '2027-01-03' }, 'Mara (2027). Jar or packet. Seed Bench. https://example.org/trials/test/. CC-BY-4.0.'],
  [{ sown: null }, 'Mara. Jar or packet. Seed Bench. https://example.org/trials/test/. CC-BY-4.0.'],
  [
    { doi: '10.5281/zenodo.1', licence: 'CC0-1.0' },
    'Mara (2026). Jar or packet. Seed Bench. https://doi.org/10.5281/zenodo.1. CC0-1.0.',
  ],
])('%j is cited as %s', (parts, line) => {
  expect(citeLine(wordsFor('en'), makeTrial(parts), site, address)).toBe(line);
});
