/** A path as people read it: `outcomes[0].day`. Null for the whole file. */
export function fieldName(path: readonly PropertyKey[]): string | null {
  const name = path.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text === '' ? String(key) : `${text}.${String(key)}`),
    '',
  );
  return name === '' ? null : name;
}
