import type { PublishedFile } from './published-files.ts';

/** A file without what stands in it. */
type Entry = Omit<PublishedFile, 'bytes'> & { readonly size: number };

/** Several files as one: a line that lists them, then what stands in each, one after the other. */
export function packed(files: readonly PublishedFile[]): Uint8Array {
  const entries: Entry[] = files.map(({ bytes, ...file }) => ({ ...file, size: bytes.length }));
  return Buffer.concat([Buffer.from(`${JSON.stringify(entries)}\n`), ...files.map(({ bytes }) => bytes)]);
}

/** What `packed` made one. */
export function unpacked(bytes: Uint8Array): readonly PublishedFile[] {
  const line = bytes.indexOf(10);
  const entries: readonly Entry[] = JSON.parse(new TextDecoder().decode(bytes.subarray(0, line)));
  let at = bytes.byteOffset + line + 1;
  return entries.map(({ size, ...file }) => {
    const content = new Uint8Array(bytes.buffer, at, size); // the same memory
    at += size;
    return { ...file, bytes: content };
  });
}
