import { expect, test } from 'vitest';
import { SOFTWARE } from '../../src/analysis/software.ts';
import manifest from '../../package.json' with { type: 'json' };

test('an analysis names the software and version that package.json names', () => {
  expect(SOFTWARE).toEqual({ name: manifest.name, version: manifest.version });
});
