import { createHash } from 'node:crypto';
import { expect, test } from 'vitest';
import { dataDigest } from '../../src/print/data-digest.ts';
import { analysisOf } from '../charts/invented.ts';
import { makeTrial } from '../support/make-trial.ts';

const input = { file: 'counts.csv', sha256: 'ab', bytes: 3 };
const digestOf = (...inputs: (typeof input)[]) => dataDigest({ ...analysisOf(makeTrial(), []), inputs });

test('the digest of the data is the SHA-256 of its inputs as canonical JSON', () => {
  const json = '[{"bytes":3,"file":"counts.csv","sha256":"ab"}]';
  expect(digestOf(input)).toBe(createHash('sha256').update(json).digest('hex'));
});

test('the digest changes with a file, its name and its bytes', () => {
  const digests = [
    digestOf(),
    digestOf(input),
    digestOf({ ...input, bytes: 4 }),
    digestOf({ ...input, file: 'key.csv' }),
  ];
  expect(new Set(digests).size).toBe(4);
});
