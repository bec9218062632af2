import { expect, test } from 'vitest';
import { canonicalJson } from '../../src/trial/canonical-json.ts';
import { planDigest } from '../../src/trial/plan-digest.ts';
import { sha256Hex } from '../../src/trial/sha256-hex.ts';

// RFC 8785, section 3.2.2 (serialisation of literals, strings and numbers) and 3.2.3 (sorting of properties).
test('canonicalJson writes the example of RFC 8785', () => {
  const example = {
    numbers: [Number('333333333.33333329'), 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
    string: '\u20ac$\u000F\u000aA\'\u0042\u0022\u005c\\"/',
    literals: [null, true, false],
  };
  expect(canonicalJson(example)).toBe(
    '{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}',
  );
});
test('canonicalJson sorts keys by UTF-16 code units', () => {
  const keys = { '\u20ac': 1, '\r': 2, '\ufb33': 3, '1': 4, '\u{1f600}': 5, '\u0080': 6, '\u00f6': 7 };
  expect(Object.keys(JSON.parse(canonicalJson(keys))).toSorted()).toEqual(Object.keys(keys).toSorted());
  expect(canonicalJson(keys)).toBe('{"\\r":2,"1":4,"\u0080":6,"ö":7,"€":1,"😀":5,"\ufb33":3}');
});
test('canonicalJson refuses what JSON cannot hold', () => {
  expect(() => canonicalJson({ a: NaN })).toThrow('needs finite numbers, got NaN');
});
test('planDigest leaves fixed and digest out and does not mind the order of keys', () => {
  expect(planDigest({ fixed: '2026-04-01', digest: 'x', b: [1], a: 'é' })).toBe(planDigest({ a: 'é', b: [1] }));
  expect(planDigest({ a: 1 })).not.toBe(planDigest({ a: '1' }));
});
// FIPS 180-4 example "abc" and the empty message.
test('sha256Hex gives the digests of the standard', () => {
  expect(sha256Hex(new TextEncoder().encode('abc'))).toBe(
    'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  );
  expect(sha256Hex(new Uint8Array())).toBe('e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855');
});
