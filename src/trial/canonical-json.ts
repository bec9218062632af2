/**
 * JSON with sorted keys and no blanks, one text for one value (RFC 8785, JSON Canonicalization Scheme): keys by
 * UTF-16 code units; numbers and strings as ECMAScript writes them, which is what the RFC prescribes.
 * Entries that are `undefined` are left out.
 *
 * @throws {RangeError} for numbers that JSON cannot hold (NaN, infinities)
 */
export function canonicalJson(value: unknown): string {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    throw new RangeError(`canonicalJson needs finite numbers, got ${value}`);
  }
  if (Array.isArray(value)) return `[${value.map(canonicalJson).join(',')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const entries = Object.entries(value)
    .filter(([, item]) => item !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, item]) => `${JSON.stringify(key)}:${canonicalJson(item)}`);
  return `{${entries.join(',')}}`;
}
