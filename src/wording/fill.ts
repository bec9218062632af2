/**
 * A label with its braces filled: `fill('{a} of {b}', 'x', { a: 3, b: 9 })` -> "3 of 9".
 *
 * @param key name of the label, for the error
 * @throws {RangeError} when a value is missing
 */
export function fill(label: string, key: string, values: Readonly<Record<string, string | number>>): string {
  return label.replace(/\{(\w+)\}/g, (_, name: string) => {
    const value = values[name];
    if (value === undefined) throw new RangeError(`say needs "${name}" for "${key}"`);
    return String(value);
  });
}
