import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addressName } from '../../src/report/address-name.ts';

test.each([
  ['leek', 'leek'],
  ['Möhre', 'moehre'],
  ['MÖHRE', 'moehre'],
  ['Mo\u0308hre', 'moehre'],
  ['Weißkohl', 'weisskohl'],
  ['Crème de Nantes', 'creme-de-nantes'],
  ['Rødbede', 'rodbede'],
  ['Sweet corn / maize', 'sweet-corn-maize'],
  ['pea (early)', 'pea-early'],
  ['../../etc/passwd', 'etc-passwd'],
  ['лук', '43b-443-43a'],
  ['白菜', '767d-83dc'],
  ['?!', 'x-3f-21'],
])('%s stands at %s', (name, address) => {
  expect(addressName(name)).toBe(address);
});

test('any name gives one safe step of an address, the same on every asking, and stays as it is when asked again', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', minLength: 1, maxLength: 200 }), (name) => {
      const address = addressName(name);
      expect(address).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
      expect(address.length).toBeLessThanOrEqual(100);
      expect(addressName(name)).toBe(address);
      expect(addressName(address)).toBe(address);
    }),
    { seed: 8 },
  );
});
