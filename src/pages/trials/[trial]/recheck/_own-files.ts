import { unzipped } from '../../../../archive/unzipped.ts';

/** Files that the reader gave, by name: those of a zip in place of the zip. A sentence where a zip is refused. */
export async function ownFiles(given: readonly File[]): Promise<ReadonlyMap<string, Uint8Array> | string> {
  const own = new Map<string, Uint8Array>();
  for (const file of given) {
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (!file.name.endsWith('.zip') || file.name.startsWith('repeat-')) {
      own.set(file.name, bytes);
      continue;
    }
    const held = unzipped(bytes);
    if (typeof held === 'string') return held;
    for (const [name, content] of held) own.set(name, content);
  }
  return own;
}
