/** Only what is known: a key that was not given is not written into a YAML file. */
export function given(values: Readonly<Record<string, unknown>>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== null));
}
