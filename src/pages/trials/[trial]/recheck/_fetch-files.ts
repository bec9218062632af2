import type { Told } from './_told.ts';

/** The published files by name, and the names of those that could not be fetched. */
export async function fetchFiles({
  address,
  files,
}: Told): Promise<{ readonly found: ReadonlyMap<string, Uint8Array>; readonly lost: readonly string[] }> {
  const found = new Map<string, Uint8Array>();
  const lost: string[] = [];
  const fetched = files.map(async (name) => {
    try {
      const response = await fetch(address + name);
      // A file that is not there is a finding; a connection that is not there is none.
      if (response.ok) found.set(name, new Uint8Array(await response.arrayBuffer()));
    } catch {
      lost.push(name);
    }
  });
  await Promise.all(fetched);
  return { found, lost: lost.toSorted() };
}
