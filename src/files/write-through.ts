import { open } from 'node:fs/promises';

/** Writes a new file down to the disk, so that whatever is wrong with the disk shows before the file is moved to its place. */
export async function writeThrough(path: string, bytes: Uint8Array): Promise<void> {
  const file = await open(path, 'wx');
  try {
    await file.writeFile(bytes);
    await file.sync();
  } finally {
    await file.close();
  }
}
