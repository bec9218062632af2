import { zipSync, type Zippable } from 'fflate';

/** A zip of the files in a folder of the given name: the same bytes for the same files, whenever and wherever it is made. */
export function zipOf(
  folder: string,
  files: readonly { readonly name: string; readonly bytes: Uint8Array }[],
): Uint8Array {
  // The earliest time that a zip can hold, by the clock of the place, which is what fflate writes.
  const mtime = new Date(1980, 0, 1);
  const entries = files.map(({ name, bytes }) => [`${folder}/${name}`, bytes] as const);
  return zipSync(Object.fromEntries(entries) satisfies Zippable, { mtime, level: 6 });
}
